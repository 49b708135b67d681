namespace NotebookKit.Record;

/// <summary>A condition that must hold, with the value it had when the record was made.</summary>
/// <param name="Name">Name, unique in its record.</param>
/// <param name="LiveValue">The value that was computed, with its unit.</param>
/// <param name="Condition">The condition: "at most 90 bar gauge".</param>
/// <param name="Holds">Whether the value meets the condition.</param>
/// <param name="Why">Why it is required.</param>
public sealed record Requirement(string Name, string LiveValue, string Condition, bool Holds, string Why);
