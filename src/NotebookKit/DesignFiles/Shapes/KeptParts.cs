using NotebookKit.DesignFiles.Trees;
using NotebookKit.Materials.Solids;

namespace NotebookKit.DesignFiles.Shapes;

/// <summary>Parts of a design as they were read: a change of one value leaves the others as they are, and they need not be read
/// again.</summary>
internal sealed class KeptParts
{
    private readonly Dictionary<TreeNode, KeptPart> _all = new(ReferenceEqualityComparer.Instance);

    /// <summary>Keeps a part.</summary>
    public void Add(TreeNode node, KeptPart part) => _all[node] = part;

    /// <summary>A part as it was read; none where it, or what it was made of, has changed.</summary>
    /// <param name="shape">What it is read by.</param>
    /// <param name="node">The part.</param>
    /// <param name="path">Where it stands.</param>
    /// <param name="library">Materials before it is read.</param>
    /// <param name="root">The design that it stands in.</param>
    public KeptPart? Find(Shape shape, TreeNode node, string path, MaterialLibrary library, TreeNode root) =>
        _all.TryGetValue(node, out var kept) && ReferenceEquals(kept.Shape, shape) && kept.Path == path
        && (!kept.Looked.HasFlag(Looked.AtMaterials) || ReferenceEquals(kept.Library, library))
        && kept.TakenOver.All(t => ReferenceEquals(TreePath.Find(root, t.Path), t.Found)) ? kept : null;
}

/// <summary>A part as it was read.</summary>
/// <param name="Shape">What read it.</param>
/// <param name="Path">Where it stands.</param>
/// <param name="Value">What it means.</param>
/// <param name="Givens">Its values.</param>
/// <param name="TakenOver">Values of other places that it took over, as they stood.</param>
/// <param name="Looked">What else it was made of besides its own text.</param>
/// <param name="Library">Materials before it was read.</param>
/// <param name="LibraryAfter">Materials after it was read.</param>
internal sealed record KeptPart(Shape Shape, string Path, object? Value, IReadOnlyList<DesignGiven> Givens,
    IReadOnlyList<(string Path, TreeNode Found)> TakenOver, Looked Looked, MaterialLibrary Library, MaterialLibrary LibraryAfter);

/// <summary>What a part was made of besides its own text.</summary>
[Flags]
internal enum Looked
{
    /// <summary>Nothing.</summary>
    AtItself = 0,

    /// <summary>Materials of the library and of the design.</summary>
    AtMaterials = 1,

    /// <summary>The design as a whole as it stands; what its file had stays the same.</summary>
    AtOthers = 2,
}
