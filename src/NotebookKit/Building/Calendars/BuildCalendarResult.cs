using System.Globalization;
using NotebookKit.Provenance;
using NotebookKit.Quantities;
using UnitsNet;

namespace NotebookKit.Building.Calendars;

/// <summary>A build, step by step on the calendar. Source: see <see cref="Model"/>.</summary>
public sealed record BuildCalendarResult : Result
{
    internal BuildCalendarResult(BuildCalendar calendar, IReadOnlyList<ScheduledTask> steps)
    {
        (Calendar, Steps) = (calendar, steps);
        Shortest = Duration.FromMinutes(new CriticalPath(calendar.Tasks).Length.TotalMinutes);
    }

    /// <summary>What was asked.</summary>
    public BuildCalendar Calendar { get; }

    /// <summary>The steps in the order they begin.</summary>
    public IReadOnlyList<ScheduledTask> Steps { get; }

    /// <summary>When the last one is ready.</summary>
    public DateTime End => Steps.Max(s => s.Ready);

    /// <summary>What it would take if somebody were always there: no plan is shorter.</summary>
    public Duration Shortest { get; }

    /// <summary>Hands-on time of all steps.</summary>
    public Duration HandsOn => Duration.FromHours(Calendar.Tasks.Sum(t => t.Hands.Hours));

    /// <inheritdoc/>
    public override string Title => "Build calendar";

    /// <inheritdoc/>
    public override ModelCard Model { get; } = new(
        "Steps by priority within bench hours",
        [
            "A step starts when all before it are ready, somebody is free and it fits the hours of that day without a break.",
            "Cures run by themselves and side by side; each takes its full time at room temperature.",
            "The plan is the best of several dozen orders, not provably the shortest; the length without waiting for anybody is "
                + "given beside it.",
        ],
        "Up to 200 steps.",
        [BuildingSources.CriticalPath, BuildingSources.SerialSchedule]);

    /// <inheritdoc/>
    public override IReadOnlyList<ResultLine> Lines =>
    [
        .. Steps.Select(s => new ResultLine(s.Task.Name, Day(s.Start),
            $"ready {Day(s.Ready)}{(s.IsCritical ? "; every delay moves the end" : "")}")),
        new("Ready", Day(End), $"{Digits.Round((End - Steps[0].Start).TotalDays, 2)} days after the first step"),
        new("At the bench", $"{Digits.Round(HandsOn.Hours)} h", $"{Calendar.People} at a time"),
        new("Longest chain", $"{Digits.Round(Shortest.Hours)} h", "cures included, if somebody were always at the bench"),
    ];

    /// <inheritdoc/>
    public override IReadOnlyList<Caution> Cautions => Provenance.Cautions.ForBench;

    /// <inheritdoc/>
    public override Working Working => new("Longest chain",
    [
        new("Longest chain", @"T = \max_{chains} \sum (t_{hands} + t_{wait})",
            string.Join(" + ", Chain().Select(t => $"{Digits.Round((t.Hands + t.Waits).Hours)} h ({t.Name})")),
            $"{Digits.Round(Shortest.Hours)} h", BuildingSources.CriticalPath),
    ]);

    private List<BuildTask> Chain()
    {
        List<BuildTask> chain = [];
        var path = new CriticalPath(Calendar.Tasks);
        for (var at = Calendar.Tasks.Where(t => t.After.Count == 0).MaxBy(path.TailOf); at is not null;)
        {
            chain.Add(at);
            var name = at.Name;
            at = Calendar.Tasks.Where(t => t.After.Contains(name) && path.SlackOf(t) < TimeSpan.FromMinutes(1)).MaxBy(path.TailOf);
        }

        return chain;
    }

    private static string Day(DateTime time) => time.ToString("ddd d MMM HH:mm", CultureInfo.InvariantCulture);
}

/// <summary>One step of a build with its times.</summary>
/// <param name="Task">The step.</param>
/// <param name="Start">When somebody begins.</param>
/// <param name="WorkEnd">When the hands are free again.</param>
/// <param name="Ready">When it is ready, its wait included.</param>
/// <param name="Slack">How much it may slip without moving the end, if hands were never short.</param>
public sealed record ScheduledTask(BuildTask Task, DateTime Start, DateTime WorkEnd, DateTime Ready, Duration Slack)
{
    /// <summary>Whether any delay of it delays the end.</summary>
    public bool IsCritical => Slack < Duration.FromMinutes(1);
}
