namespace NotebookKit.Charts.Figures;

/// <summary>A JSON object of a figure in the order its members were added.</summary>
internal sealed class Node : List<KeyValuePair<string, object?>>
{
    public void Add(string key, object? value) => Add(KeyValuePair.Create(key, value));
}
