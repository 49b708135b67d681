using NotebookKit.Quantities;

namespace NotebookKit.Logs;

/// <summary>Whether two logs are one proof: rows taken away, added or moved in time don't make a new one.</summary>
/// <remarks>
/// While pressure is held, honest logs of one plan look alike; a pressure that changes from one row to the next comes at the same time and
/// to the same digit in one proof only. More than half of those changes: common practice, no source.
/// </remarks>
internal sealed class SameReadings
{
    private const double TicksPerSecond = 1e4, StepsPerUnit = 1e4;

    // Fewer changes than these tell nothing.
    private const int FewestChanges = 4;

    // So many, nearly all of them equal, are one log whatever stands in its other columns.
    private const int ManyChanges = 30;

    private const double MostAlike = 0.5, NearlyAll = 0.9;
    private const int MostAnchors = 80, MostShifts = 40, MostRowsOfAnchor = 2000;

    private readonly Rows _few, _many;
    private readonly List<int> _changes;
    private readonly Dictionary<long, int> _at = [];

    private SameReadings(Rows few, Rows many)
    {
        (_few, _many) = (few, many);
        _changes = [.. Enumerable.Range(1, Math.Max(0, few.Count - 1)).Where(i => few.Pressure[i] != few.Pressure[i - 1])];
        for (var i = 0; i < many.Count; i++) _at.TryAdd(many.Time[i], i);
    }

    /// <summary>How many of the changes in pressure of the shorter log the longer one has at the same time from a common start, to the
    /// same digits; none where the logs aren't of one proof.</summary>
    public static (int Same, int Of)? Find(Readings one, Readings other)
    {
        Rows a = new(one), b = new(other);
        return a.Count <= b.Count ? new SameReadings(a, b).Find() : new SameReadings(b, a).Find();
    }

    private (int Same, int Of)? Find()
    {
        if (_changes.Count < FewestChanges) return null;
        var hasSides = (_few.Temperature is not null && _many.Temperature is not null)
            || (_few.Expansion is not null && _many.Expansion is not null);
        foreach (var shift in Shifts())
        {
            var (pressure, all) = Counted(shift);
            if (all > MostAlike * _changes.Count) return (all, _changes.Count);
            if (hasSides && _changes.Count >= ManyChanges && pressure >= NearlyAll * _changes.Count) return (pressure, _changes.Count);
        }

        return null;
    }

    // Rows of equal pressure vote for the time between them.
    private List<long> Shifts()
    {
        var places = Enumerable.Range(0, _many.Count).ToLookup(i => _many.Pressure[i]);
        var step = Math.Max(1, _changes.Count / MostAnchors);
        var highest = _few.Pressure.Max();
        var anchors = _changes.Where((_, k) => k % step == 0)
            .Concat(_changes.OrderByDescending(i => _few.Pressure[i]).Take(10)).Append(Array.IndexOf(_few.Pressure, highest)).Append(0);
        Dictionary<long, int> votes = [];
        foreach (var anchor in anchors.Distinct())
            foreach (var place in places[_few.Pressure[anchor]].Take(MostRowsOfAnchor))
            {
                var shift = _few.Time[anchor] - _many.Time[place];
                votes[shift] = votes.GetValueOrDefault(shift) + 1;
            }

        return [.. votes.OrderByDescending(v => v.Value).ThenBy(v => v.Key).Take(MostShifts).Select(v => v.Key)];
    }

    private (int Pressure, int All) Counted(long shift)
    {
        var (pressure, all) = (0, 0);
        foreach (var i in _changes)
        {
            if (!_at.TryGetValue(_few.Time[i] - shift, out var at) || _many.Pressure[at] != _few.Pressure[i]
                || !_at.TryGetValue(_few.Time[i - 1] - shift, out var before) || _many.Pressure[before] != _few.Pressure[i - 1]) continue;
            pressure++;
            if (Same(_few.Temperature, _many.Temperature, i, at) && Same(_few.Expansion, _many.Expansion, i, at)) all++;
        }

        return (pressure, all);
    }

    private static bool Same(long[]? one, long[]? other, int at, int place) => one is null || other is null || one[at] == other[place];

    /// <summary>The columns of a log that are compared.</summary>
    internal sealed record Readings(Series Time, Series Pressure, Series? Temperature, Series? Expansion);

    // As whole numbers, so that what was written with the same digits is the same.
    private sealed class Rows(Readings of)
    {
        public int Count => Time.Length;

        public long[] Time { get; } = Whole(of.Time, TicksPerSecond)!;

        public long[] Pressure { get; } = Whole(of.Pressure, StepsPerUnit)!;

        public long[]? Temperature { get; } = Whole(of.Temperature, StepsPerUnit);

        public long[]? Expansion { get; } = Whole(of.Expansion, StepsPerUnit);

        private static long[]? Whole(Series? column, double steps) => column is null ? null
            : [.. column.Values.Select(v => (long)Math.Round(Math.Clamp(v * steps, -1e17, 1e17)))];
    }
}
