using System.Globalization;
using System.Text.Json;
using System.Text.Json.Nodes;
using NotebookKit.DesignFiles.Trees;
using NotebookKit.Provenance;

namespace NotebookKit.DesignFiles.Shapes;

/// <summary>A whole number within a range.</summary>
internal sealed class CountShape(int minimum, int maximum, string reason) : ScalarShape<int>
{
    /// <inheritdoc/>
    public override string Noun => "whole number";

    /// <inheritdoc/>
    protected override bool HasOrder => true;

    /// <inheritdoc/>
    protected override string RangeInWords => FormattableString.Invariant($"{minimum} to {maximum}");

    /// <inheritdoc/>
    public override string Write(int value) => value.ToString(CultureInfo.InvariantCulture);

    /// <inheritdoc/>
    public override JsonObject Schema(SchemaBook book)
    {
        // Limits beside the reference hold for a bare number.
        var schema = book.Stated(Noun, new() { ["type"] = "integer" }, HasOrder);
        (schema["minimum"], schema["maximum"]) = (minimum, maximum);
        return schema;
    }

    /// <inheritdoc/>
    protected override bool TryReadBare(TreeNode node, Spot spot, out int value)
    {
        value = default;
        if (node is TreeNode.Literal { Kind: JsonTokenType.Number } number
            && int.TryParse(number.Value, NumberStyles.AllowLeadingSign, CultureInfo.InvariantCulture, out value)) return true;
        var shown = node switch { TreeNode.Text t => t.Value, TreeNode.Literal l => l.Value, _ => node.Noun };
        spot.Say(node.At, DesignFilesFindings.NotANumber(spot.What, shown.Length > 60 ? shown[..60] : shown, "a whole number",
            Write(minimum)));
        return false;
    }

    /// <inheritdoc/>
    protected override string? OutOf(int value, int from, bool hasFrom, int to, bool hasTo, Spot spot, string why) =>
        new ValidRange<int>(minimum, maximum).Find(value, spot.What, reason)?.Message
            ?? new ValidRange<int>(hasFrom ? from : minimum, hasTo ? to : maximum).Find(value, spot.What, why)?.Message;
}
