using System.Runtime.InteropServices.JavaScript;
using System.Runtime.Versioning;
using NotebookKit.DesignFiles.Shapes;
using NotebookKit.Live.Answers;

namespace NotebookKit.Live;

/// <summary>What a page may ask of the compiled library. Every answer is JSON: what was asked for, or "error" with the library's own
/// sentence. Nothing runs until the page asks.</summary>
[SupportedOSPlatform("browser")]
internal static partial class Program
{
    private static readonly OpenDesigns Designs = new();
    private static readonly OpenExplorer Explorer = new();

    private static void Main()
    {
    }

    /// <summary>Opens a design's text; gives its number.</summary>
    [JSExport]
    internal static string Open(string text, string name) => Reply.Of(json => json.WriteNumber("id", Designs.Open(text, name)));

    /// <summary>The design with another value; gives the number of the new state.</summary>
    [JSExport]
    internal static string Change(int id, string path, string value) =>
        Reply.Of(json => json.WriteNumber("id", Designs.Add(Designs[id].Change(path, value))));

    /// <summary>The design without a value or an item.</summary>
    [JSExport]
    internal static string Leave(int id, string path) =>
        Reply.Of(json => json.WriteNumber("id", Designs.Add(Designs[id].Leave(path))));

    /// <summary>The design with another value, or without one, and everything the page shows of it beside the state before: one way to the
    /// library and back. Of a page that knows the values of the state before, only those that changed are told.</summary>
    [JSExport]
    internal static string Turn(int id, string path, string? value, bool knowsGivens) => Reply.Of(json =>
    {
        var before = Designs[id];
        var after = value is null ? before.Leave(path) : before.Change(path, value);
        json.WriteNumber("id", Designs.Add(after));
        CheckAnswer.Write(json, after, before, knowsGivens);
    });

    /// <summary>Changes a design to what it is, vessel and charge in turn, and forgets it: what runs for the first times in a browser runs
    /// slowly, and no reader has to wait for that.</summary>
    [JSExport]
    internal static string Warm(int id, int round) => Reply.Of(json =>
    {
        var (open, part) = (Designs[id], round % 2 == 0 ? "vessel." : "charge.");
        if (open.Design.UnnamedGivens.FirstOrDefault(g => g is { State: GivenState.Stated, HasReason: true }
            && g.Path.Contains(part, StringComparison.Ordinal)) is { } given)
            _ = Reply.Of(answer => CheckAnswer.Write(answer, open.Change(given.Path, given.Value), open, onlyChangedGivens: true));
    });

    /// <summary>The design with another item like one that a list has; gives what a change to the returned path and value makes.</summary>
    [JSExport]
    internal static string Copy(int id, string path) => Reply.Of(json => Designs[id].WriteCopy(json, path));

    /// <summary>Everything the page shows of a state, beside another one; 0 for none.</summary>
    [JSExport]
    internal static string Answer(int id, int before) =>
        Reply.Of(json => CheckAnswer.Write(json, Designs[id], before == 0 ? null : Designs[before]));

    /// <summary>The charts and the drawing of a state.</summary>
    [JSExport]
    internal static string Pictures(int id) => Reply.Of(json => PictureAnswer.Write(json, Designs[id]));

    /// <summary>The text of a state as its file has it, and what has to be said of it.</summary>
    [JSExport]
    internal static string Text(int id) => Reply.Of(json => Designs[id].WriteText(json));

    /// <summary>What stands behind the numbers of a step: model, assumptions, range, sources, working.</summary>
    [JSExport]
    internal static string Behind(int id, string step) => Reply.Of(json => BehindAnswer.Write(json, Designs[id], step));

    /// <summary>The proof plan of a stage, for the bench.</summary>
    [JSExport]
    internal static string ProofPlan(int id, int stage) => Reply.Of(json => ProofAnswer.WritePlan(json, Designs[id], stage));

    /// <summary>What a reading at a step of a proof leads to.</summary>
    [JSExport]
    internal static string ProofStep(int id, int stage, string reading) =>
        Reply.Of(json => ProofAnswer.WriteStep(json, Designs[id], stage, reading));

    /// <summary>The readings of a proof, judged.</summary>
    [JSExport]
    internal static string ProofJudge(int id, int stage, string readings) =>
        Reply.Of(json => ProofAnswer.WriteJudgement(json, Designs[id], stage, readings));

    /// <summary>The fill and the flight card of the day.</summary>
    [JSExport]
    internal static string Pad(int id, string day) => Reply.Of(json => PadAnswer.Write(json, Designs[id], day));

    /// <summary>The file of the day that what was typed at the pad makes.</summary>
    [JSExport]
    internal static string DayText(int id, string typed) => Reply.Of(json =>
    {
        using var document = System.Text.Json.JsonDocument.Parse(typed);
        var text = DayOfPage.Text(document.RootElement, Designs[id].Design);
        DesignFiles.FlightDay.Parse(text, "What was typed");
        json.WriteString("text", text);
    });

    /// <summary>A file of the day as the fields at the pad.</summary>
    [JSExport]
    internal static string DayFields(string text) => Reply.Of(json => DayOfPage.WriteFields(json, text));

    /// <summary>What an explorer of a lesson's page shows at a setting.</summary>
    [JSExport]
    internal static string Explore(string model, string text, double[] setting) =>
        Reply.Of(json => Explorer.Write(json, model, text, setting));

    /// <summary>Every figure of a design with all its digits.</summary>
    [JSExport]
    internal static string Figures(string text) => Reply.Of(json => CheckAnswer.WriteExact(json, DesignFiles.Design.Parse(text)));
}
