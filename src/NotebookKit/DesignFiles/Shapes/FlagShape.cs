using System.Text.Json;
using System.Text.Json.Nodes;
using NotebookKit.DesignFiles.Trees;

namespace NotebookKit.DesignFiles.Shapes;

/// <summary>True or false.</summary>
internal sealed class FlagShape : ScalarShape<bool>
{
    /// <inheritdoc/>
    public override string Noun => "true or false";

    /// <inheritdoc/>
    public override string Write(bool value) => value ? "true" : "false";

    /// <inheritdoc/>
    public override JsonObject Schema(SchemaBook book) => book.Stated(Noun, new() { ["type"] = "boolean" }, HasOrder);

    /// <inheritdoc/>
    protected override bool TryReadBare(TreeNode node, Spot spot, out bool value)
    {
        value = node is TreeNode.Literal { Kind: JsonTokenType.True };
        if (node is TreeNode.Literal { Kind: JsonTokenType.True or JsonTokenType.False }) return true;
        spot.Say(node.At, DesignFilesFindings.WrongForm(spot.What, node.Noun, "true or false without quotes"));
        return false;
    }
}
