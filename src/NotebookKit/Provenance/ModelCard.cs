namespace NotebookKit.Provenance;

/// <summary>What a result rests on: the model, what it assumes, where it holds, where it comes from.</summary>
/// <param name="Name">Name of the model.</param>
/// <param name="Assumptions">What it assumes, a sentence each.</param>
/// <param name="ValidRange">Where it holds, a sentence.</param>
/// <param name="Sources">Where it comes from.</param>
public sealed record ModelCard(string Name, IReadOnlyList<string> Assumptions, string ValidRange, IReadOnlyList<Source> Sources);
