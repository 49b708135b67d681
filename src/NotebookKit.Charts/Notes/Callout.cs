namespace NotebookKit.Charts.Notes;

/// <summary>A remark at a point of the chart: "chosen", "best fill".</summary>
/// <param name="X">Where [unit of the horizontal axis]; any finite value.</param>
/// <param name="Y">Where [unit of the vertical axis]; any finite value.</param>
/// <param name="Text">The remark.</param>
public sealed record Callout(double X, double Y, string Text);
