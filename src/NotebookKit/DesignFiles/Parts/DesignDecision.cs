namespace NotebookKit.DesignFiles.Parts;

/// <summary>What was chosen in a design, what it beat, why, and while which requirement it stays right.</summary>
/// <param name="Name">What was to be decided, unique in its design.</param>
/// <param name="Chosen">What was chosen.</param>
/// <param name="Beat">What was turned down, each with its reason.</param>
/// <param name="Why">Why it was chosen.</param>
/// <param name="StaysRightWhile">Name of a requirement of the design.</param>
public sealed record DesignDecision(string Name, string Chosen, IReadOnlyList<string> Beat, string Why, string StaysRightWhile);
