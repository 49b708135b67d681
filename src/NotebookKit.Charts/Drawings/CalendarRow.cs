namespace NotebookKit.Charts.Drawings;

/// <summary>One row of a calendar: a bar of work, then one of waiting.</summary>
/// <param name="Name">What it is.</param>
/// <param name="Start">When work begins.</param>
/// <param name="WorkEnd">When the hands are free.</param>
/// <param name="Ready">When it is ready.</param>
/// <param name="IsCritical">Whether any delay moves the end.</param>
public sealed record CalendarRow(string Name, DateTime Start, DateTime WorkEnd, DateTime Ready, bool IsCritical);
