using System.Text.Json.Nodes;
using System.Text.RegularExpressions;
using NotebookKit.DesignFiles.Trees;

namespace NotebookKit.DesignFiles.Shapes;

/// <summary>A name, or a text for people. It stands bare: nothing is taken over.</summary>
internal sealed class TextShape : Shape<string>
{
    private readonly Regex _regex;

    private TextShape(string pattern, bool isName) => (_regex, IsName) = (new(pattern, RegexOptions.CultureInvariant), isName);

    /// <summary>A name: it becomes part of pages and of file names, so markup and path separators are refused.</summary>
    public static TextShape Name { get; } = new(@"^[^<>\/\\\u0000-\u001f\u007f]{1,80}$", isName: true);

    /// <summary>Text for people.</summary>
    public static TextShape Prose { get; } = new(@"^[^\u0000-\u0009\u000b-\u001f\u007f]{0,4000}$", isName: false);

    private bool IsName { get; }

    /// <inheritdoc/>
    public override JsonObject Schema(SchemaBook book) => new() { ["type"] = "string", ["pattern"] = _regex.ToString() };

    /// <inheritdoc/>
    public override bool TryRead(TreeNode node, Spot spot, out string value)
    {
        value = (node as TreeNode.Text)?.Value ?? "";
        if (node is not TreeNode.Text)
        {
            spot.Say(node.At, DesignFilesFindings.WrongForm(spot.What, node.Noun, "a text in quotes"));
            return false;
        }

        if (_regex.IsMatch(value) && !(IsName && value.EndsWith('\n')) && (!IsName || value.Trim().Length > 0))
        {
            spot.Run.Givens.Add(new(spot.Path, "", value, IsName ? "name" : "text", "", spot.About, GivenState.Stated));
            return true;
        }

        spot.Say(node.At, IsName ? DesignFilesFindings.NotAName(spot.What, value.Length > 60 ? value[..60] : value)
            : DesignFilesFindings.NotProse(spot.What));
        return false;
    }
}
