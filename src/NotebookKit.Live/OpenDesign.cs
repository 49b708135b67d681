using NotebookKit.Clearance;
using NotebookKit.Clearance.Designs;
using NotebookKit.DesignFiles;
using NotebookKit.DesignFiles.Parts;
using NotebookKit.DesignFiles.Trees;
using NotebookKit.Live.Answers;
using System.Globalization;
using System.Text;
using System.Text.Json;

namespace NotebookKit.Live;

/// <summary>One state of a design: as its file was opened, with what was changed since. The design itself remembers what its tests were
/// made of.</summary>
internal sealed class OpenDesign
{
    private readonly Lazy<DesignCheck> _check;

    public OpenDesign(Design design)
    {
        Design = design;
        _check = new(() => Design.Check());
    }

    public Design Design { get; }

    public DesignCheck Check => _check.Value;

    public OpenDesign Change(string path, string value) => new(Design.With(path, value));

    public OpenDesign Leave(string path) => new(Design.Without(path));

    /// <summary>Another item like one of a list: where it goes, and its text.</summary>
    /// <exception cref="InvalidOperationException">The path isn't an item of a list.</exception>
    public void WriteCopy(Utf8JsonWriter json, string path)
    {
        var tree = TreeReader.Parse(Design.Name, Encoding.UTF8.GetBytes(Design.ToText()));
        var cut = path.LastIndexOf('.');
        if (cut < 0 || TreePath.Find(tree, path[..cut]) is not TreeNode.Items list || TreePath.Find(tree, path) is not { } item)
            throw new InvalidOperationException($"{path} is no item of a list.");
        json.WriteString("path", $"{path[..cut]}.{(list.All.Count + 1).ToString(CultureInfo.InvariantCulture)}");
        json.WriteString("value", TreeWriter.Write(item).Trim());
    }

    /// <summary>The text to keep. Where its tests would speak for a changed vessel that nobody tested, so that the text alone would be
    /// rated otherwise than this state is, they are left out.</summary>
    public void WriteText(Utf8JsonWriter json)
    {
        var (kept, without) = (Design, new List<string>());
        var written = Reply.Try(() => Design.Parse(Design.ToText(), Design.Name), out _);
        for (var i = 0; i < Design.Stages.Count; i++)
        {
            var path = Design.Stages.Count == 1 ? "evidence" : $"stages.{(i == 0 ? "booster" : "sustainer")}.evidence";
            if (!kept.HasPart(path) || (written is not null && RatingOf(written.Stages[i]) == RatingOf(Design.Stages[i]))) continue;
            kept = kept.Without(path);
            without.Add(Design.Stages[i].Name);
        }

        json.WriteString("text", kept.ToText());
        json.WriteString("note", without.Count == 0 ? "" : $"The tests of {string.Join(" and ", without)} are left out of this file: they "
            + "were made of the vessel before it was changed. Add a test of the changed vessel when there is one.");
    }

    private static string RatingOf(DesignStage stage) => Reply.Try(() => $"{stage.Rating.WorkingPressure.Pascals:R} "
        + $"{stage.Rating.DesignBurst.Pascals:R} {stage.Rating.Tests.Count} {stage.Rating.IsRated}", out var why) ?? why;
}
