namespace NotebookKit.Numerics.Ode;

/// <summary>How an event function is watched.</summary>
/// <param name="Direction">Which crossings count.</param>
/// <param name="IsTerminal">Whether the integration ends at the first of them.</param>
public readonly record struct OdeEventRule(OdeEventDirection Direction, bool IsTerminal);
