using NotebookKit.Numerics;
using NotebookKit.Provenance;

namespace NotebookKit.Logs;

/// <summary>What the header of a log and its mapping make of the columns: which is the clock, which are read, which are left out and
/// why.</summary>
internal sealed class LogHeader
{
    private const int NoColumn = -1;

    private readonly string _file;
    private readonly int _line;
    private readonly LogMapping _mapping;
    private readonly HeaderCell[] _cells;

    private LogHeader(string file, int line, LogMapping mapping, HeaderCell[] cells, char separator)
    {
        (_file, _line, _mapping, _cells, Separator) = (file, line, mapping, cells, separator);
        Columns = new ValueColumn?[cells.Length];
    }

    public char Separator { get; }

    /// <summary>Cells of the header.</summary>
    public int Count => _cells.Length;

    public ClockColumn Clock { get; private set; } = null!;

    public int ClockAt { get; private set; } = NoColumn;

    public int DayAt { get; private set; } = NoColumn;

    /// <summary>The columns that are read, by their place; none where a column is left out.</summary>
    public ValueColumn?[] Columns { get; }

    /// <summary>Columns that were left out, and what is wrong with each.</summary>
    public List<SkippedColumn> Skipped { get; } = [];

    /// <summary>Names of columns by what the mapping says they are.</summary>
    public Dictionary<string, string> Roles { get; } = [];

    public List<Finding> Findings { get; } = [];

    /// <summary>Whether the last columns of the header have neither name nor unit, as a separator at its end makes them.</summary>
    public bool IsNameless(int at) => _cells[at].Text.Length == 0;

    /// <summary>Takes a line as the header; says what is wrong where it is none.</summary>
    /// <param name="line">The line.</param>
    /// <param name="file">File as it was asked for.</param>
    /// <param name="number">Its number.</param>
    /// <param name="mapping">What is given of the log.</param>
    /// <param name="wanted">Whether a column of a unit is wanted.</param>
    /// <exception cref="LogFormatException">The line can't be the header of a log.</exception>
    public static LogHeader Of(ReadOnlySpan<char> line, string file, int number, LogMapping mapping, Func<LogUnit, bool> wanted)
    {
        var separator = SeparatorOf(line, mapping, file);
        List<HeaderCell> cells = [];
        var splitter = new CellSplitter(line, separator);
        while (splitter.MoveNext()) cells.Add(HeaderCell.Of(splitter.Current));
        var header = new LogHeader(file, number, mapping, [.. cells], separator);
        header.FindClock();
        header.FindColumns(wanted);
        return header;
    }

    /// <summary>Whether a line may be the header: what a logger writes before it names no clock.</summary>
    public static bool MayBe(ReadOnlySpan<char> line, LogMapping mapping, string file)
    {
        var splitter = new CellSplitter(line, SeparatorOf(line, mapping, file));
        while (splitter.MoveNext())
        {
            if (splitter.Current.Length > 200) continue;
            var cell = HeaderCell.Of(splitter.Current);
            if (mapping.Time is { } time ? cell.Means(time.Header) : cell.IsClockByName || IsTime(cell)) return true;
        }

        return false;
    }

    private static char SeparatorOf(ReadOnlySpan<char> line, LogMapping mapping, string file) => mapping.Separator switch
    {
        null => Outside(line, ';') ? ';' : Outside(line, '\t') ? '\t' : ',',
        "," or ";" or "\t" => mapping.Separator[0],
        "tab" => '\t',
        _ => throw new LogFormatException(file, 0, "", $"the separator of the mapping is '{Excerpt.Of(mapping.Separator)}'",
            "allowed are ',', ';' and 'tab'."),
    };

    private static bool Outside(ReadOnlySpan<char> line, char mark)
    {
        var quoted = false;
        foreach (var c in line)
        {
            if (c == '"') quoted = !quoted;
            else if (c == mark && !quoted) return true;
        }

        return false;
    }

