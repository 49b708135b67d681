namespace NotebookKit.Clearance;

/// <summary>One piece of what stands behind a flight card.</summary>
/// <param name="Name">What it is: "proved vessel".</param>
/// <param name="IsShown">Whether it was handed over; what isn't forbids the flight.</param>
/// <param name="What">What it says in a few words, or what would show it.</param>
public sealed record EvidenceItem(string Name, bool IsShown, string What);
