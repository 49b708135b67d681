using System.Text.Json.Nodes;
using NotebookKit.DesignFiles.Trees;
using NotebookKit.Materials.Solids;

namespace NotebookKit.DesignFiles.Shapes;

/// <summary>The name of a material, of the library or of the design's own.</summary>
/// <typeparam name="T">Kind of material.</typeparam>
internal sealed class MaterialShape<T>(string noun, Func<T, bool>? only = null) : ScalarShape<T> where T : class, IMaterial
{
    /// <inheritdoc/>
    public override string Noun => noun;

    /// <inheritdoc/>
    protected override string RangeInWords => $"a {noun} of the library or of the design's own materials";

    /// <inheritdoc/>
    public override string Write(T value) => value.Name;

    /// <inheritdoc/>
    public override JsonObject Schema(SchemaBook book)
    {
        var schema = book.Stated($"{noun} by name", new()
        {
            ["type"] = "string", ["description"] = "A name of the library, or of the design's own under \"materials\".",
        }, HasOrder);
        schema["examples"] = SchemaBook.Words(Those(MaterialLibrary.Typical).Select(m => m.Name));
        return schema;
    }

    /// <inheritdoc/>
    protected override bool TryReadBare(TreeNode node, Spot spot, out T value)
    {
        value = null!;
        if (node is not TreeNode.Text text)
        {
            spot.Say(node.At, DesignFilesFindings.WrongForm(spot.What, node.Noun, $"the name of a {noun} in quotes"));
            return false;
        }

        var all = Those(spot.Run.Library).ToList();
        if (all.FirstOrDefault(m => string.Equals(m.Name, text.Value, StringComparison.OrdinalIgnoreCase)) is { } found)
        {
            value = found;
            return true;
        }

        var asked = text.Value.Length > 80 ? text.Value[..80] : text.Value;
        spot.Say(node.At, DesignFilesFindings.NoSuchMaterial(spot.What, noun, asked,
            [.. all.Select(m => m.Name).OrderBy(n => Numerics.EditDistance.Between(asked, n)).Take(3)]));
        return false;
    }

    private IEnumerable<T> Those(MaterialLibrary library) => library.AllOf<T>().Where(m => only?.Invoke(m) ?? true);
}
