using System.Globalization;
using System.Text.Json.Nodes;
using System.Text.RegularExpressions;
using NotebookKit.DesignFiles.Trees;

namespace NotebookKit.DesignFiles.Shapes;

/// <summary>A name, or a text for people. It stands bare: nothing is taken over.</summary>
internal sealed partial class TextShape : Shape<string>
{
    private readonly Regex _regex;

    // What is wrong with a text of that pattern; none where nothing is.
    private readonly Func<string, string?> _wrong;

    private TextShape(Regex regex, bool isName, Func<string, string?>? wrong = null) =>
        (_regex, IsName, _wrong) = (regex, isName, wrong ?? (_ => null));

    /// <summary>A name: it becomes part of pages and of file names, so markup and path separators are refused.</summary>
    public static TextShape Name { get; } = new(NameForm(), isName: true);

    /// <summary>Text for people.</summary>
    public static TextShape Prose { get; } = new(ProseForm(), isName: false);

    /// <summary>How a day is written.</summary>
    public const string DayForm = "yyyy-MM-dd";

    /// <summary>A day: "2026-05-02".</summary>
    public static TextShape Day { get; } = new(NameForm(), isName: true, text => DateOnly.TryParseExact(text, DayForm,
        CultureInfo.InvariantCulture, DateTimeStyles.None, out _) ? null : DesignFilesFindings.NotADay(text));

    /// <summary>The mark of a label: "3f9a-71c2".</summary>
    public static TextShape Label { get; } = new(NameForm(), isName: true, text =>
        LabelMark().IsMatch(text) ? null : DesignFilesFindings.NotALabel(text));

    /// <summary>However the pen wrote it: with a dash, a space or nothing between.</summary>
    [GeneratedRegex("^ *([0-9a-f]{4})[- ]?([0-9a-f]{4}) *$", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant)]
    public static partial Regex LabelMark();

    [GeneratedRegex(@"^[^<>\/\\\u0000-\u001f\u007f]{1,80}$", RegexOptions.CultureInvariant)]
    private static partial Regex NameForm();

    [GeneratedRegex(@"^[^\u0000-\u0009\u000b-\u001f\u007f]{0,4000}$", RegexOptions.CultureInvariant)]
    private static partial Regex ProseForm();

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
            if (_wrong(value) is { } wrong)
            {
                spot.Say(node.At, wrong);
                return false;
            }

            spot.Run.Add(new(spot.Path, "", value, IsName ? "name" : "text", "", spot.About, GivenState.Stated));
            return true;
        }

        spot.Say(node.At, IsName ? DesignFilesFindings.NotAName(spot.What, value.Length > 60 ? value[..60] : value)
            : DesignFilesFindings.NotProse(spot.What));
        return false;
    }
}
