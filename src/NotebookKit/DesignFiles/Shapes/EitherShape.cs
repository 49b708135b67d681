using System.Text.Json.Nodes;
using NotebookKit.DesignFiles.Trees;

namespace NotebookKit.DesignFiles.Shapes;

/// <summary>A text in short, or an object in full.</summary>
/// <typeparam name="TShort">What the text means.</typeparam>
/// <typeparam name="T">What is made of either.</typeparam>
internal sealed class EitherShape<TShort, T>(ScalarShape<TShort> brief, Func<TShort, T> meaning, Shape<T> full,
    bool isFullStated = false) : Shape<T>
{
    /// <inheritdoc/>
    public override bool TryRead(TreeNode node, Spot spot, out T value)
    {
        // What is stated with a reason is the text in short, unless the object in full has a key "value" of its own.
        if (node is TreeNode.Members members && (isFullStated || members.Find("value") is null)) return full.TryRead(node, spot, out value);
        value = default!;
        if (!brief.TryRead(node, spot, out var text)) return false;
        value = meaning(text);
        return true;
    }

    /// <inheritdoc/>
    public override TreeNode Order(TreeNode node) => full.Order(node);

    /// <inheritdoc/>
    public override JsonObject Schema(SchemaBook book) => new() { ["anyOf"] = new JsonArray(brief.Schema(book), full.Schema(book)) };
}
