using System.Text.Json;
using NotebookKit.Provenance;
using NotebookKit.Sheets;

namespace NotebookKit.Live.Answers;

/// <summary>What stands behind the numbers: model, assumptions, range, sources and working of every step, as a notebook shows
/// them.</summary>
internal static class BehindAnswer
{
    public static void Write(Utf8JsonWriter json, OpenDesign open, string step)
    {
        json.WriteStartArray("results");
        foreach (var (name, result, why) in Of(open, step))
        {
            json.WriteStartObject();
            json.WriteString("title", result?.Title ?? name);
            json.WriteString("why", why);
            if (result is not null) Write(json, result);
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }

    private static void Write(Utf8JsonWriter json, IResult result)
    {
        Reply.Lines(json, "lines", result.Lines);
        Reply.Findings(json, "findings", result.Findings);
        json.WriteString("model", result.Model.Name);
        Reply.Texts(json, "assumptions", result.Model.Assumptions);
        json.WriteString("range", result.Model.ValidRange);
        Reply.Texts(json, "sources", result.Model.Sources.Select(s => s.ToString()));
        json.WriteStartArray("working");
        foreach (var step in result.Working.Steps)
        {
            json.WriteStartObject();
            json.WriteString("what", step.What);
            json.WriteString("formula", step.Formula);
            json.WriteString("numbers", step.Numbers);
            json.WriteString("answer", step.Answer);
            json.WriteString("source", step.Source.ToString());
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }

    private static IEnumerable<(string Name, IResult? Result, string Why)> Of(OpenDesign open, string step)
    {
        var design = open.Design;
        switch (step)
        {
            case "rating": return design.Stages.Select(s => Step(s.Name, () => s.Rating));
            case "stability": return design.Stages.Select(s => Step(s.Name, () => s.Vehicle.Stability()));
            case "proof": return design.Stages.Select(s => Step(s.Name, () => s.Proof.Plan()));
            case "fill": return design.Stages.Select(s => Step(s.Name, () => DesignSheets.FillOf(s).Run()));
            case "flight": return PictureAnswer.Flights(design).Select(f => (f.Name, (IResult?)f.Flight, f.Why));
            default: return [Step(design.Name, () => open.Check)];
        }
    }

    private static (string, IResult?, string) Step(string name, Func<IResult> compute)
    {
        var result = Reply.Try(compute, out var why);
        return (name, result, why);
    }
}
