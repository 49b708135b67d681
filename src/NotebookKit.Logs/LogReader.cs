using NotebookKit.Provenance;
using NotebookKit.Quantities;
using ColumnOfNumbers = NotebookKit.Quantities.Series;

namespace NotebookKit.Logs;

/// <summary>
/// Reads logs as loggers write them: columns named in a header with their units, <c>time [s], pressure [bar gauge], temperature [°C]</c> or
/// <c>Time;P1 (psig);T (°F)</c>; parted by comma, semicolon or tab; decimals with point or comma; seconds, clock times or stamps.
/// Lines that start with '#' are comments, empty cells are gaps, columns whose unit isn't known are skipped with a note. Everything else
/// has to be right or is refused with its line. What the header doesn't say is given by a <see cref="LogMapping"/>.
/// </summary>
public static class LogReader
{
    private const int LinesBeforeHeader = 50, KeptComments = 1000, LongestComment = 500;

    /// <summary>Reads a log from a file, with the mapping beside it where there is one.</summary>
    /// <param name="path">Path of the file.</param>
    /// <param name="mapping">What the log doesn't say of itself; goes before the file beside it.</param>
    /// <exception cref="LogFormatException">The file is missing or something in it is wrong; says where and what.</exception>
    public static LogTable Read(string path, LogMapping? mapping = null) => Read(path, mapping, _ => true);

    /// <summary>Reads a log from text.</summary>
    /// <param name="text">The text of a log.</param>
    /// <param name="name">Name to use in messages.</param>
    /// <param name="mapping">What the log doesn't say of itself.</param>
    /// <exception cref="LogFormatException">Something in it is wrong; says where and what.</exception>
    public static LogTable Parse(string text, string name, LogMapping? mapping = null)
    {
        ArgumentNullException.ThrowIfNull(text);
        using var reader = new StringReader(text);
        return Parse(reader, name, mapping ?? new(), _ => true);
    }

    internal static LogTable Read(string path, LogMapping? mapping, Func<LogUnit, bool> wanted) =>
        Opened(path, file =>
        {
            var beside = MappingFile.Read(path);
            using var reader = new StreamReader(file, detectEncodingFromByteOrderMarks: true);
            return Parse(reader, path, mapping is null ? beside ?? new() : beside is null ? mapping : mapping.Over(beside), wanted);
        });

    internal static string[] Lines(string path) => Opened(path, _ => File.ReadAllLines(path));

    private static T Opened<T>(string path, Func<FileStream, T> read)
    {
        if (string.IsNullOrWhiteSpace(path)) throw new LogFormatException("log", 0, "", "no path is given", "give the path of a log.");
        try
        {
            using var file = new FileStream(path, FileMode.Open, FileAccess.Read, FileShare.ReadWrite, 1 << 16);
            return read(file);
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException or ArgumentException or NotSupportedException)
        {
            throw new LogFormatException(path, 0, "", $"it can't be read "
                + $"({(e is FileNotFoundException or DirectoryNotFoundException ? "there is no such file" : e.Message)})",
                $"give the path of a log; the current folder is {Directory.GetCurrentDirectory()}.");
        }
    }

    private static LogTable Parse(TextReader reader, string file, LogMapping mapping, Func<LogUnit, bool> wanted)
    {
        var lines = new LineSource(reader, file);
        List<string> comments = [];
        LogHeader? header = null;
        string? first = null, headerText = null;
        var (firstNumber, before, again) = (0, 0, 0);
        char? mark = mapping.DecimalComma is { } comma ? comma ? ',' : '.' : null;
        while (lines.Next(out var whole))
        {
            var line = whole.Trim(" \r\uFEFF\0");
            if (header is null && whole.Contains('\0')) throw new LogFormatException(file, lines.Number, "", "the file isn't text",
                "give a log of comma-separated text; save it from the logger's own program as text.");
            if (line.Trim().Length == 0) continue;
            if (line[0] is '#' or '%' || line.StartsWith("//", StringComparison.Ordinal))
            {
                if (comments.Count < KeptComments) comments.Add(Excerpt.Of(line.TrimStart("#%/").Trim(), LongestComment));
                continue;
            }

            if (header is not null && line.SequenceEqual(headerText))
            {
                again++;
            }
            else if (header is not null)
            {
                Row(line, lines.Number, file, header, ref mark);
            }
            else if (LogHeader.MayBe(line, mapping, file))
            {
                header = LogHeader.Of(line, file, lines.Number, mapping, wanted);
                headerText = line.ToString();
                if (header.Separator == ',') mark ??= '.';
            }
            else
            {
                if (first is null) (first, firstNumber) = (line.ToString(), lines.Number);
                if (++before > LinesBeforeHeader) break;
                comments.Add(Excerpt.Of(line.Trim(), LongestComment));
            }
        }

        if (header is null && first is not null) LogHeader.Of(first, file, firstNumber, mapping, wanted);
        if (header is null) throw new LogFormatException(file, 0, "", "there is no header",
            "the first line that isn't a comment names the columns: time [s], pressure [bar gauge].");
        if (before > 0) header.Findings.Add(Finding.Note($"{LogQuality.Count(before, "line")} before the header count as comments."));
        if (again > 0) header.Findings.Add(Finding.Note(
            $"The header stands {LogQuality.Count(again, "more time")} in the log, as after a restart; those lines were left out."));
        return Table(file, comments, header, mapping);
    }

