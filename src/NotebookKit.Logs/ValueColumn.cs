namespace NotebookKit.Logs;

/// <summary>A column of readings as its cells are read.</summary>
internal sealed class ValueColumn(HeaderCell header, LogUnit unit, LogColumn? mapped, string file)
{
    private const double LowestGaugeBar = -1.2;

    /// <summary>Numbers read, in the canonical unit; not a number where nothing was read.</summary>
    public List<double> Values { get; } = [];

    public HeaderCell Header => header;

    public LogUnit Unit => unit;

    /// <summary>What the mapping says of it.</summary>
    public LogColumn? Mapped => mapped;

    /// <summary>Cells that were empty.</summary>
    public int Empty { get; private set; }

    /// <summary>Cells that held a logger's word for no reading.</summary>
    public int NoReading { get; private set; }

    /// <summary>Line of the first of these.</summary>
    public int FirstNoReading { get; private set; }

    // Decimals written with a comma are taken for thousands where nothing shows that they aren't.
    private bool _threeBehindComma, _otherBehindComma, _plainHundreds;

    public bool MayBeThousands => _threeBehindComma && !_otherBehindComma && _plainHundreds;

    /// <summary>Reads a cell.</summary>
    public void Add(ReadOnlySpan<char> cell, char mark, int line)
    {
        if (cell.Length == 0)
        {
            Empty++;
            Values.Add(double.NaN);
            return;
        }

        if (!CellNumber.TryRead(cell, mark, out var written))
        {
            if (!CellNumber.IsNoReading(cell)) throw NotANumber(cell, mark, line);
            if (NoReading++ == 0) FirstNoReading = line;
            Values.Add(double.NaN);
            return;
        }

        if (mark == ',') Watch(cell, written);
        var value = unit.Convert(written);
        if (!double.IsFinite(value)) throw Wrong(line, $"'{Excerpt.Of(cell)}' {unit.Text} is no finite number of {unit.Canonical}",
            "check the number, and the unit in the header.");
        if (Math.Abs(value) > LogUnit.Largest) throw Wrong(line, $"'{Excerpt.Of(cell)}' {unit.Text} is more than any sensor reads",
            $"a reading lies within {LogUnit.Largest:0e+0} {unit.Canonical}; leave the cell empty where the logger had no reading.");
        if (unit.Canonical == "bar absolute" && value < 0) throw Wrong(line, $"'{Excerpt.Of(cell)}' is below vacuum",
            "an absolute pressure is 0 or above; was a gauge reading meant?");
        if (unit.Canonical == "bar gauge" && value < LowestGaugeBar) throw Wrong(line, $"'{Excerpt.Of(cell)}' {unit.Text} is below vacuum",
            "a gauge reads −1 bar or above; leave the cell empty where the logger had no reading.");
        if (unit.Canonical == "°C" && value < -273.15) throw Wrong(line, $"'{Excerpt.Of(cell)}' is below absolute zero",
            "check the unit in the header.");
        Values.Add(value);
    }

    private void Watch(ReadOnlySpan<char> cell, double written)
    {
        var comma = cell.IndexOf(',');
        if (comma < 0) _plainHundreds |= Math.Abs(written) >= 100;
        else if (cell.Length - comma - 1 == 3) _threeBehindComma = true;
        else _otherBehindComma = true;
    }

    private LogFormatException NotANumber(ReadOnlySpan<char> cell, char mark, int line)
    {
        var other = mark == '.' ? ',' : '.';
        return CellNumber.TryRead(cell, other, out _)
            ? Wrong(line, $"'{Excerpt.Of(cell)}' has a decimal {(other == ',' ? "comma" : "point")} and other numbers have a decimal "
                + $"{(mark == ',' ? "comma" : "point")}", "write all numbers of a log alike, or "
                + $"{MappingFile.Write(file, "\"decimalComma\": true")}, or false, as the numbers are written.")
            : Wrong(line, $"'{Excerpt.Of(cell)}' is not a finite number",
                "write numbers with a decimal point, and leave the cell empty where nothing was read.");
    }

    private LogFormatException Wrong(int line, string found, string allowed) => new(file, line, header.Name, found, allowed);
}