    private void FindClock()
    {
        ClockAt = _mapping.Time is { } given ? Place(given, "Time") : Guess();
        DayAt = _mapping.Day is { } day ? Place(day, "Day") : _mapping.Time is null || _cells[ClockAt].UnitText is null
            ? Array.FindIndex(_cells, c => c.IsDayByName && c.UnitText is null) : NoColumn;
        if (DayAt == ClockAt) DayAt = NoColumn;
        var cell = _cells[ClockAt];
        var text = _mapping.Time?.Unit ?? cell.UnitText;
        var unit = text is null || text is "clock" or "hh:mm:ss" or "h:mm:ss" or "HH:mm:ss" or "ISO 8601" or "UTC" ? null
            : LogUnit.Find(text, out _, needsReference: false);
        if (unit is { Kind: not "time" } || (unit is null && _mapping.Time?.Unit is { } wrong && wrong != "clock"))
            throw Wrong(cell.Name, $"the unit of the clock is '{Excerpt.Of(text ?? "")}'", "the clock is in s, ms, µs, min or h, or "
                + "'clock'.");
        Clock = new(cell, unit, DayAt >= 0 ? _cells[DayAt] : null, _mapping, _file);
        if (_mapping.Time is null && !(cell.IsClockByName && cell.Bracketed))
            Findings.Add(Finding.Note($"The clock was taken from column '{Excerpt.Of(cell.Text)}'"
                + $"{(unit is null ? "" : $", in {unit.Text}")}{(DayAt >= 0 ? $", and the day from column '{_cells[DayAt].Name}'" : "")}. "
                + $"Where another column is meant, {MappingFile.Write(_file, "\"time\": \"its name\"")}."));
    }

