namespace NotebookKit.Charts.Figures;

/// <summary>A JSON object of a figure. Nothing is ever taken out of it, so its members keep the order they were added in.</summary>
internal sealed class Node : Dictionary<string, object?>;
