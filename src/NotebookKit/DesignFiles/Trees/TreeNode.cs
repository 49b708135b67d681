using System.Text.Json;

namespace NotebookKit.DesignFiles.Trees;

/// <summary>A value of a design file that knows where it stands and which remarks stand beside it.</summary>
/// <param name="At">Where it starts.</param>
internal abstract record TreeNode(Place At)
{
    /// <summary>Remarks above it, as written.</summary>
    public IReadOnlyList<string> Before { get; init; } = [];

    /// <summary>Remark behind it on its line; none where there is none.</summary>
    public string? After { get; init; }

    /// <summary>Remarks below its last member or item.</summary>
    public IReadOnlyList<string> Last { get; init; } = [];

    /// <summary>Whether remarks stand at it or inside it.</summary>
    public virtual bool HasRemarks => Before.Count + Last.Count > 0 || After is not null;

    /// <summary>What it is called in a sentence.</summary>
    public abstract string Noun { get; }

    /// <summary>An object: members in the order of the text.</summary>
    public sealed record Members(Place At, IReadOnlyList<Member> All) : TreeNode(At)
    {
        public override string Noun => "an object";

        public override bool HasRemarks => base.HasRemarks || All.Any(m => m.Value.HasRemarks);

        /// <summary>The value of a key; none where the key isn't there.</summary>
        public TreeNode? Find(string key) => All.FirstOrDefault(m => m.Key == key)?.Value;
    }

    /// <summary>A list.</summary>
    public sealed record Items(Place At, IReadOnlyList<TreeNode> All) : TreeNode(At)
    {
        public override string Noun => "a list";

        public override bool HasRemarks => base.HasRemarks || All.Any(i => i.HasRemarks);
    }

    /// <summary>A text in quotes.</summary>
    public sealed record Text(Place At, string Value) : TreeNode(At)
    {
        public override string Noun => "a text";
    }

    /// <summary>A number as written, true, false or null.</summary>
    public sealed record Literal(Place At, string Value, JsonTokenType Kind) : TreeNode(At)
    {
        public override string Noun => Kind == JsonTokenType.Number ? "a number without quotes" : Value;
    }

    /// <summary>A key with its value.</summary>
    public sealed record Member(string Key, Place KeyAt, TreeNode Value);
}
