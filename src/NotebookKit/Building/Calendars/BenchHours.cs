using NotebookKit.Provenance;

namespace NotebookKit.Building.Calendars;

/// <summary>When somebody is at the bench.</summary>
/// <param name="From">Start of the hours.</param>
/// <param name="Until">End of the hours, the same day; at least half an hour later.</param>
/// <param name="Days">Days of the week.</param>
public sealed record BenchHours(TimeOnly From, TimeOnly Until, IReadOnlyList<DayOfWeek> Days)
{
    /// <summary>Every day round the clock, as in a textbook's plan.</summary>
    public static BenchHours Always { get; } = new(TimeOnly.MinValue, TimeOnly.MaxValue, Enum.GetValues<DayOfWeek>());

    /// <summary>Weekday evenings from half past six to ten.</summary>
    public static BenchHours Evenings { get; } = new(
        new TimeOnly(18, 30), new TimeOnly(22, 0), [DayOfWeek.Monday, DayOfWeek.Tuesday, DayOfWeek.Wednesday, DayOfWeek.Thursday,
            DayOfWeek.Friday]);

    internal bool IsAlways => From == TimeOnly.MinValue && Until == TimeOnly.MaxValue && Days.Distinct().Count() == 7;

    internal TimeSpan Stretch => IsAlways ? TimeSpan.MaxValue : Until - From;

    /// <summary>Everything wrong with them.</summary>
    public IReadOnlyList<Finding> Validate()
    {
        List<Finding> findings = [];
        if (Days.Count == 0) findings.Add(BuildingFindings.NoDayAtBench());
        if (Until.ToTimeSpan() - From.ToTimeSpan() < TimeSpan.FromMinutes(30))
            findings.Add(BuildingFindings.BenchHoursTooShort(From, Until));
        return findings;
    }

    /// <summary>Earliest start of a stretch of work that isn't interrupted, at or after a moment.</summary>
    internal DateTime Next(DateTime after, TimeSpan work)
    {
        if (IsAlways || work <= TimeSpan.Zero) return after;
        for (var day = after.Date; ; day = day.AddDays(1))
        {
            if (!Days.Contains(day.DayOfWeek)) continue;
            var start = Max(after, day + From.ToTimeSpan());
            if (start + work <= day + Until.ToTimeSpan()) return start;
        }
    }

    private static DateTime Max(DateTime a, DateTime b) => a > b ? a : b;
}
