namespace NotebookKit.Charts.Notes;

/// <summary>A moment on the horizontal axis: "water out", "apogee".</summary>
/// <param name="At">Where [unit of the horizontal axis]; any finite value.</param>
/// <param name="Label">What happens there.</param>
public sealed record EventLine(double At, string Label);
