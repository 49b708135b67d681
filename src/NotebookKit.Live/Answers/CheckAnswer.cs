using NotebookKit.Clearance;
using NotebookKit.Clearance.Designs;
using NotebookKit.DesignFiles;
using NotebookKit.DesignFiles.Keys;
using NotebookKit.DesignFiles.Parts;
using NotebookKit.DesignFiles.Shapes;
using NotebookKit.Provenance;
using NotebookKit.Record;
using NotebookKit.Record.Givens;
using System.Text.Json;

namespace NotebookKit.Live.Answers;

/// <summary>A design with its check, and what moved against another state.</summary>
internal static class CheckAnswer
{
    private static readonly string[] First = [DesignFigures.Rated, DesignFigures.DesignBurst, DesignFigures.Fill, DesignFigures.DryMass,
        DesignFigures.Margin, DesignFigures.Apogee, DesignFigures.RailSpeed, DesignFigures.Drift, DesignFigures.Descent,
        DesignFigures.FillTime];

    public static void Write(Utf8JsonWriter json, OpenDesign open, OpenDesign? before, bool onlyChangedGivens = false)
    {
        var (design, check) = (open.Design, open.Check);
        json.WriteString("name", design.Name);
        json.WriteString("about", design.About);
        json.WriteBoolean("holds", check.Holds);
        Reply.Texts(json, "stages", design.Stages.Select(s => s.Name));
        Reply.Texts(json, "padParts", PadKeys.PartKinds);
        Figures(json, check);
        Outcomes(json, check);
        Reply.Lines(json, "lines", check.Lines.Where(l => !l.Name.StartsWith("Required: ", StringComparison.Ordinal)
            && !l.Name.StartsWith("Decided: ", StringComparison.Ordinal)));
        Reply.Findings(json, "findings", check.Findings.Concat(design.Validate()).Distinct());
        Reply.Cautions(json, Cautions.ForProof.Concat(Cautions.ForFlight).Concat(Cautions.ForBench).Distinct());
        Givens(json, design, onlyChangedGivens ? before?.Design : null);
        Choices(json, design);
        if (before is not null) Moved(json, new DesignComparison(before.Check, check));
    }

    /// <summary>Every figure, unrounded.</summary>
    public static void WriteExact(Utf8JsonWriter json, Design design)
    {
        var check = design.Check();
        json.WriteStartObject("figures");
        foreach (var figure in DesignFigures.Kinds.Keys.Where(f => !DesignFigures.IsCostly(f)))
            json.WriteString(figure, check.Figures.Of(figure, DesignSweep.WorseSide(figure), out var why) is { } value
                ? GivenText.Exact(value) : $"none: {why}");
        json.WriteEndObject();
        Reply.Texts(json, "verdicts", check.Outcomes.Select(o => $"{o.Requirement.Name}: {o.Verdict}"));
    }

