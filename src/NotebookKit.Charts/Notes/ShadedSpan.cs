namespace NotebookKit.Charts.Notes;

/// <summary>A tinted part of the chart: a phase of the burn, a forbidden range.</summary>
/// <param name="From">Start [unit of the axis it is read on]; any finite value.</param>
/// <param name="To">End [unit of the axis it is read on]; any finite value.</param>
/// <param name="Label">What it is; may be empty.</param>
public sealed record ShadedSpan(double From, double To, string Label)
{
    /// <summary>Whether the span lies across, being read on the vertical axis.</summary>
    public bool Across { get; init; }

    /// <summary>Whether the span is one to keep out of; it is tinted as a warning then.</summary>
    public bool Forbidden { get; init; }
}
