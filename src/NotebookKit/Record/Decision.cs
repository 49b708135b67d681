namespace NotebookKit.Record;

/// <summary>What was chosen, what it beat, why, and the condition under which it stays right.</summary>
/// <param name="Name">What was to be decided, unique in its record.</param>
/// <param name="Chosen">What was chosen.</param>
/// <param name="Beat">What was turned down, each with its reason.</param>
/// <param name="Why">Why it was chosen.</param>
/// <param name="StaysRightWhile">The condition, with the value it had when the record was made.</param>
public sealed record Decision(string Name, string Chosen, IReadOnlyList<string> Beat, string Why, Requirement StaysRightWhile)
{
    /// <summary>Names of the evidence that the choice rests on, that of its condition apart; none where none was named.</summary>
    public IReadOnlyList<string> RestsOn { get; init => field = value ?? []; } = [];

    /// <summary>False when the condition no longer holds: the decision wants another look.</summary>
    public bool StillRight => StaysRightWhile.Holds;
}
