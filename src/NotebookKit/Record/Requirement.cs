namespace NotebookKit.Record;

/// <summary>A condition that must hold, with the value it had when the record was made.</summary>
/// <param name="Name">Name, unique in its record.</param>
/// <param name="LiveValue">The value that was computed, with its unit.</param>
/// <param name="Condition">The condition: "at most 90 bar gauge".</param>
/// <param name="Holds">Whether the value meets the condition.</param>
/// <param name="Why">Why it is required.</param>
public sealed record Requirement(string Name, string LiveValue, string Condition, bool Holds, string Why)
{
    /// <summary>Names of the evidence that the value rests on; none where none was named.</summary>
    public IReadOnlyList<string> RestsOn { get; init => field = value ?? []; } = [];

    /// <summary>Whether two requirements say the same, evidence included.</summary>
    /// <param name="other">The other requirement.</param>
    public bool Equals(Requirement? other) =>
        other is not null && (Name, LiveValue, Condition, Holds, Why) == (other.Name, other.LiveValue, other.Condition, other.Holds,
            other.Why)
        && RestsOn.SequenceEqual(other.RestsOn);

    /// <inheritdoc/>
    public override int GetHashCode() => HashCode.Combine(Name, LiveValue, Condition, Holds, Why, RestsOn.Count);
}
