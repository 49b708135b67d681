namespace NotebookKit.Vessels.Allowables;

/// <summary>One thing tested: where its test ended, and by which mode of failure.</summary>
/// <param name="Value">Where its test ended, above 0 [one unit for all].</param>
/// <param name="Mode">The mode by which it failed; none where it had not failed.</param>
public sealed record ModeObservation(double Value, string? Mode);
