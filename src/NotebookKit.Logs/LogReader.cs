using NotebookKit.Quantities;
using ColumnOfNumbers = NotebookKit.Quantities.Series;

namespace NotebookKit.Logs;

/// <summary>
/// Reads logs of comma-separated numbers with the unit of every column in the header: <c>time [s], pressure [bar gauge], temperature
/// [°C]</c>.
/// Lines that start with '#' are comments, empty cells are gaps, everything else has to be right or is refused with its line.
/// </summary>
public static class LogReader
{
    /// <summary>Reads a log from a file.</summary>
    /// <param name="path">Path of the file.</param>
    /// <exception cref="LogFormatException">The file is missing or something in it is wrong; says where and what.</exception>
    public static LogTable Read(string path) => Parse(Lines(path), path);

    internal static string[] Lines(string path)
    {
        ArgumentException.ThrowIfNullOrWhiteSpace(path);
        try
        {
            return System.IO.File.ReadAllLines(path);
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            throw new LogFormatException(path, 0, "", $"it can't be read "
                + $"({(e is FileNotFoundException or DirectoryNotFoundException ? "there is no such file" : e.Message)})",
                $"give the path of a log; the current folder is {Directory.GetCurrentDirectory()}.");
        }
    }

    /// <summary>Reads a log from text.</summary>
    /// <param name="text">The text of a log.</param>
    /// <param name="name">Name to use in messages.</param>
    /// <exception cref="LogFormatException">Something in it is wrong; says where and what.</exception>
    public static LogTable Parse(string text, string name)
    {
        ArgumentNullException.ThrowIfNull(text);
        return Parse(text.ReplaceLineEndings("\n").Split('\n'), name);
    }

    private static LogTable Parse(string[] lines, string file)
    {
        List<string> comments = [];
        (string Name, LogUnit Unit)[]? header = null;
        List<double>[] values = [];
        for (var i = 0; i < lines.Length; i++)
        {
            var line = lines[i].Trim();
            if (line.Length == 0) continue;
            if (line[0] == '#')
            {
                comments.Add(line[1..].Trim());
                continue;
            }

            if (header is null)
            {
                header = Header(line, file, i + 1);
                values = [.. header.Select(_ => new List<double>())];
            }
            else
            {
                Row(line, file, i + 1, header, values);
            }
        }

        if (header is null) throw new LogFormatException(file, 0, "", "there is no header",
            "the first line that isn't a comment names the columns: time [s], pressure [bar gauge].");
        if (values[0].Count < 2) throw new LogFormatException(file, 0, "", $"there are {values[0].Count} rows", "a log needs at least 2.");
        return new LogTable(
            file, comments, Column(header[0], values[0]), [.. header.Skip(1).Select((h, k) => Column(h, values[k + 1]))]);
    }

    private static ColumnOfNumbers Column((string Name, LogUnit Unit) header, List<double> values)
        => new(header.Name, header.Unit.Canonical, [.. values]);

    private static (string, LogUnit)[] Header(string line, string file, int number)
    {
        if (!line.Contains(',') && line.Contains(';'))
            throw new LogFormatException(file, number, "", "the columns are parted by ';'",
                "part them by ',' and write decimals with a point.");
        var cells = line.Split(',').Select(c => c.Trim().Trim('"').Trim()).ToArray();
        var header = new (string Name, LogUnit Unit)[cells.Length];
        for (var k = 0; k < cells.Length; k++)
        {
            var open = cells[k].IndexOf('[', StringComparison.Ordinal);
            var name = (open < 0 ? cells[k] : cells[k][..open]).Trim();
            if (open < 0 || !cells[k].EndsWith(']'))
                throw new LogFormatException(file, number, name, "the column has no unit",
                    "write it in brackets behind the name, as in 'pressure [bar gauge]'.");
            if (name.Length == 0) throw new LogFormatException(file, number, cells[k], "the column has no name",
                "write one before the unit, as in 'pressure [bar gauge]'.");
            var unit = LogUnit.Find(cells[k][(open + 1)..^1].Trim(), out var problem)
                ?? throw new LogFormatException(file, number, name, problem, $"allowed are {LogUnit.Allowed}.");
            if (header.Take(k).Any(h => string.Equals(h.Name, name, StringComparison.OrdinalIgnoreCase)))
                throw new LogFormatException(file, number, name, "the name stands twice", "every column needs a name of its own.");
            header[k] = (name, unit);
        }

        if (header[0].Unit.Kind != "time") throw new LogFormatException(file, number, header[0].Name,
            $"the first column is in {header[0].Unit.Text}", "the first column is the clock: time [s], [ms] or [min].");
        if (header.Length < 2) throw new LogFormatException(file, number, "", "there is only a clock",
            "a log has at least one more column.");
        return header;
    }

    private static void Row(string line, string file, int number, (string Name, LogUnit Unit)[] header, List<double>[] values)
    {
        var cells = line.Split(',');
        if (cells.Length != header.Length)
            throw new LogFormatException(file, number, "", $"there are {cells.Length} cells",
                $"the header has {header.Length} columns, so must every line; was the log cut off?");
        for (var k = 0; k < cells.Length; k++)
        {
            var cell = cells[k].Trim();
            double value;
            if (cell.Length == 0)
            {
                if (k == 0) throw new LogFormatException(file, number, header[0].Name, "there is no time",
                    "only the other columns may have gaps.");
                value = double.NaN;
            }
            else if (UnitText.Number(cell) is not { } written)
            {
                throw new LogFormatException(file, number, header[k].Name, $"'{cell}' is not a finite number",
                    "write numbers with a decimal point, and leave the cell empty where nothing was read.");
            }
            else
            {
                value = header[k].Unit.Convert(written);
            }

            if (k > 0 && header[k].Unit.Kind == "pressure absolute" && value < 0)
                throw new LogFormatException(file, number, header[k].Name, $"'{cell}' is below vacuum",
                    "an absolute pressure is 0 or above; was a gauge reading meant?");
            if (k > 0 && header[k].Unit.Kind == "temperature" && value < -273.15)
                throw new LogFormatException(file, number, header[k].Name, $"'{cell}' is below absolute zero",
                    "check the unit in the header.");
            if (k == 0 && values[0].Count > 0 && value <= values[0][^1])
                throw new LogFormatException(file, number, header[0].Name, $"the time {cell} isn't after the line before",
                    "times must rise; was the logger restarted? Then cut the file in two.");
            values[k].Add(value);
        }
    }
}
