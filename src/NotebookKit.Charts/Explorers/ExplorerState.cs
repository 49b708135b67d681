namespace NotebookKit.Charts.Explorers;

/// <summary>What a model gives for one setting of the parameters: a curve and numbers, or the reason why not.</summary>
public sealed record ExplorerState
{
    /// <summary>Horizontal values of the curve. Point i of one setting must mean the same as point i of every other: the tenth part of the
    /// burn, not the tenth millisecond.</summary>
    public IReadOnlyList<double> X { get; init; } = [];

    /// <summary>Vertical values of the curve, as many as the horizontal ones.</summary>
    public IReadOnlyList<double> Y { get; init; } = [];

    /// <summary>The numbers, in the order they were declared.</summary>
    public IReadOnlyList<double> Numbers { get; init; } = [];

    /// <summary>Why there is no answer; empty where there is one.</summary>
    public string RefusedBecause { get; init; } = "";

    /// <summary>No answer for this setting.</summary>
    /// <param name="reason">A sentence that says why.</param>
    public static ExplorerState Refused(string reason) => new() { RefusedBecause = string.IsNullOrWhiteSpace(reason)
        ? "There is no answer for this setting." : reason };
}
