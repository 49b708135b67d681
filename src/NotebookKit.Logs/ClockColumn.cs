using UnitsNet;

namespace NotebookKit.Logs;

/// <summary>The clock of a log as its cells are read: numbers of a unit, clock times, or stamps, with the day in a column of its own or
/// not.</summary>
internal sealed class ClockColumn(HeaderCell header, LogUnit? unit, HeaderCell? day, LogMapping mapping, string file)
{
    private enum Form
    {
        Unknown,
        Number,
        Clock,
        Stamp,
    }

    private const double NoonSeconds = 43_200;

    private readonly List<double> _seconds = [];
    private Form _form = unit is null ? Form.Unknown : Form.Number;
    private int _firstDay = -1, _firstZone, _midnights;
    private int? _zone;
    private double _lastOfDay = double.NaN;

    /// <summary>Name of the column.</summary>
    public string Name => header.Name;

    /// <summary>Seconds, as read: on the log's own clock for numbers, since the first row otherwise.</summary>
    public double[] Seconds()
    {
        double[] all = [.. _seconds];
        if (_form == Form.Number) return all;
        var start = all.Length > 0 ? all[0] : 0;
        for (var i = 0; i < all.Length; i++) all[i] -= start;
        return all;
    }

    public int Count => _seconds.Count;

    /// <summary>When the first row was read; none where the log doesn't say the day.</summary>
    public DateTime? Start => _form == Form.Number || _firstDay < 0 || _seconds.Count == 0 ? null
        : DateOnly.FromDayNumber(_firstDay).ToDateTime(TimeOnly.MinValue).AddSeconds(Math.Round(_seconds[0] + 60.0 * _firstZone, 3));

    /// <summary>By how much its clock is before universal time; none where nobody says.</summary>
    public Duration? Zone => _form == Form.Number ? null : _zone is not null ? Duration.FromMinutes(_firstZone) : mapping.UtcOffset;

    /// <summary>Times the clock passed midnight.</summary>
    public int Midnights => _midnights;

    /// <summary>Whether the times are clock times or stamps.</summary>
    public bool IsOfDay => _form != Form.Number;

    /// <summary>Reads the cells of a row.</summary>
    public void Add(ReadOnlySpan<char> cell, ReadOnlySpan<char> dayCell, char mark, int line)
    {
        if (cell.Length == 0) throw Wrong(line, "there is no time", "only the other columns may have gaps.");
        if (_form == Form.Unknown) _form = FormOf(cell, line);
        if (_form == Form.Number) _seconds.Add(Number(cell, mark, line));
        else _seconds.Add(_form == Form.Clock ? OfDay(cell, dayCell, line) : Stamp(cell, line));
    }

    private Form FormOf(ReadOnlySpan<char> cell, int line)
    {
        if (ClockText.Clock(cell, out _)) return Form.Clock;
        if (day is null && cell.Length > 9 && cell.IndexOfAny('T', ' ') > 0 && cell.Contains(':')) return Form.Stamp;
        if (CellNumber.TryRead(cell, '.', out _) || CellNumber.TryRead(cell, ',', out _))
            throw Wrong(line, $"the times are numbers ('{Excerpt.Of(cell)}') and the header says no unit",
                $"write the unit in the header, time [s], or {MappingFile.Write(file, MappingFile.Member("time", header.Name, "ms"))}, "
                    + "with the clock's own unit.");
        throw NoTime(cell, line);
    }

    private double Number(ReadOnlySpan<char> cell, char mark, int line)
    {
        if (!CellNumber.TryRead(cell, mark, out var written))
            throw ClockText.Clock(cell, out _)
                ? Wrong(line, $"'{Excerpt.Of(cell)}' is a clock time and the header says {unit!.Text}",
                    "leave out the unit of the column 'time' where the column holds clock times.")
                : Wrong(line, $"'{Excerpt.Of(cell)}' is not a finite number", $"write times as numbers of {unit!.Text}.");
        var seconds = unit!.Convert(written);
        if (double.IsFinite(seconds) && Math.Abs(seconds) > LogUnit.Largest)
            throw Wrong(line, $"'{Excerpt.Of(cell)}' {unit.Text} is more than any clock shows",
                $"a time lies within {LogUnit.Largest:0e+0} s; check the number, and the unit in the header.");
        return double.IsFinite(seconds) ? seconds
            : throw Wrong(line, $"'{Excerpt.Of(cell)}' {unit.Text} is not a finite time", "check the number, and the unit in the header.");
    }

    private double OfDay(ReadOnlySpan<char> cell, ReadOnlySpan<char> dayCell, int line)
    {
        if (!ClockText.Clock(cell, out var seconds)) throw NoTime(cell, line);
        if (day is not null)
        {
            if (!ClockText.Day(dayCell, mapping.DayFirst, out var number))
                throw new LogFormatException(file, line, day.Name, $"'{Excerpt.Of(dayCell)}' isn't a date that can be read in one way only",
                    "write days as 2026-03-14, or "
                    + $"{MappingFile.Write(file, "\"dayFirst\": true")} where the day of the month is first, or false where the month is.");
            if (_firstDay < 0) _firstDay = number;
            return (number - _firstDay) * ClockText.DaySeconds + seconds;
        }

        // 23:59:59 and then 00:00:00 is the next day; any other step back is a clock that was set.
        if (_lastOfDay > ClockText.DaySeconds - NoonSeconds / 12 && _lastOfDay < ClockText.DaySeconds && seconds < NoonSeconds / 12)
            _midnights++;
        _lastOfDay = seconds;
        return _midnights * ClockText.DaySeconds + seconds;
    }

    private double Stamp(ReadOnlySpan<char> cell, int line)
    {
        if (!ClockText.Stamp(cell, mapping.DayFirst, out var number, out var seconds, out var zone)) throw NoTime(cell, line);
        if (_firstDay < 0) (_firstDay, _zone, _firstZone) = (number, zone, zone ?? 0);
        else if (zone is null != _zone is null)
            throw Wrong(line, $"the time '{Excerpt.Of(cell)}' {(zone is null ? "has no" : "has a")} time zone, unlike those before",
                "write the zone with every time, or with none.");
        return (number - _firstDay) * ClockText.DaySeconds + seconds - 60.0 * (zone ?? 0);
    }

    private LogFormatException NoTime(ReadOnlySpan<char> cell, int line) => Wrong(line,
        $"'{Excerpt.Of(cell)}' is not a time that can be read",
        "write seconds, 10:02:11.5, or 2026-03-14T10:02:11+01:00; for dates with slashes "
            + $"{MappingFile.Write(file, "\"dayFirst\": true")} where the day of the month is first, or false where the month is.");

    private LogFormatException Wrong(int line, string found, string allowed) => new(file, line, header.Name, found, allowed);
}
