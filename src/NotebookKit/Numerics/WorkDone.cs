namespace NotebookKit.Numerics;

/// <summary>How far a long computation is.</summary>
/// <param name="What">What is counted, in the plural: "flights".</param>
/// <param name="Done">How many are done; 0 or more.</param>
/// <param name="Of">How many there are; 1 or more.</param>
public readonly record struct WorkDone(string What, int Done, int Of)
{
    /// <summary>For example "4200 of 10000 flights".</summary>
    public override string ToString() => FormattableString.Invariant($"{Done} of {Of} {What}");
}
