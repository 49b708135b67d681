using NotebookKit.DesignFiles.Shapes;
using NotebookKit.DesignFiles.Trees;
using NotebookKit.Proofing.Plans;
using NotebookKit.Provenance;
using NotebookKit.Quantities;
using NotebookKit.Vessels.Design;
using NotebookKit.Vessels.Ratings;
using NotebookKit.Vessels.Testing;

namespace NotebookKit.DesignFiles.Keys;

/// <summary>What a vessel is rated by: rules, and what tests have shown.</summary>
internal static class RatingKeys
{
    private static readonly UnitShape<GaugePressure> TestPressure = Kinds.BarGauge(0.5, 1000,
        "Give the gauge reading with its unit; was psi read as bar?");

    private static readonly NumberShape Chance = Kinds.Number(1e-6, 0.1, "0.001 is one vessel in a thousand.");

    private static readonly EitherShape<RuleSet, RuleSet> RulesShape = new(
        new WordShape<RuleSet>("rule set", [.. RuleSets.All.Select(r => (r.Name, r))]), r => r,
        new ChoiceShape<RuleSet>("rules", "kind",
            (["by risk"], "A rule that rates by the chance of a burst.", f =>
            {
                var chance = f.Needs("chance", Chance, "Chance of a burst at a fill that the club is ready to run.");
                var people = f.Else("people", TextShape.Prose, "", "Where people are and what covers them.");
                return v => RuleSet.ByRisk(chance(v), people(v));
            }),
            (["own"], "Rules of one's own.", f =>
            {
                var name = f.Needs("name", TextShape.Name, "What they are called.");
                var proof = f.Needs("proof", Kinds.Number(1, 3, "1.25 to 1.67 is usual."), "Proof over maximum expected pressure.");
                var burst = f.Needs("burst", Kinds.Number(1, 10, "2.25 to 3.65 is usual."), "Burst over maximum expected pressure.");
                var source = f.Needs("source", TextShape.Prose, "Where the factors come from.");
                var covers = f.Needs("covers", TextShape.Prose, "What vessels they were written for.");
                var overshoot = f.Has("overshoot", Kinds.Number(1, 1.5, "5 % is common practice."), 1.05,
                    "Maximum expected over working pressure.");
                var use = f.Has("maximum proof use", Kinds.Percent(30, 95, "Two thirds is common practice."), 67.Percent(),
                    "Largest share of its strength that any part may be proved at.");
                var most = f.May("maximum pressure", TestPressure, "Highest maximum expected pressure that the rules were written for.");
                var chance = f.May("chance", Chance, "Chance of a burst at a fill that the club is ready to run.");
                var people = f.Else("people", TextShape.Prose, "", "Where people are and what covers them.");
                return v => new RuleSet(name(v), proof(v), burst(v), Source.CommonPractice(source(v)), covers(v))
                {
                    Overshoot = overshoot(v), MaximumProofUse = use(v), MaximumPressure = most(v), TargetChance = chance(v),
                    People = people(v),
                };
            })));

    private static readonly ObjectShape<LeakSeen> LeakShape = new("leak", "A leak that a test showed.", f =>
    {
        var where = f.Needs("where", TextShape.Prose, "Where the water came out: \"nozzle end, seal\".");
        var pressure = f.Needs("pressure", TestPressure, "Lowest pressure at which it was seen.");
        var drops = f.May("drops a minute", Kinds.Number(0.01, 1000, "Leave it out where nobody counted."), "Drops a minute.");
        return v => new LeakSeen(where(v), pressure(v)) { DropsPerMinute = drops(v) };
    });

    private static readonly ChoiceShape<Func<PressureVessel, bool, VesselTest>> TestShape = new("test", "kind",
        (["burst"], "A vessel taken to its burst with water.", f => Test(f, f2 =>
        {
            var failed = f2.Part("failed", TextShape.Prose, "Part that gave way first: \"wall\", \"nozzle end, sleeve carried over\".");
            return (vessel, id, pressure, v) => new BurstTest(vessel, id, pressure, failed(v));
        })),
        (["held proof"], "A vessel that held its proof with water.",
            f => Test(f, _ => (vessel, id, pressure, _) => new HeldProof(vessel, id, pressure))));

    /// <summary>How the vessel is rated; nothing given rates by the club's rule.</summary>
    public static ObjectShape<RatingContent> Rating { get; } = new("rating", "By which rules the vessel is rated.",
        f =>
        {
            var rules = f.Else("rules", RulesShape, RuleSets.Club, "The rule set; \"Club rule\" unless given.");
            var wanted = f.May("working pressure", Kinds.BarGauge(0.5, 300, "Leave it out for the highest that the rules allow."),
                "Working pressure that is wanted; the highest that the rules allow unless given.");
            return v => new(rules(v), wanted(v));
        });

    public static ObjectShape<Func<PressureVessel, bool, VesselEvidence>> Evidence { get; } = new("evidence",
        "Tests of vessels of this design or of others made the same way, oldest first.", f =>
        {
            var batch = f.Else("batch", TextShape.Prose, "", "Batch that the vessel in hand is made in.");
            var tests = f.Needs("tests", Kinds.List(TestShape, 0, 200), "The tests.");
            return v => (vessel, isAsRead) => new VesselEvidence([.. tests(v).Select(t => t(vessel, isAsRead))]) { Batch = batch(v) };
        });

