using NotebookKit.Provenance;
using NotebookKit.Quantities;

namespace NotebookKit.Tests.Vessels.Search;

public class LayupSearchTests
{
    private static readonly LayupSearch Search = new(
        Samples.Trainer with { NozzleEnd = Samples.Trainer.NozzleEnd
            with { Closure = Samples.Trainer.NozzleEnd.Closure with { Wall = 20.Millimetres() } } },
        [Samples.Stock.Braid("carbon sleeve 65 mm light"), Samples.Stock.Braid("carbon sleeve 65 mm heavy"),
            Samples.Stock.Braid("carbon sleeve 50 mm heavy")],
        [new HoopWrap(Samples.Stock.Cloth("carbon tape 150 g")), new ClothWrap(Samples.Stock.Cloth("glass plain 80 g"))]);

    [Fact]
    public void Every_combination_is_tried_once()
    {
        var result = Search.Run();
        // Up to two of three sleeves, 1 + 3 + 6, times up to two of two wraps, 1 + 2 + 3, less the empty one.
        Assert.Equal(10 * 6 - 1, result.Options.Count);
        Assert.Equal(result.Options.Count, result.Options.Select(o => o.Name).Distinct().Count());
    }

    [Fact]
    public void Nothing_among_the_choices_is_both_heavier_and_weaker_and_every_other_says_why()
    {
        var result = Search.Run();
        Assert.True(result.Choices.Count > 2);
        foreach (var (light, heavy) in result.Choices.Zip(result.Choices.Skip(1)))
        {
            Assert.True(light.Mass < heavy.Mass);
            Assert.True(light.Rated < heavy.Rated);
        }

        Assert.All(result.Rejected, o => Assert.NotEmpty(o.Refusal));
        foreach (var beaten in result.Rejected.Where(o => o.Rated is not null))
            Assert.Contains(result.Choices, c => c.Mass <= beaten.Mass && c.Rated >= beaten.Rated);
    }

    [Fact]
    public void Wishes_reject_with_their_reason()
    {
        var result = (Search with { RequiredPressure = 8.BarGauge(), Heaviest = 520.Grams() }).Run();
        Assert.Contains(result.Rejected, o => o.Refusal.Contains("8 bar gauge is wanted", StringComparison.Ordinal));
        Assert.Contains(result.Rejected, o => o.Refusal.Contains("over the 520 g that will do", StringComparison.Ordinal));
        Assert.All(result.Choices, o => Assert.True(o.Rated >= 8.BarGauge() && o.Mass <= 520.Grams()));
    }

    [Fact]
    public void A_sleeve_too_narrow_is_rejected_with_the_range()
    {
        var wide = Search with { Vessel = Search.Vessel with { Liner = Search.Vessel.Liner with { Bore = 69.Millimetres() } } };
        Assert.Contains(wide.Run().Rejected, o => o.Name.StartsWith("carbon sleeve 50 mm heavy", StringComparison.Ordinal)
            && o.Refusal.Contains("below 70.7", StringComparison.Ordinal));
    }

    [Fact]
    public void Every_layup_keeps_the_ends_fittings_discs_and_tails_of_its_vessel()
    {
        var end = Search.Vessel.ForwardEnd with
        {
            Joints = [new CarriedSleeve { Neck = 54.Millimetres(), Tail = 8.Millimetres() }],
            Discs = new CapDiscs(Samples.Stock.Cloth("carbon twill 200 g"), 3),
            Fittings = 60.Grams(),
        };
        var (plain, whole) = (Search.Run(), (Search with { Vessel = Search.Vessel with { ForwardEnd = end } }).Run());
        Assert.All(whole.Options, o => Assert.Same(end, o.Vessel.ForwardEnd));
        foreach (var (before, after) in plain.Options.Select(o => (o, whole.Options.Single(w => w.Name == o.Name))))
        {
            if (before.Mass is not { } mass || after.Mass is not { } heavier) continue;
            // Fittings and discs weigh on every layup, and a sleeve's tail as well.
            Assert.True(heavier > mass + 60.Grams(), after.Name);
        }

        Assert.Contains(whole.Options, o => o.Limit == "forward end, sleeve's tail");
    }

    private static LayupSearch WithEnds()
    {
        var aluminium = Samples.Stock.Solid("aluminium 6061-T6");
        var dome = DomedClosure.Hemisphere(aluminium, 3.Millimetres(), 66.Millimetres());
        var bonded = new BondedPlug(Samples.Stock.Adhesive("structural epoxy"), 30.Millimetres(), BondSurface.AbradedPlastic,
            BondSurface.AbradedMetal);
        var fitting = new ShoulderedFitting(aluminium, 4.Millimetres(), 34.Millimetres()) { Mass = 25.Grams() };
        return Search with
        {
            ForwardEnds =
            [
                new("tied off", new VesselEnd(dome, Samples.Tied)),
                new("tail of 8 mm", new VesselEnd(dome, new CarriedSleeve { Neck = 54.Millimetres(), Tail = 8.Millimetres() })),
                new("three discs", new VesselEnd(dome, Samples.Tied)
                {
                    Discs = new CapDiscs(Samples.Stock.Cloth("carbon twill 200 g"), 3),
                }),
                new("fitting", new VesselEnd(dome with { Opening = 20.Millimetres() }, Samples.Tied) { Fitting = fitting }),
                new("hole of 60 mm", new VesselEnd(dome with { Opening = 60.Millimetres() }, Samples.Tied) { Fitting = fitting }),
                new("glued in", new VesselEnd(dome, bonded)),
                new("tail not said", new VesselEnd(dome, new CarriedSleeve { Neck = 54.Millimetres() })),
                new("narrow neck", new VesselEnd(dome, Samples.Tied with { Neck = 30.Millimetres() })),
            ],
        };
    }

