using NotebookKit.Provenance;

namespace NotebookKit.Building.Calendars;

/// <summary>The steps of a build, who is there to do them, and when they begin.</summary>
/// <remarks>
/// A step starts when all before it are ready, somebody is free, and it fits the hours of that day; cures run by themselves, so that
/// several may run side by side.
/// Source: J. E. Kelley, M. R. Walker, 1959 (critical path); R. Kolisch, Eur. J. Oper. Res. 90 (1996) 320 (serial scheme with priorities).
/// </remarks>
/// <param name="Tasks">The steps; 1 to 200.</param>
/// <param name="Start">When the build begins.</param>
/// <param name="Hours">When somebody is at the bench.</param>
public sealed record BuildCalendar(IReadOnlyList<BuildTask> Tasks, DateTime Start, BenchHours Hours)
{
    /// <summary>How many can work at once; 1 to 20, 1 unless given.</summary>
    public int People { get; init; } = 1;

    /// <summary>Everything wrong with it.</summary>
    public IReadOnlyList<Finding> Validate()
    {
        List<Finding> findings = [.. Hours.Validate(), .. Tasks.SelectMany(t => t.Validate())];
        if (Tasks.Count is < 1 or > 200) findings.Add(BuildingFindings.TaskCountOutOfRange(Tasks.Count));
        if (People is < 1 or > 20) findings.Add(BuildingFindings.NumberOfPeopleOutOfRange(People));
        foreach (var twice in Tasks.GroupBy(t => t.Name, StringComparer.Ordinal).Where(g => g.Count() > 1))
            findings.Add(BuildingFindings.TaskNameIsNotUnique(twice.Count(), twice.Key));
        var names = Tasks.Select(t => t.Name).ToHashSet(StringComparer.Ordinal);
        foreach (var task in Tasks)
            foreach (var before in task.After.Where(b => !names.Contains(b)))
                findings.Add(BuildingFindings.TaskWaitsForUnknownTask(task.Name, before));
        if (findings.Count > 0) return findings;
        foreach (var task in Tasks.Where(t => t.HandsSpan > Hours.Stretch))
            findings.Add(BuildingFindings.TaskDoesNotFitEvening(task.Name, Hands(task), Hours.Stretch.TotalHours));
        if (CriticalPath.OrderOf(Tasks) is null) findings.Add(BuildingFindings.SomeTasksWaitForEachOther());
        return findings;
    }

    /// <summary>Finds when each step can be done, and the earliest end found. Source: as the type.</summary>
    /// <exception cref="InvalidDesignException">Something is wrong with the plan; all reasons are in it.</exception>
    public BuildCalendarResult Plan()
    {
        InvalidDesignException.ThrowIfAny("Build calendar", Validate());
        return new BuildCalendarResult(this, CalendarModel.Schedule(this));
    }

    private static string Hands(BuildTask task) => $"{task.HandsSpan.TotalHours:0.#} h";
}
