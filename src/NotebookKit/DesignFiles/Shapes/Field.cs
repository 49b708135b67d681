using System.Text.Json.Nodes;
using NotebookKit.DesignFiles.Trees;

namespace NotebookKit.DesignFiles.Shapes;

/// <summary>One key of an object: what stands there, whether it must, and what is taken where it doesn't.</summary>
/// <param name="Key">The key.</param>
/// <param name="Shape">What stands there.</param>
/// <param name="About">What it is for, a sentence.</param>
/// <param name="IsNeeded">Whether it must be there.</param>
/// <param name="Kind">What kind of single value it is; empty where it isn't one.</param>
/// <param name="Range">What it may be, in words.</param>
/// <param name="Default">The value taken where it isn't there, as a file would have it; none where it is then not given.</param>
/// <param name="Read">Reads it.</param>
internal sealed record Field(string Key, Shape Shape, string About, bool IsNeeded, string Kind, string Range, string? Default,
    Func<TreeNode, Spot, (bool Right, object? Value)> Read)
{
    /// <summary>The schema of what stands there, with its text and its default.</summary>
    public JsonObject Schema(SchemaBook book, bool isWhole = true)
    {
        var schema = isWhole ? Shape.Schema(book) : Shape.PartialSchema(book);
        var range = Range.Length > 0 ? $" Range: {Range}." : "";
        schema["description"] = About + range + (Default is null ? "" : $" {Default} unless given.");
        return schema;
    }
}