    private static void Row(ReadOnlySpan<char> line, int number, string file, LogHeader header, ref char? mark)
    {
        var cells = new CellSplitter(line, header.Separator);
        ReadOnlySpan<char> clock = [], day = [];
        var k = 0;
        for (; cells.MoveNext(); k++)
        {
            var cell = cells.Current;
            if (k >= header.Count)
            {
                if (cell.Length > 0) throw Ragged(line, number, file, header);
                continue;
            }

            if (k == header.ClockAt) clock = cell;
            else if (k == header.DayAt) day = cell;
            else if (header.Columns[k] is { } column)
            {
                mark ??= MarkOf(cell);
                column.Add(cell, mark ?? '.', number);
            }
        }

        while (k < header.Count && header.IsNameless(k)) k++;
        if (k < header.Count) throw Ragged(line, number, file, header);
        header.Clock.Add(clock, day, mark ?? (clock.Contains(',') ? ',' : '.'), number);
    }

    // The first cell with a mark shows what the log's decimals are written with.
    private static char? MarkOf(ReadOnlySpan<char> cell) => cell.IndexOfAny('.', ',') is >= 0 and var at ? cell[at] : null;

    private static LogFormatException Ragged(ReadOnlySpan<char> line, int number, string file, LogHeader header)
    {
        var cells = new CellSplitter(line, header.Separator);
        var count = 0;
        while (cells.MoveNext()) count++;
        var other = header.Separator == ',' ? ';' : ',';
        return new(file, number, "", $"there are {LogQuality.Count(count, "cell")}", $"the header has {header.Count} columns separated by "
            + $"'{(header.Separator == '\t' ? "tab" : header.Separator)}', so must every line; "
            + (count == 1 && line.Contains(other) ? $"separate this line by it and not by '{other}'."
                : count > header.Count && header.Separator == ',' ? "where decimals are written with a comma, separate the columns by ';'."
                : "was the log cut off? Then delete the line."));
    }

    private static LogTable Table(string file, List<string> comments, LogHeader header, LogMapping mapping)
    {
        var seconds = header.Clock.Seconds();
        if (seconds.Length < 2)
            throw new LogFormatException(file, 0, "", $"there are {seconds.Length} rows", "a log needs at least 2.");
        var columns = header.Columns.OfType<ValueColumn>().ToList();
        foreach (var column in columns.Where(c => c.MayBeThousands && mapping.DecimalComma is null))
            throw new LogFormatException(file, 0, column.Header.Name, "numbers have three digits behind a comma, and others of 100 and "
                + "more "
                + "have no comma, so the comma may separate thousands",
                $"{MappingFile.Write(file, "\"decimalComma\": true")} where it is a decimal "
                + "comma, or false where it parts thousands.");
        var order = ClockOrder.Of(seconds, mapping.Part);
        if (mapping.Part is { } part && (part < 1 || part > order.Parts.Count)) throw new LogFormatException(file, 0, "",
            $"part {part} is asked for", $"the log has {LogQuality.Count(order.Parts.Count, "part")}; the first is 1.");
        var (time, values) = (Kept(seconds, order), columns.Select(c => Kept(c.Values, order)).ToList());
        if (time.Length < 2)
            throw new LogFormatException(file, 0, header.Clock.Name, $"there are {time.Length} rows with a stamp of their own",
                "a log needs at least 2; times must rise from line to line.");
        var quality = QualityCount.Of(file, seconds.Length, time, order, columns, values);
        if (order.Parts.Count > 1)
            header.Findings.Add((mapping.Part is null ? Finding.Warning : (Func<string, Finding>)Finding.Note)(
                $"The clock was reset {LogQuality.Count(order.Parts.Count - 1, "time")}; "
                + $"{(mapping.Part is null ? "the part with the most rows" : $"part {mapping.Part}")} of {order.Parts.Count} is used, with "
                + $"{LogQuality.Count(time.Length, "row")}"
                + (mapping.Part is null ? $". To choose another, {MappingFile.Write(file, "\"part\": 1")}." : ".")));
        if (header.Clock.IsOfDay) header.Findings.Add(Started(header.Clock));
        return new(file, comments, new(header.Clock.Name, "s", time),
            [.. columns.Select((c, k) => new ColumnOfNumbers(c.Header.Name, c.Unit.Canonical, values[k]))])
        {
            Quality = quality,
            Findings = [.. header.Findings, .. quality.Findings],
            Mapping = mapping,
            Roles = header.Roles,
            Skipped = header.Skipped,
            Start = header.Clock.Start,
            UtcOffset = header.Clock.Zone,
            StartedPart = order.Parts.Count == 1 || mapping.Part is not null,
        };
    }

    private static Finding Started(ClockColumn clock) => Finding.Note("Times are counted in seconds from the first row"
        + (clock.Start is { } start ? $", {start:yyyy-MM-dd HH:mm:ss}" : "")
        + (clock.Zone is { } zone ? $", {Zone(zone.Minutes)}" : clock.Start is null ? "" : "; the log gives no time zone")
        + (clock.Midnights > 0 ? $"; the clock passes midnight {LogQuality.Count(clock.Midnights, "time")}" : "") + ".");

    private static string Zone(double minutes) => minutes == 0 ? "universal time"
        : $"{Digits.Round(Math.Abs(minutes) / 60)} h {(minutes > 0 ? "before" : "behind")} universal time";

    private static double[] Kept(IReadOnlyList<double> values, ClockOrder order) =>
        order.Rows is null ? [.. values] : [.. order.Rows.Select(i => values[i])];
}
