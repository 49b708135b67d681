using System.Text.Json.Nodes;
using NotebookKit.DesignFiles.Parts;
using NotebookKit.DesignFiles.Shapes;
using NotebookKit.DesignFiles.Trees;
using NotebookKit.Materials.Solids;
using NotebookKit.Vessels.Ratings;
using NotebookKit.Vessels.Testing;

namespace NotebookKit.DesignFiles.Keys;

/// <summary>The whole of a design: of one stage, or of two.</summary>
internal sealed class DesignKeys : Shape<DesignContent>
{
    /// <summary>Version of the format that is written, and the highest that is read.</summary>
    public const int Version = 1;

    private const string StagesKey = "stages";

    private DesignKeys()
    {
    }

    public static DesignKeys All { get; } = new();

    /// <inheritdoc/>
    public override bool TryRead(TreeNode node, Spot spot, out DesignContent value) => Of(node).TryRead(node, spot, out value);

    /// <inheritdoc/>
    public override TreeNode Order(TreeNode node) => Of(node).Order(node);

    /// <inheritdoc/>
    public override JsonObject Schema(SchemaBook book) => new()
    {
        ["if"] = new JsonObject { ["required"] = new JsonArray(StagesKey) },
        ["then"] = TwoStages.Shape.Schema(book),
        ["else"] = OneStage.Shape.Schema(book),
    };

    private static ObjectShape<DesignContent> Of(TreeNode node) =>
        node is TreeNode.Members members && members.Find(StagesKey) is not null ? TwoStages.Shape : OneStage.Shape;

    private static Func<Values, (string Name, string About, MaterialLibrary Materials)> Head(FieldList f)
    {
        f.Part("$schema", TextShape.Prose, "Where the schema is, for editors.");
        f.Needs("version", Kinds.Count(1, Version, "Take a newer program."), "Version of the format.");
        var name = f.Needs("name", TextShape.Name, "What it is called.");
        var about = f.Else("about", TextShape.Prose, "", "What it is, for people.");
        var materials = f.Part("materials", MaterialKeys.All, "Materials of its own, and properties of its own of those of the library.");
        return v => (name(v), about(v), materials(v) ?? v.Spot.Run.Library);
    }

    private static Func<Values, StageContent> Stage(FieldList f)
    {
        var vessel = f.Needs("vessel", VesselKeys.Vessel, "The pressure vessel.");
        var rating = f.Part("rating", RatingKeys.Rating, "By which rules it is rated; the club's unless given.");
        var evidence = f.Part("evidence", RatingKeys.Evidence, "What tests have shown; none unless given.");
        var proof = f.Part("proof", RatingKeys.ProofTest, "How it is proof-tested; as the rating asks for it unless given.");
        var body = f.Part("body", BodyKeys.Body, "The outside.");
        var masses = f.Part("masses", FlightKeys.Masses, "What it weighs, part by part, empty of water and gas.");
        var nozzle = f.Part("nozzle", FlightKeys.Nozzle, "What water and air leave through.");
        var tube = f.Part("launch tube", FlightKeys.LaunchTube, "A launch tube; none unless given.");
        var charge = f.Part("charge", FlightKeys.Charge, "Water, pressure and gas at release.");
        var pad = f.Part("pad", PadKeys.Pad, "What it is filled with at the pad; no fill is computed unless given.");
        var sun = f.Part("sun", SunKeys.Sun, "How it waits in the sun when filled; not computed unless given.");
        var recovery = f.Part("recovery", FlightKeys.Recovery, "What brings it back; nothing unless given.");
        var fins = f.Part("fin structure", EquipmentKeys.FinStructure, "What the fins are made of and bear; not judged unless given.");
        var drag = f.Part("drag", FlightKeys.Drag, "What the drag build-up can't know from the shape.");
        var flow = f.Has("flow model", FlightKeys.Flow, Propulsion.Flow.FlowModel.Real, "Which equations describe water and gas.");
        return v =>
        {
            var content = new StageContent(vessel(v), rating(v)?.Rules ?? RuleSets.Club, rating(v)?.Wanted,
                evidence(v) ?? ((_, _) => VesselEvidence.Of()))
            {
                Body = body(v), Masses = masses(v), Nozzle = nozzle(v) is { } n ? (n.Nozzle, n.Station) : null, LaunchTube = tube(v),
                Charge = charge(v), Canopy = recovery(v)?.Canopy, Deployment = recovery(v)?.Deployment, DragEnd = drag(v)?.End ?? default,
                DragCalibration = drag(v)?.Calibration, Flow = flow(v), Proof = proof(v) ?? (asked => asked),
                Mark = () => VesselMark.Of(v.Spot.Run.Givens, TreePath.Join(v.Spot.Path, "vessel") + ".", v.Spot.Run.Library),
                Tests = () => TestMarks.Of(TreePath.Find(v.Spot.Run.Root, TreePath.Join(v.Spot.Path, "evidence") + ".tests")),
                Pad = pad(v), Sun = sun(v), Fins = fins(v), Gear = recovery(v)?.Gear,
            };
            if (drag(v) is { } own) content = content with { Surface = own.Surface };
            foreach (var line in content.Masses ?? [])
            {
                if (MassLayout.Unknown(line, content.Body) is { } unknown)
                {
                    string[] known = [MassLayout.Vessel, MassLayout.Fins, .. content.Body?.Parts.Select(p => p.Name) ?? []];
                    throw new FormatException(DesignFilesFindings.UnknownWord($"\"of\" of the mass \"{line.Name}\"", unknown,
                        Nearest.Of(unknown, known), known));
                }

                if (line is { Weighed: null, Estimated: null, Of: not MassLayout.Vessel })
                    throw new FormatException(DesignFilesFindings.KeyIsMissing("weighed", line.Name, "its mass, or \"estimated\"."));
            }

            return content;
        };
    }

