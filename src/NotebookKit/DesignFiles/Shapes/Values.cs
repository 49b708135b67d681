namespace NotebookKit.DesignFiles.Shapes;

/// <summary>What was read of an object, key by key.</summary>
/// <param name="All">Values in the order of the fields; none where a key isn't there.</param>
/// <param name="Spot">Where it stands.</param>
/// <param name="Word">Word by which it was chosen among alternatives; empty where it wasn't.</param>
internal sealed record Values(IReadOnlyList<object?> All, Spot Spot, string Word);