    private int Guess()
    {
        bool IsNamed(HeaderCell c) => c.IsClockByName && (c.UnitText is null || IsTime(c));
        var named = Array.FindIndex(_cells, c => IsNamed(c) && !c.IsClockByLetter);
        if (named < 0) named = Array.FindIndex(_cells, c => c.IsUnitOfTime);
        if (named < 0) named = Array.FindIndex(_cells, IsNamed);
        var timed = Array.FindIndex(_cells, IsTime);
        if (named >= 0) return named;
        var several = _cells.Where(IsTime).Select(c => c.Text).ToList();
        if (several.Count > 1) throw Wrong("", $"{Excerpt.Names(several)} could each be the clock",
            $"{MappingFile.Write(_file, MappingFile.Member("time", several[0]))}, with the column that is meant.");
        if (timed >= 0) return timed;
        throw _cells.All(c => CellNumber.TryRead(c.Text, '.', out _) || CellNumber.TryRead(c.Text, ',', out _))
            ? Wrong("", "the first line holds numbers and no names", "put a header before it, such as time [s], pressure [bar gauge].")
            : Wrong("", $"no column is a clock; the columns are {Excerpt.Names(_cells.Select(c => c.Text))}",
                "the clock is a column such as time [s], [ms] or [min]; where it has another name and holds clock times such as "
                    + $"10:02:11, {MappingFile.Write(_file, Whole("\"time\": \"its name\""))}; where it holds numbers, the same with "
                    + "\"time\": { \"column\": \"its name\", \"unit\": \"s\" }.");
    }

    // With what else the header doesn't say, so that one file says it all.
    private string Whole(string time) => _mapping.Given.Any() || _cells.Any(c => c.UnitText is not null) ? time
        : $"{time}, \"pressure\": {{ \"column\": \"its name\", \"unit\": \"bar gauge\" }}, \"water\": {{ \"column\": \"its name\", "
            + "\"unit\": \"mL\" }";

    private static bool IsTime(HeaderCell cell) => cell.UnitText is { } text && LogUnit.Find(text, out _)?.Kind == "time";

    private void FindColumns(Func<LogUnit, bool> wanted)
    {
        var names = new HashSet<string>(StringComparer.OrdinalIgnoreCase);
        var mapped = _mapping.Given.Select(g => (g.Role, g.Column, At: Place(g.Column, g.Role))).ToList();
        foreach (var (role, _, at) in mapped) Roles[role] = _cells[at].Name;
        for (var k = 0; k < _cells.Length; k++)
        {
            if (k == ClockAt || k == DayAt || IsNameless(k)) continue;
            var cell = _cells[k];
            var given = mapped.FirstOrDefault(m => m.At == k).Column;
            if ((given?.Unit ?? cell.UnitText) is not { } text)
            {
                Skipped.Add(new(cell.Name, _line, "the column has no unit",
                    "write it in brackets behind the name, as in 'pressure [bar gauge]', or "
                        + $"{MappingFile.Write(_file, MappingFile.Member("pressure", cell.Name, "bar gauge"))}, with what the column is."));
                continue;
            }

            if (cell.Name.Length == 0) throw Wrong(cell.Text, "the column has no name",
                "write one before the unit, as in 'pressure [bar gauge]'.");
            var unit = LogUnit.Find(text, out var problem, needsReference: false);
            // A g of acceleration isn't a gram.
            if (unit is null || (unit.Text == "g" && cell.Name.Contains("acc", StringComparison.OrdinalIgnoreCase)))
            {
                var nearest = LogUnit.Nearest(text);
                var skipped = new SkippedColumn(cell.Name, _line, problem.Length > 0 ? problem : "a g of acceleration isn't read",
                    $"{(nearest is null ? "" : $"did you mean '{nearest}'? ")}allowed are {LogUnit.Allowed}.");
                if (given is not null) throw Wrong(skipped.Name, skipped.Found, skipped.Allowed);
                Skipped.Add(skipped);
                continue;
            }

            if (given?.Unit is { } said && cell.UnitText is { } written
                && Contradicts(LogUnit.Find(written, out _, needsReference: false), unit))
            {
                throw Wrong(cell.Name, $"the header says '{written}' and the mapping '{said}'",
                    "correct the one that is wrong: the same number is another quantity in each.");
            }

            if (given is null && !wanted(unit)) continue;
            if (!names.Add(cell.Name)) throw Wrong(cell.Name, "the name stands twice", "every column needs a name of its own.");
            Columns[k] = new(cell, unit, given, _file);
        }

        if (Columns.All(c => c is null)) throw Nothing();
        if (Skipped.Count > 0)
            Findings.Add(Finding.Note($"{(Skipped.Count == 1 ? "One column was" : $"{Skipped.Count} columns were")} skipped: "
                + string.Join("; ", Skipped.Take(5).Select(s => $"'{s.Name}' ({s.Found})")) + (Skipped.Count > 5 ? "; and more." : ".")));
    }

    // Of one kind, and another size: a gauge's psi read as bar would prove a vessel to fifteen times what it held.
    private static bool Contradicts(LogUnit? header, LogUnit mapping) => header is not null && header.Kind == mapping.Kind
        && (Math.Abs((header.Factor / header.Divisor) - (mapping.Factor / mapping.Divisor))
                > 1e-9 * Math.Abs(mapping.Factor / mapping.Divisor)
            || (header.Kind == "temperature" && Math.Abs(header.Offset - mapping.Offset) > 1e-9));

    private LogFormatException Nothing() =>
        Skipped.Count == 0 ? _cells.Length - (DayAt >= 0 ? 1 : 0) < 2
                ? Wrong("", "there is only a clock", "a log has at least one more column.")
                : Wrong("", $"no column is of the kind that is wanted; the columns are {Excerpt.Names(_cells.Select(c => c.Text))}",
                    $"{MappingFile.Write(_file, "\"pressure\": { \"column\": \"its name\", \"unit\": \"bar gauge\" }")}.")
            : Wrong(Skipped[0].Name, Skipped[0].Found, Skipped[0].Allowed);

    private int Place(LogColumn column, string role)
    {
        var at = Array.FindIndex(_cells, c => c.Means(column.Header));
        if (at >= 0) return at;
        var near = column.Header.Length > 60 ? null : _cells.Select(c => c.Name).Where(n => n.Length is > 0 and <= 60)
            .MinBy(n => EditDistance.Between(n, column.Header));
        throw Wrong(column.Header, $"the mapping names it as {role.ToLowerInvariant()} and the header has no such column",
            $"{(near is null ? "" : $"did you mean '{near}'? ")}The columns are {Excerpt.Names(_cells.Select(c => c.Text))}.");
    }

    private LogFormatException Wrong(string column, string found, string allowed) => new(_file, _line, column, found, allowed);
}

/// <summary>A column that was left out, and why.</summary>
/// <param name="Name">Its name.</param>
/// <param name="Line">Line of the header.</param>
/// <param name="Found">What is wrong.</param>
/// <param name="Allowed">What to do.</param>
internal sealed record SkippedColumn(string Name, int Line, string Found, string Allowed);