    private static Func<Values, (string Name, string About, MaterialLibrary Materials), DesignContent> Tail(FieldList f)
    {
        var site = f.Part("site", SiteKeys.Site, "Where it flies.");
        var scatter = f.Part("scatter", EquipmentKeys.Scatter, "How its landings scatter; not computed unless given.");
        var requirements = f.Else("requirements", ReasonKeys.Requirements, [], "What must hold.");
        var decisions = f.Else("decisions", ReasonKeys.Decisions, [], "What was decided, and why.");
        return (v, head) => new(head.Name, head.About, head.Materials, site(v), requirements(v), decisions(v))
        {
            Scatter = scatter(v),
        };
    }

    private static DesignContent Checked(DesignContent content)
    {
        var names = content.Requirements.Select(r => r.Name).ToList();
        if (names.GroupBy(n => n).FirstOrDefault(g => g.Count() > 1) is { } twice)
            throw new FormatException(DesignFilesFindings.TwoOfOneName("requirements", twice.Key));
        if (content.Decisions.GroupBy(d => d.Name).FirstOrDefault(g => g.Count() > 1) is { } two)
            throw new FormatException(DesignFilesFindings.TwoOfOneName("decisions", two.Key));
        return content.Decisions.FirstOrDefault(d => !names.Contains(d.StaysRightWhile)) is not { } open ? content
            : throw new FormatException(DesignFilesFindings.NoSuchRequirement(open.Name, open.StaysRightWhile,
                Nearest.Of(open.StaysRightWhile, names)));
    }

    // Each kind of design has a class of its own, so that its shape is made when the first of its kind is read.
    private static class OneStage
    {
        public static readonly ObjectShape<DesignContent> Shape = new("design", "A design of one stage.", f =>
        {
            var head = Head(f);
            var stage = Stage(f);
            var tail = Tail(f);
            return v => Checked(tail(v, head(v)) with { Stages = [(head(v).Name, stage(v))] });
        });
    }

    private static class TwoStages
    {
        public static readonly ObjectShape<DesignContent> Shape = new("design of two stages", "A design of a booster and a sustainer.", f =>
        {
            var head = Head(f);
            var stages = f.Needs(StagesKey, new ObjectShape<(StageContent Booster, StageContent Sustainer)>("stages", "Both stages.", s =>
            {
                var one = new ObjectShape<StageContent>("stage", "One stage, a whole vehicle of its own.", Stage);
                var booster = s.Needs("booster", one, "The lower stage, with the nose it falls with.");
                var sustainer = s.Needs("sustainer", one, "The upper stage.");
                return v => (booster(v), sustainer(v));
            }), "Booster and sustainer.");
            var separation = f.Part("separation", FlightKeys.Separation, "What separates the stages; a latch at the end of the booster's "
                + "jet unless given.");
            var tail = Tail(f);
            return v => Checked(tail(v, head(v)) with
            {
                Stages = [($"{head(v).Name} booster", stages(v).Booster), ($"{head(v).Name} sustainer", stages(v).Sustainer)],
                Separation = separation(v),
            });
        });
    }
}
