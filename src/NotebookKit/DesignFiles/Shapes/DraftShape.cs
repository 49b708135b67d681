using System.Text.Json.Nodes;
using NotebookKit.DesignFiles.Trees;

namespace NotebookKit.DesignFiles.Shapes;

/// <summary>What differs from another object of the same keys: read only where it is laid over the other.</summary>
/// <typeparam name="T">What the whole object makes.</typeparam>
internal sealed class DraftShape<T>(ObjectShape<T> whole) : Shape<TreeNode>
{
    /// <inheritdoc/>
    public override bool TryRead(TreeNode node, Spot spot, out TreeNode value)
    {
        value = node;
        if (node is TreeNode.Members) return true;
        spot.Say(node.At, DesignFilesFindings.WrongForm(spot.What, node.Noun, "an object in braces"));
        return false;
    }

    /// <inheritdoc/>
    public override TreeNode Order(TreeNode node) => whole.Order(node);

    /// <inheritdoc/>
    public override JsonObject Schema(SchemaBook book) => whole.PartialSchema(book);

    /// <summary>One object laid over another: its keys count, objects within are laid over each other, lists replace.</summary>
    public static TreeNode Over(TreeNode above, TreeNode below)
    {
        if (above is not TreeNode.Members over || below is not TreeNode.Members under) return above;
        // What is of another kind, or has a value of its own, isn't mixed with what it replaces.
        if (over.Find("kind") is not null || over.Find("value") is not null) return over;
        return over with
        {
            All =
            [
                .. over.All.Select(m => m with { Value = under.Find(m.Key) is { } own ? Over(m.Value, own) : m.Value }),
                .. under.All.Where(m => over.Find(m.Key) is null),
            ],
        };
    }
}
