using NotebookKit.Provenance;
using NotebookKit.Quantities;

namespace NotebookKit.Tests.Vessels.Ends;

/// <summary>What an end or a test of one can't be: one error each, with the value, what it must be, and the remedy.</summary>
public class EndBadInputTests
{
    private static readonly IsotropicMaterial Aluminium = Samples.Stock.Solid("aluminium 6061-T6");
    private static readonly PressureVessel Vessel = Samples.Trainer;

    private static readonly FlatClosure Plate = new(Aluminium, 10.Millimetres()) { Opening = 22.Millimetres() };

    private static readonly DomedClosure Dome = DomedClosure.Ellipsoid(Aluminium, 2.Millimetres(), 66.Millimetres());

    private static readonly BondedPlug Plug = new(Samples.Stock.Adhesive("structural epoxy"), 30.Millimetres(),
        BondSurface.AbradedPlastic, BondSurface.AbradedMetal);

    private static IEnumerable<Finding> End(VesselEnd end) => (Vessel with { NozzleEnd = end }).Validate();

    private static IEnumerable<Finding> Test(VesselTest test) =>
        [.. VesselEvidence.Of(test).Validate(), .. EvidenceCheck.Find(Vessel, [test])];

    public static readonly TheoryData<string, Func<IEnumerable<Finding>>, string[]> Refused = new()
    {
        { "opening wider than the rim allows", () => End(new(Dome with { Opening = 40.Millimetres() }, Samples.Tied)),
            ["40 mm", "it must be 0 to 33 mm", "Make the opening narrower, or take a cone."] },
        { "opening wider than a plate", () => End(new(Plate with { Opening = 70.Millimetres() }, Samples.Tied)),
            ["70 mm", "must be"] },
        { "fitting without engagement", () => End(new(Plate, Samples.Tied)
            { Fitting = new ThreadedFitting(Aluminium, 24.Millimetres(), 3.Millimetres(), 0.Millimetres()) }),
            ["engagement of the fitting is 0 mm", "it must be 1 mm to 200 mm"] },
        { "fitting without an opening", () => End(new(Dome, Samples.Tied)
            { Fitting = new ThreadedFitting(Aluminium, 24.Millimetres(), 3.Millimetres(), 12.Millimetres()) }),
            ["is 0 mm", "the opening must be above 0", "Give its diameter."] },
        { "bond on an untreated plastic", () => End(new(Plate, Plug with { VesselSurface = BondSurface.UntreatedPlastic })),
            ["an untreated plastic", "it must be abraded and degreased", "MPa", "Abrade and degrease the"] },
        { "sleeve that can't reach the neck", () => End(new(Dome, Samples.Tied with { Neck = 3.Millimetres() })),
            ["neck is 3 mm", "the neck must be", "Take a narrower sleeve or a wider neck."] },
        { "sleeve that jams at the neck", () => End(new(Dome, Samples.Tied with { Neck = 20.Millimetres() })),
            ["neck is 20 mm", "must lie in that range", "Take another neck"] },
        { "negative overlap", () => End(new(Plate, Plug with { Overlap = (-5).Millimetres() })),
            ["overlap of the bonded plug is −5 mm", "it must be", "mm to"] },
        { "a test pressure above all predictions", () => Test(new BurstTest(Vessel, "A", 900.BarGauge(), BurstTest.Wall)),
            ["900 bar gauge", "more than 2 times all that was predicted", "Check the gauge, its unit"] },
        { "a held pressure above all predictions", () => Test(new HeldProof(Vessel, "A", 900.BarGauge())),
            ["900 bar gauge", "more than 2 times all that was predicted", "Check the gauge, its unit"] },
        { "a test of another layup", () => Test(new HeldProof(Vessel with { Plies = [Vessel.Plies[0], Vessel.Plies[0]] }, "A",
            40.BarGauge())),
            ["is of another layup (carbon sleeve 65 mm heavy + carbon sleeve 65 mm heavy", "Leave the test out, or test a twin"] },
        { "a test pressure below what is a test", () => Test(new HeldProof(Vessel, "A", 0.4.BarGauge())),
            ["0.4 bar gauge", "it must be 0.5 bar gauge to 1000 bar gauge", "Give the gauge reading with its unit"] },
        { "a burst of an unknown part", () => Test(new BurstTest(Vessel, "A", 60.BarGauge(), "nozzle end, hose")),
            ["\"nozzle end, hose\"", "isn't one of its parts", "Name the part as the prediction does."] },
        { "a burst without its part", () => Test(new BurstTest(Vessel, "A", 60.BarGauge())),
            ["60 bar gauge", "give one of wall; ", "take the lower rating."] },
    };

    [Theory]
    [MemberData(nameof(Refused))]
    public void One_error_with_value_range_and_remedy(string what, Func<IEnumerable<Finding>> check, string[] said)
    {
        var error = Assert.Single(check(), f => f.Severity == FindingSeverity.Error).Message;
        Assert.All(said, part => Assert.Contains(part, error, StringComparison.OrdinalIgnoreCase));
        Assert.True(error[^1] is '.' or '?', what);
    }

    // The chain refuses it as well: no burst, no rating.
    [Fact]
    public void A_refused_end_is_neither_predicted_nor_rated()
    {
        var bad = Vessel with { NozzleEnd = new(Dome with { Opening = 40.Millimetres() }, Samples.Tied) };
        Assert.Throws<InvalidDesignException>(() => bad.Burst());
        Assert.Throws<InvalidDesignException>(() => bad.Rate());
        Assert.False(Vessel.Rate(evidence: VesselEvidence.Of(new HeldProof(Vessel, "A", 900.BarGauge()))).IsRated);
    }
}
