using System.Globalization;
using System.Text.Json;
using System.Text.Json.Nodes;
using NotebookKit.DesignFiles.Trees;
using NotebookKit.Provenance;
using NotebookKit.Quantities.Texts;

namespace NotebookKit.DesignFiles.Shapes;

/// <summary>A plain number without a unit, within a range.</summary>
internal sealed class NumberShape(double minimum, double maximum, string reason) : ScalarShape<double>
{
    private readonly ValidRange<double> _range = new(minimum, maximum);

    /// <inheritdoc/>
    public override string Noun => "number";

    /// <inheritdoc/>
    protected override bool HasOrder => true;

    /// <inheritdoc/>
    protected override string RangeInWords => _range.ToString();

    /// <inheritdoc/>
    public override string Write(double value) => value.ToString("R", CultureInfo.InvariantCulture);

    /// <inheritdoc/>
    public override JsonObject Schema(SchemaBook book)
    {
        // Limits beside the reference hold for a bare number.
        var schema = book.Stated(Noun, new() { ["type"] = "number" }, HasOrder);
        (schema["minimum"], schema["maximum"]) = (minimum, maximum);
        return schema;
    }

    /// <inheritdoc/>
    protected override bool TryReadBare(TreeNode node, Spot spot, out double value)
    {
        value = default;
        if (node is TreeNode.Literal { Kind: JsonTokenType.Number } number && UnitText.Number(number.Value) is { } read)
        {
            value = read;
            return true;
        }

        spot.Say(node.At, node is TreeNode.Text text ? DesignFilesFindings.NotANumber(spot.What, text.Value.Length > 60 ? text.Value[..60]
            : text.Value, "a plain number", Write(minimum)) : DesignFilesFindings.WrongForm(spot.What, node.Noun, "a plain number"));
        return false;
    }

    /// <inheritdoc/>
    protected override string? OutOf(double value, double from, bool hasFrom, double to, bool hasTo, Spot spot, string why) =>
        _range.Find(value, spot.What, reason)?.Message ?? new ValidRange<double>(hasFrom ? from : minimum, hasTo ? to : maximum)
            .Find(value, spot.What, why)?.Message;
}
