using System.Text.Json.Nodes;
using NotebookKit.DesignFiles.Trees;

namespace NotebookKit.DesignFiles.Shapes;

/// <summary>A list.</summary>
/// <typeparam name="T">Type of its items.</typeparam>
internal sealed class ListShape<T>(Shape<T> item, int least, int most) : Shape<IReadOnlyList<T>>
{
    /// <inheritdoc/>
    public override bool TryRead(TreeNode node, Spot spot, out IReadOnlyList<T> value)
    {
        value = [];
        if (node is not TreeNode.Items items)
        {
            spot.Say(node.At, DesignFilesFindings.WrongForm(spot.What, node.Noun, "a list in square brackets"));
            return false;
        }

        if (items.All.Count < least || items.All.Count > most)
        {
            spot.Say(node.At, DesignFilesFindings.TooManyItems(spot.What, items.All.Count, least, most));
            return false;
        }

        var read = new List<T>();
        for (var i = 0; i < items.All.Count; i++)
            if (item.TryRead(items.All[i], spot.At(i + 1), out var one)) read.Add(one);
        value = read.AsReadOnly();
        return read.Count == items.All.Count;
    }

    /// <inheritdoc/>
    public override TreeNode Order(TreeNode node) => node is TreeNode.Items items
        ? items with { All = [.. items.All.Select(item.Order)] } : node;

    /// <inheritdoc/>
    public override JsonObject Schema(SchemaBook book) => new()
    {
        ["type"] = "array", ["items"] = item.Schema(book), ["minItems"] = least, ["maxItems"] = most,
    };
}