    [Fact]
    public void A_search_chooses_among_ends_as_well_and_every_one_that_drops_out_says_why()
    {
        var result = WithEnds().Run();
        Assert.Equal((10 * 6 - 1) * 8, result.Options.Count);
        Assert.Equal(result.Options.Count, result.Options.Select(o => o.Name).Distinct().Count());
        AllRefused("hole of 60 mm", "Opening in the domed closure is 60 mm in a bore of 66 mm; it must be 0 to 33 mm");
        AllRefused("narrow neck", "jams and does not lie on the neck", "no sleeve is laid", "Diameter under");
        AllRefused("tail not said", "the tail of the carried sleeve is not given", "no sleeve is laid", "Diameter under");
        Assert.Contains(Of("tail of 8 mm"), o => o.Limit == "forward end, sleeve's tail");
        // What is chosen names its end, and a better end is never beaten by a worse one of the same mass.
        Assert.All(result.Choices, c => Assert.Contains("; forward end: ", c.Name, StringComparison.Ordinal));
        Assert.DoesNotContain(result.Choices, c => c.Name.EndsWith("tail not said", StringComparison.Ordinal));

        IEnumerable<LayupOption> Of(string end) => result.Options.Where(o => o.Name.EndsWith($"; forward end: {end}",
            StringComparison.Ordinal));

        void AllRefused(string end, params string[] reasons) => Assert.All(Of(end), o =>
        {
            Assert.Null(o.Rated);
            Assert.Contains(reasons, r => o.Refusal.Contains(r, StringComparison.Ordinal));
        });
    }

    // Fitting 25 g less the hole's metal; discs by their own sum; a tail of 8 mm of sleeve more.
    [Fact]
    public void Ends_weigh_in_the_search_as_they_do_alone()
    {
        var search = WithEnds();
        var options = search.Run().Options.Where(o => o.Mass is not null && o.Name.StartsWith("carbon sleeve 65 mm heavy;",
            StringComparison.Ordinal)).ToDictionary(o => o.Name.Split(": ")[^1], o => o.Mass!.Value.Grams);
        var bore = 66.Millimetres();
        VesselEnd End(string name) => search.ForwardEnds.Single(e => e.Name == name).End;
        Tolerance.Relative(End("three discs").Discs!.MassOver(End("three discs").Closure, bore).Grams,
            options["three discs"] - options["tied off"], 1e-9);
        Tolerance.Relative(25 + 2700e-6 * (End("fitting").Closure.Solid(bore) - End("tied off").Closure.Solid(bore)).CubicMillimeters,
            options["fitting"] - options["tied off"] + 1e-12, 1e-6);
        var sleeve = (Search.Vessel with { Plies = [new BraidedSleeve(Search.Sleeves[1])] }).Layup().Plies[0];
        var perMillimetre = (sleeve.FibreMass + sleeve.ResinMass).Grams / (sleeve.CutLength.Millimeters * sleeve.Fit!.LengthFactor);
        Tolerance.Relative(8 * perMillimetre, options["tail of 8 mm"] - options["tied off"], 1e-6);
    }

    [Fact]
    public void Ends_without_a_name_or_with_one_twice_are_refused()
    {
        var end = Samples.Trainer.ForwardEnd;
        var error = Assert.Throws<InvalidDesignException>(() => (Search with
        {
            NozzleEnds = [new("plain", end), new("Plain", end)], ForwardEnds = [new("", end)],
        }).Run());
        Assert.Contains("2 choices of the nozzle end are called \"plain\"", error.Message, StringComparison.Ordinal);
        Assert.Contains("A forward end to choose from has no name", error.Message, StringComparison.Ordinal);
        var many = Assert.Throws<InvalidDesignException>(() => (Search with
        {
            ForwardEnds = [.. Enumerable.Range(0, 90).Select(i => new EndOption($"end {i}", end))],
        }).Run());
        Assert.Contains("over 5000 layups", many.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void No_choice_is_a_failed_result_with_the_reason()
    {
        var result = (Search with { RequiredPressure = 200.BarGauge() }).Run();
        Assert.Equal(ResultStatus.Failed, result.Status);
        Assert.Contains(result.Findings, f => f.Severity == FindingSeverity.Error
            && f.Message.Contains("No layup meets what is wanted", StringComparison.Ordinal));
    }

    [Fact]
    public void Too_large_a_search_is_refused()
    {
        var error = Assert.Throws<InvalidDesignException>(() => (Search
            with { MaximumSleeves = 6, MaximumWraps = 6, Sleeves = [.. Enumerable.Repeat(Search.Sleeves, 4).SelectMany(s => s)] }).Run());
        Assert.Contains("over 5000 layups", error.Message, StringComparison.Ordinal);
    }
}
