namespace NotebookKit.Building.Calendars;

/// <summary>The critical path of a plan in which hands are never short. Source: J. E. Kelley, M. R. Walker, 1959.</summary>
internal sealed class CriticalPath
{
    private readonly Dictionary<string, TimeSpan> _earliest = [];
    private readonly Dictionary<string, TimeSpan> _tail = [];

    public CriticalPath(IReadOnlyList<BuildTask> tasks)
    {
        var order = OrderOf(tasks) ?? throw new InvalidOperationException("The tasks wait for each other in a circle.");
        foreach (var task in order)
            _earliest[task.Name] = task.After.Select(b => _earliest[b] + Whole(tasks, b)).DefaultIfEmpty().Max();
        foreach (var task in Enumerable.Reverse(order))
            _tail[task.Name] = task.HandsSpan + task.WaitSpan
                + tasks.Where(t => t.After.Contains(task.Name)).Select(t => _tail[t.Name]).DefaultIfEmpty().Max();
        Length = tasks.Max(t => _earliest[t.Name] + t.HandsSpan + t.WaitSpan);
    }

    /// <summary>Time the whole plan takes.</summary>
    public TimeSpan Length { get; }

    /// <summary>Time from the start of a task to the end of the plan, along the longest chain behind it.</summary>
    public TimeSpan TailOf(BuildTask task) => _tail[task.Name];

    /// <summary>How much a task may slip without moving the end.</summary>
    public TimeSpan SlackOf(BuildTask task) => Length - _earliest[task.Name] - _tail[task.Name];

    /// <summary>The tasks, each behind all it waits for; none where they wait in a circle.</summary>
    public static IReadOnlyList<BuildTask>? OrderOf(IReadOnlyList<BuildTask> tasks)
    {
        List<BuildTask> order = [];
        HashSet<string> done = [];
        while (order.Count < tasks.Count)
        {
            var next = tasks.Where(t => !done.Contains(t.Name) && t.After.All(done.Contains)).ToList();
            if (next.Count == 0) return null;
            order.AddRange(next);
            done.UnionWith(next.Select(t => t.Name));
        }

        return order;
    }

    private static TimeSpan Whole(IReadOnlyList<BuildTask> tasks, string name)
    {
        var task = tasks.First(t => t.Name == name);
        return task.HandsSpan + task.WaitSpan;
    }
}
