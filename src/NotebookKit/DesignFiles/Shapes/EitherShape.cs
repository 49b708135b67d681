using System.Text.Json.Nodes;
using NotebookKit.DesignFiles.Trees;

namespace NotebookKit.DesignFiles.Shapes;

/// <summary>A text in short, or an object in full.</summary>
/// <typeparam name="TShort">What the text means.</typeparam>
/// <typeparam name="T">What is made of either.</typeparam>
internal sealed class EitherShape<TShort, T>(ScalarShape<TShort> brief, Func<TShort, T> meaning, Shape<T> full) : Shape<T>
{
    /// <inheritdoc/>
    public override bool TryRead(TreeNode node, Spot spot, out T value)
    {
        if (node is TreeNode.Members) return full.TryRead(node, spot, out value);
        value = default!;
        if (!brief.TryRead(node, spot, out var text)) return false;
        value = meaning(text);
        return true;
    }

    /// <inheritdoc/>
    public override TreeNode Order(TreeNode node) => full.Order(node);

    /// <inheritdoc/>
    public override JsonObject Schema(SchemaBook book)
    {
        var text = brief.Schema(book);
        // What is stated with a reason is an object, which here is the one in full.
        var bare = text["anyOf"] is JsonArray forms ? new JsonArray([.. forms.Take(2).Select(f => f!.DeepClone())]) : new JsonArray(text);
        return new() { ["anyOf"] = new JsonArray([.. bare.Select(b => b!.DeepClone()), full.Schema(book)]) };
    }
}
