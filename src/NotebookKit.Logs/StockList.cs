using NotebookKit.Quantities.Texts;
using NotebookKit.Sheets;
using UnitsNet;

namespace NotebookKit.Logs;

/// <summary>
/// What lies on the shelf, read from comma-separated text with units in the header:
/// <c>item [text], kind [text], length [m], width [mm], mass [g], pot life [min], hardener [%], pieces [-], price [text]</c>.
/// </summary>
public sealed record StockList
{
    private static readonly string[] Kinds = ["sleeve", "cloth", "tape", "veil", "resin", "hardener", "sheet",
        "fin sheet", "canopy", "part"];

    private StockList(string file, IReadOnlyList<StockItem> items)
    {
        File = file;
        Items = items;
    }

    /// <summary>File as it was asked for.</summary>
    public string File { get; }

    /// <summary>Everything on the shelf, in the list's order.</summary>
    public IReadOnlyList<StockItem> Items { get; }

    /// <summary>Everything of one kind.</summary>
    /// <param name="kind">Kind: "sleeve", "cloth", "tape", "veil", "resin", "hardener", "sheet", "fin sheet", "canopy", "part".</param>
    public IReadOnlyList<StockItem> Of(string kind) => [.. Items.Where(i => string.Equals(i.Kind, kind,
        StringComparison.OrdinalIgnoreCase))];

    /// <summary>Reads a stock list.</summary>
    /// <param name="path">Path of the file.</param>
    /// <exception cref="LogFormatException">The file is missing or something in it is wrong; says where and what.</exception>
    public static StockList Read(string path) => Parse(LogReader.Lines(path), path);

    /// <summary>Reads a stock list from text.</summary>
    /// <param name="text">The text of a list.</param>
    /// <param name="name">Name to use in messages.</param>
    /// <exception cref="LogFormatException">Something in it is wrong; says where and what.</exception>
    public static StockList Parse(string text, string name)
    {
        ArgumentNullException.ThrowIfNull(text);
        return Parse(text.ReplaceLineEndings("\n").Split('\n'), name);
    }

    private static StockList Parse(string[] lines, string file)
    {
        Dictionary<string, (int Column, LogUnit? Unit)>? header = null;
        List<StockItem> items = [];
        for (var i = 0; i < lines.Length; i++)
        {
            var line = lines[i].Trim();
            if (line.Length == 0 || line[0] == '#') continue;
            var cells = line.Split(',').Select(c => c.Trim()).ToArray();
            if (header is null)
            {
                header = Header(cells, file, i + 1);
                continue;
            }

            if (cells.Length != header.Count)
                throw new LogFormatException(file, i + 1, "", $"there are {cells.Length} cells",
                    $"the header has {header.Count} columns, so must every line; a name can't hold a comma.");
            items.Add(Item(cells, header, file, i + 1));
        }

        if (header is null) throw new LogFormatException(file, 0, "", "there is no header",
            "the first line that isn't a comment names the columns: item [text], kind [text], length [m].");
        return new(file, items);
    }

    private static Dictionary<string, (int, LogUnit?)> Header(string[] cells, string file, int number)
    {
        var header = new Dictionary<string, (int, LogUnit?)>(StringComparer.OrdinalIgnoreCase);
        for (var k = 0; k < cells.Length; k++)
        {
            var open = cells[k].IndexOf('[', StringComparison.Ordinal);
            if (open < 1 || !cells[k].EndsWith(']'))
                throw new LogFormatException(file, number, cells[k], "the column has no name or no unit",
                    "write both, as in 'length [m]' or 'item [text]'.");
            string name = cells[k][..open].Trim(), unit = cells[k][(open + 1)..^1].Trim();
            var problem = "";
            var found = unit == "text" ? null : LogUnit.Find(unit, out problem)
                ?? throw new LogFormatException(file, number, name, problem, $"allowed are text, {LogUnit.Allowed}.");
            if (!header.TryAdd(name, (k, found))) throw new LogFormatException(file, number, name, "the name stands twice",
                "every column needs a name of its own.");
        }

        foreach (var name in (string[])["item", "kind"])
            if (!header.TryGetValue(name, out var column) || column.Item2 is not null)
                throw new LogFormatException(file, number, name, "there is no such column of text",
                    $"write '{name} [text]' in the header.");
        return header;
    }

    private static StockItem Item(string[] cells, Dictionary<string, (int Column, LogUnit? Unit)> header, string file, int number)
    {
        double? Number(string name, string canonical)
        {
            if (!header.TryGetValue(name, out var column) || cells[column.Column].Length == 0) return null;
            if (column.Unit?.Canonical != canonical) throw new LogFormatException(file, number, name,
                $"the unit is {column.Unit?.Text ?? "text"}", $"it must be one that measures the same as {canonical}.");
            var cell = cells[column.Column];
            if (UnitText.Number(cell) is not { } value || value < 0)
                throw new LogFormatException(file, number, name, $"'{Excerpt.Of(cell)}' is not a finite number of 0 or above",
                    "write numbers with a decimal point, and leave the cell empty where it doesn't apply.");
            var converted = column.Unit.Convert(value);
            return converted <= LogUnit.Largest ? converted : throw new LogFormatException(file, number, name,
                $"'{Excerpt.Of(cell)}' {column.Unit.Text} is more than any shelf holds", "check the number, and the unit in the header.");
        }

        string item = cells[header["item"].Column], kind = cells[header["kind"].Column];
        if (item.Length == 0) throw new LogFormatException(file, number, "item", "the name is empty",
            "write the name that the material library knows it by.");
        if (!Kinds.Contains(kind, StringComparer.OrdinalIgnoreCase)) throw new LogFormatException(file, number, "kind",
            $"'{Excerpt.Of(kind)}' is no kind", $"allowed are {string.Join(", ", Kinds)}.");
        return new(
            item,
            kind,
            Number("length", "m") is { } length ? UnitsNet.Length.FromMeters(length) : null,
            Number("width", "m") is { } width ? UnitsNet.Length.FromMillimeters(1000 * width) : null,
            Number("mass", "g") is { } mass ? Mass.FromGrams(mass) : null,
            Number("pot life", "s") is { } life ? Duration.FromMinutes(life / 60) : null)
        {
            HardenerPerResin = Number("hardener", "-") is { } share ? Ratio.FromPercent(100 * share) : null,
            Pieces = Pieces(),
            Price = Price(),
        };

        int? Pieces() => Number("pieces", "-") is not { } pieces ? null : pieces == Math.Floor(pieces) && pieces <= 10_000 ? (int)pieces
            : throw new LogFormatException(file, number, "pieces", $"'{Excerpt.Of(cells[header["pieces"].Column])}' is no number of pieces",
                "write a whole number, 0 to 10000.");

        MaterialPrice? Price()
        {
            if (!header.TryGetValue("price", out var column) || cells[column.Column].Length == 0) return null;
            if (column.Unit is not null) throw new LogFormatException(file, number, "price", "the column isn't text",
                "write 'price [text]' in the header, and '9.80 EUR/m' in the cell.");
            try
            {
                return MaterialPrice.Parse(cells[column.Column]);
            }
            catch (FormatException error)
            {
                throw new LogFormatException(file, number, "price", $"'{Excerpt.Of(cells[column.Column])}' is no price",
                    Excerpt.Of(error.Message, 300));
            }
        }
    }
}
