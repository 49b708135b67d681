using NotebookKit.DesignFiles.Trees;

namespace NotebookKit.DesignFiles.Shapes;

/// <summary>What may stand at a place of a design file, and the value it means.</summary>
/// <typeparam name="T">Type of the value.</typeparam>
internal abstract class Shape<T> : Shape
{
    /// <summary>Reads a value; false where something is wrong, which the reading then knows.</summary>
    public abstract bool TryRead(TreeNode node, Spot spot, out T value);
}