    /// <summary>How it is proof-tested; what isn't given is as the rating asks for it.</summary>
    public static ObjectShape<Func<Proof, Proof>> ProofTest { get; } = new("proof", "How the vessel is proof-tested with water.", f =>
    {
        var air = f.May("trapped air", Kinds.Between(0.Millilitres(), 4.Litres(), "More air than that is a proof with air."),
            "Air that can't be bled; none unless given.");
        var span = f.May("support span", Kinds.Metres(0.01, 10, "Measure between the supports."),
            "Distance of the two supports it lies on; its straight length unless given.");
        var step = f.May("step hold", Kinds.Seconds(0, 3600, "A hold is minutes, not hours."), "Hold at each step; 60 s unless given.");
        var proof = f.May("proof hold", Kinds.Seconds(10, 1800, "A shorter hold shows nothing; a longer one makes the laminate creep."),
            "Hold at proof pressure; 120 s unless given.");
        var leak = f.May("leak hold", Kinds.Seconds(0, 3600, "In a longer hold the weather moves the gauge more than a leak does."),
            "Hold at working pressure on the way down; 10 min unless given.");
        return v => asked => asked with
        {
            TrappedAir = air(v) ?? asked.TrappedAir, StepHold = step(v) ?? asked.StepHold, ProofHold = proof(v) ?? asked.ProofHold,
            LeakHold = leak(v) ?? asked.LeakHold,
            Support = asked.Support is { } support && span(v) is { } own ? support with { Span = own } : asked.Support,
        };
    });

    private static Func<Values, Func<PressureVessel, bool, VesselTest>> Test(FieldList f,
        Func<FieldList, Func<PressureVessel, string, GaugePressure, Values, VesselTest>> define)
    {
        var id = f.Needs("vessel", TextShape.Name, "Name or number of the very vessel.");
        var pressure = f.Needs("pressure", TestPressure, "Highest pressure it saw.");
        var make = define(f);
        var gauge = f.May("gauge error", Kinds.Between(0.001.Bar(), 20.Bar(), "Compare the gauge with a better one."),
            "What the gauge may have read too high: the test counts for that much less; as read unless given.");
        var batch = f.Else("batch", TextShape.Prose, "", "Batch it was made in.");
        var leak = f.Part("leak", LeakShape, "A leak: where, and from which pressure on.");
        var drops = f.May("drops seen", Kinds.Flag, "Whether drops were looked for and seen.");
        var growth = f.May("growth", Kinds.Between(0.001.Millilitres(), 10.Litres(), "Leave it out where it wasn't measured."),
            "Growth of the inside under pressure.");
        var off = f.May("growth uncertainty", Kinds.Between(0.001.Millilitres(), 10.Litres(), "Leave it out where nobody estimated it."),
            "What the growth may be off by either way; without it the growth contradicts nothing.");
        var grewAt = f.May("growth at", TestPressure, "Pressure at which the growth was read; that of a held proof unless given.");
        var differs = f.Part("differs", new DraftShape<Func<string, PressureVessel>>(VesselKeys.Vessel),
            "In what the vessel tested differs from the design's, by the vessel's own keys.");
        var madeAs = f.Part("made as", TextShape.Name, "Mark of the vessel that was tested, as the check names it: a vessel that was "
            + "changed since is then told from it.");
        return v =>
        {
            var (other, mark) = Laid(differs(v), v);
            var isOwn = differs(v) is null;
            KnownVessel? tested = null;
            return (vessel, isAsRead) => make(isOwn && isAsRead ? vessel : Tested(NameOf(vessel, id(v))), id(v), pressure(v), v) with
            {
                MadeAs = madeAs(v), Mark = mark, GaugeError = gauge(v), Batch = batch(v), Leak = leak(v), DropsSeen = drops(v),
                Growth = growth(v),
                GrowthUncertainty = off(v), GrowthPressure = grewAt(v),
            };

            // The vessel tested stays the same one while the design's own is changed.
            PressureVessel Tested(string name)
            {
                if (tested is not { } known || known.Asked != name) tested = known = new(name, other(name));
                return known.Vessel;
            }
        };
    }

    // The vessel of the stage that the test stands in, as the file describes it, with what differs laid over it, and its mark. A value
    // changed for a run changes no test. Tests of one kind of vessel share one.
    private static (Func<string, PressureVessel> Vessel, string? Mark) Laid(TreeNode? draft, Values v)
    {
        var (run, stage) = (v.Spot.Run, v.Spot.Path[..v.Spot.Path.LastIndexOf("evidence", StringComparison.Ordinal)]);
        if (run.Once($"{stage} tested {(draft is null ? "" : TreeWriter.Write(draft))}", () => Tested(draft, v, stage)) is { } tested)
            return (tested.Vessel, tested.Mark);
        return (name => throw new InvalidDesignException(name, [Finding.Error($"{name} isn't given.")]), null);
    }

    private static VesselTested? Tested(TreeNode? draft, Values v, string stage)
    {
        var below = TreePath.Find(v.Spot.Run.AsRead, $"{stage}vessel");
        var laid = draft is null || below is null ? draft ?? below : DraftShape<Func<string, PressureVessel>>.Over(draft, below);
        if (laid is not { } whole) return null;
        var (beside, path) = (v.Spot.Run.Beside(), $"{v.Spot.Path}.differs");
        var right = VesselKeys.Vessel.TryRead(whole, new(beside, path, "vessel tested", ""), out var made);
        // What is wrong with the design's own vessel is said there.
        if (draft is not null) v.Spot.Run.TakeMistakes(beside);
        return right ? new(made, VesselMark.Of(beside.Givens, $"{path}.", beside.Library)) : null;
    }

    private static string NameOf(PressureVessel vessel, string id) => $"{vessel.Name}, {id}";

    private sealed record KnownVessel(string Asked, PressureVessel Vessel);

    private sealed record VesselTested(Func<string, PressureVessel> Vessel, string Mark);

    internal sealed record RatingContent(RuleSet Rules, GaugePressure? Wanted);
}
