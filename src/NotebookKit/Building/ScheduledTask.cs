using UnitsNet;

namespace NotebookKit.Building;

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
