using System.Text.Json.Nodes;
using NotebookKit.DesignFiles.Trees;
using NotebookKit.Provenance;

namespace NotebookKit.DesignFiles.Shapes;

/// <summary>A value with its unit, within a range.</summary>
/// <typeparam name="T">A quantity, or a gauge or absolute pressure.</typeparam>
internal sealed class UnitShape<T>(ValidRange<T>? range, string reason) : ScalarShape<T> where T : struct, IComparable<T>
{
    private static readonly UnitKind Kind = UnitKind.Of<T>();

    /// <inheritdoc/>
    public override string Noun => Kind.Noun;

    /// <inheritdoc/>
    protected override bool HasOrder => true;

    /// <inheritdoc/>
    protected override string RangeInWords => range?.ToString() ?? "";

    /// <inheritdoc/>
    public override string Write(T value) => UnitKind.Write(value);

    /// <inheritdoc/>
    public override JsonObject Schema(SchemaBook book)
    {
        var schema = book.Stated(Kind.Noun, new()
        {
            ["type"] = "string", ["pattern"] = Kind.Pattern, ["description"] = $"For example \"{Kind.Example}\".",
        }, HasOrder);
        if (range is { } bounds) schema["examples"] = new JsonArray(Example(bounds));
        return schema;
    }

    /// <inheritdoc/>
    protected override bool TryReadBare(TreeNode node, Spot spot, out T value)
    {
        value = default;
        if (node is not TreeNode.Text text)
        {
            spot.Say(node.At, node is TreeNode.Literal { Kind: System.Text.Json.JsonTokenType.Number } number
                ? Kind.Refusal(spot.What, number.Value)
                : DesignFilesFindings.WrongForm(spot.What, node.Noun, $"a text with a unit, for example \"{Kind.Example}\""));
            return false;
        }

        if (Kind.Read(text.Value) is not T read)
        {
            spot.Say(node.At, Kind.Refusal(spot.What, text.Value));
            return false;
        }

        value = read;
        return true;
    }

    /// <inheritdoc/>
    protected override string? OutOf(T value, T from, bool hasFrom, T to, bool hasTo, Spot spot, string why)
    {
        if (range is { } own && !own.Contains(value)) return own.Find(value, spot.What, reason)!.Message;
        if ((!hasFrom || value.CompareTo(from) >= 0) && (!hasTo || value.CompareTo(to) <= 0)) return null;
        var low = hasFrom ? UnitKind.Write(from) : range is { } r ? UnitKind.Write(r.Minimum) : "any";
        var high = hasTo ? UnitKind.Write(to) : range is { } q ? UnitKind.Write(q.Maximum) : "any";
        return OutOfRangeException.Sentence(spot.What, UnitKind.Write(value), low, high, why);
    }

    /// <inheritdoc/>
    protected override bool TryAdd(ref T value, int sign, string text)
    {
        if (Kind.Read(text) is not T more || UnitKind.Sum(value, sign, more) is not T sum) return false;
        value = sum;
        return true;
    }

    private static string Example(ValidRange<T> bounds) =>
        Kind.Read(Kind.Example) is T usual && bounds.Contains(usual) ? Kind.Example : UnitKind.Write(bounds.Maximum);
}
