using NotebookKit.Provenance;

namespace NotebookKit.Clearance.Service;

/// <summary>One figure of a set of limits, and where it comes from.</summary>
/// <typeparam name="T">A count, a quantity or a choice.</typeparam>
/// <param name="Value">The figure.</param>
/// <param name="Source">Where it comes from.</param>
public sealed record LifeFigure<T>(T Value, Source Source) where T : struct;