    private static void Figures(Utf8JsonWriter json, DesignCheck check)
    {
        json.WriteStartArray("figures");
        foreach (var figure in First)
        {
            var value = check.Figures.Of(figure, DesignSweep.WorseSide(figure), out var why);
            json.WriteStartObject();
            json.WriteString("name", figure);
            json.WriteString("value", value is null ? "" : Shown(figure, GivenText.Result(value)));
            json.WriteString("why", why);
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }

    // The fill time is that of gas alone or, where the pad says how much water the line holds, the longer one with that water.
    private static string Shown(string figure, string value) => figure switch
    {
        DesignFigures.Margin => $"{value} calibres",
        DesignFigures.FillTime => $"up to {value}",
        _ => value,
    };

    private static void Outcomes(Utf8JsonWriter json, DesignCheck check)
    {
        json.WriteStartArray("requirements");
        foreach (var o in check.Outcomes)
        {
            json.WriteStartObject();
            json.WriteString("name", o.Requirement.Name);
            json.WriteString("verdict", o.Verdict.ToString());
            json.WriteString("value", o.Value);
            json.WriteString("limit", $"{(o.Requirement.Side == Limit.AtMost ? "at most" : "at least")} {o.Requirement.Limit}");
            json.WriteString("of", o.Requirement.Of);
            json.WriteString("why", o.Verdict == RequirementVerdict.CannotTell ? o.Reason : o.Requirement.Why);
            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.WriteStartArray("decisions");
        foreach (var d in check.Design.Decisions)
        {
            json.WriteStartObject();
            json.WriteString("name", d.Name);
            json.WriteString("chosen", d.Chosen);
            json.WriteString("while", d.StaysRightWhile);
            json.WriteBoolean("right", !check.LookAgain.Contains(d));
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }

    // All values; or those that differ from a state with the same ones, in the same ranges.
    private static void Givens(Utf8JsonWriter json, Design design, Design? before)
    {
        var all = Shown(design);
        var known = before is null ? [] : Shown(before);
        var isLike = all.Count == known.Count && all.Zip(known).All(p => (p.First.Path, p.First.State, p.First.Kind, p.First.Range)
            == (p.Second.Path, p.Second.State, p.Second.Kind, p.Second.Range));
        json.WriteStartArray(isLike ? "changedGivens" : "givens");
        foreach (var g in isLike ? all.Zip(known).Where(p => p.First != p.Second).Select(p => p.First) : all)
        {
            json.WriteStartObject();
            json.WriteString("path", g.Path);
            json.WriteString("value", g.Value);
            json.WriteString("kind", g.Kind);
            json.WriteString("range", g.Range);
            json.WriteString("why", g.Why);
            json.WriteString("state", g.State switch
            {
                GivenState.Stated => "stated", GivenState.Default => "default", _ => "not given",
            });
            json.WriteBoolean("reason", g.HasReason);
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }

    private static List<DesignGiven> Shown(Design design) =>
        [.. design.UnnamedGivens.Where(g => g.Path is not ("version" or "$schema"))];

    // Names that a value of a kind may have, of the library and of the design's own materials.
    private static void Choices(Utf8JsonWriter json, Design design)
    {
        var all = design.Materials;
        json.WriteStartObject("choices");
        Reply.Texts(json, "sleeve", all.AllOf<Braid>().Select(m => m.Name));
        Reply.Texts(json, "cloth", all.AllOf<Cloth>().Select(m => m.Name));
        Reply.Texts(json, "veil", all.AllOf<Veil>().Select(m => m.Name));
        Reply.Texts(json, "resin", all.AllOf<Resin>().Select(m => m.Name));
        Reply.Texts(json, "fibre", all.AllOf<Fibre>().Select(m => m.Name));
        Reply.Texts(json, "adhesive", all.AllOf<Adhesive>().Select(m => m.Name));
        Reply.Texts(json, "plastic or metal", all.AllOf<IsotropicMaterial>().Select(m => m.Name));
        json.WriteEndObject();
    }

    private static void Moved(Utf8JsonWriter json, DesignComparison comparison)
    {
        json.WriteStartObject("moved");
        json.WriteStartArray("figures");
        foreach (var f in comparison.Figures)
        {
            json.WriteStartObject();
            json.WriteString("name", f.Name);
            json.WriteString("before", f.Before);
            json.WriteString("after", f.After);
            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.WriteStartArray("requirements");
        foreach (var r in comparison.Requirements)
        {
            json.WriteStartObject();
            json.WriteString("name", r.Name);
            json.WriteString("before", r.Before?.Verdict.ToString() ?? "");
            json.WriteString("after", r.After.Verdict.ToString());
            json.WriteString("was", r.Before is { } b ? b.Value : "");
            json.WriteString("is", r.After.Value);
            json.WriteEndObject();
        }

        json.WriteEndArray();
        Reply.Texts(json, "lookAgain", comparison.LookAgain.Select(d => d.Name));
        json.WriteEndObject();
    }
}
