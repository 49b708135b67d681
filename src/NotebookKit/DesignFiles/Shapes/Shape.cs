using System.Text.Json.Nodes;
using NotebookKit.DesignFiles.Trees;

namespace NotebookKit.DesignFiles.Shapes;

/// <summary>What may stand at a place of a design file. One description reads it, puts it in order and writes its schema.</summary>
internal abstract class Shape
{
    /// <summary>The same with keys in their standing order.</summary>
    public virtual TreeNode Order(TreeNode node) => node;

    /// <summary>What a JSON Schema says of it.</summary>
    public abstract JsonObject Schema(SchemaBook book);

    /// <summary>What a JSON Schema says of it where only what differs from another is given.</summary>
    public virtual JsonObject PartialSchema(SchemaBook book) => Schema(book);
}
