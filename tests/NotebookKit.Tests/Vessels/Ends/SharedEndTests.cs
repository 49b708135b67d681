using NotebookKit.Provenance;
using NotebookKit.Quantities;
using NotebookKit.Vessels.Ends;
using NotebookKit.Vessels.Ends.Modes;
using UnitsNet;

namespace NotebookKit.Tests.Vessels.Ends;

/// <summary>Ends on which two things hold, and bonds, by hand.</summary>
public class SharedEndTests
{
    private static readonly IsotropicMaterial Aluminium = Samples.Stock.Solid("aluminium 6061-T6");
    private static readonly Adhesive Epoxy = Samples.Stock.Adhesive("structural epoxy");
    private static readonly DomedClosure Dome = DomedClosure.Hemisphere(Aluminium, 2.Millimetres(), 66.Millimetres());

    private static BondedPlug Plug(double overlap) => new(Epoxy, overlap.Millimetres(), BondSurface.AbradedPlastic,
        BondSurface.AbradedMetal);

    private static BurstPrediction Burst(VesselEnd end) => (Samples.Trainer with { ForwardEnd = end }).Burst();

    private static GaugePressure Part(BurstPrediction burst, string name) =>
        burst.Parts.Single(p => p.Name == $"forward end, {name}").Burst;

    // Two springs side by side share the thrust; the bond lets go at B/s where it takes s of it, the sleeve tears at S/(1 − s), and
    // neither end holds less than its stronger part alone.
    [Theory]
    [InlineData(10, 30)]
    [InlineData(60, 30)]
    [InlineData(60, 100)]
    public void A_bond_and_a_sleeve_hold_together_by_their_stiffness(double overlap, double delivers)
    {
        var sleeve = new CarriedSleeve { Neck = 54.Millimetres(), IsTiedOff = true, Delivers = delivers.Percent() };
        var both = Burst(new(Dome, Plug(overlap), sleeve));
        double bond = Part(Burst(new(Dome, Plug(overlap))), "bonded plug").Bar,
            torn = Part(Burst(new(Dome, sleeve)), "sleeve carried over").Bar;
        var share = bond / both.Leak!.Burst.Bar;
        Assert.InRange(share, 0.001, 0.999);
        Tolerance.Relative(Math.Max(Math.Max(bond, torn), Math.Min(bond / share, torn / (1 - share))),
            Part(both, "sleeve carried over").Bar, 1e-9);
    }

    // Whichever stands first, the shorter of two bonds in a row lets go.
    [Fact]
    public void Of_two_bonds_the_weaker_counts_in_any_order()
    {
        static double Sure(params EndJoint[] joints) =>
            EndModel.SurePascals(new(Dome, [.. joints, new CarriedSleeve()]), new EndContext(0.066, 50e6, 0, 0, 0, 30e6, 0.6));
        Tolerance.Relative(Sure(Plug(5)), Sure(Plug(5), Plug(40)), 1e-12);
        Tolerance.Relative(Sure(Plug(5)), Sure(Plug(40), Plug(5)), 1e-12);
        Assert.True(Sure(Plug(5)) < Sure(Plug(40)));
        // A sleeve of which nobody said how it is held is worth nothing without a bond.
        Assert.Equal(0, Sure());
    }

    // What breaks doesn't go on pulling beside the discs: the stronger of the two holds, not their sum.
    [Fact]
    public void Discs_under_a_cap_that_breaks_add_nothing_where_they_are_the_weaker()
    {
        var cloth = Samples.Stock.Cloth("carbon twill 200 g");
        var cap = DomedClosure.Moulded(new CapDiscs(cloth, 8), Samples.Stock.Resin("laminating epoxy"), 33.Millimetres());
        string name = "domed closure";
        var bare = Part(Burst(new(cap, Samples.Tied)), name);
        Assert.Equal(bare.Bar, Part(Burst(new VesselEnd(cap, Samples.Tied) { Discs = new CapDiscs(cloth, 1) { Lap = 60.Millimetres() } }),
            name).Bar, 9);
    }

    // Goland and Reissner for a large load and a long overlap: k = 1/(1 + 2√2) = 0.26120387, the peel k/2·P/t·√(6·Ea·t/(E·h)) with
    // 6·3·1/(70·0.2) = 9/7: 0.130601937 × 1000 MPa × √(9/7) = 148.0887 MPa.
    [Fact]
    public void The_peel_of_a_single_lap_by_hand() => Tolerance.Relative(0.26120387496 / 2 * 1e9 * Math.Sqrt(9 / 7.0),
        LapJoint.Peel(1e6, 1e-3, 1, 70e9, 0.3, 3e9, 0.2e-3), 1e-9);

    // Two sheets of 140 kN/mm: G = 50 MPa / 0.1 = 500 MPa, ω² = 500/0.2·(2/140 000) per mm², ω = 0.1889822/mm; it carries
    // 140 000·√(2·0.2·2/140 000·50·(0.05 + 0.5)) = 1754.99 N/mm. Long enough: 1754.99/50 + 6/0.1889822 = 35.0998 + 31.7490 mm.
    [Fact]
    public void A_long_overlap_has_room_for_its_yielded_ends_and_an_elastic_middle()
    {
        var sheet = ForcePerLength.FromNewtonsPerMillimeter(140_000);
        ToughAdhesive tough = new(50.Megapascals(), 10.Percent(), 50.Percent(), 0.2.Millimetres());
        Tolerance.Relative(1754.9929, LapJoint.LongOverlap(sheet, sheet, tough, 100.Millimetres()).NewtonsPerMillimeter, 1e-6);
        Tolerance.Relative(35.099858 + 31.749016, LapJoint.LongEnough(sheet, sheet, tough).Millimeters, 1e-6);
        Assert.Throws<OutOfRangeException>(() => LapJoint.LongOverlap(sheet, sheet, tough, 66.8.Millimetres()));
        LapJoint.LongOverlap(sheet, sheet, tough, 66.9.Millimetres());
    }

    // A tube of 50 mm to 53 mm over a ring: the bond lies where the two meet, a twentieth of a millimetre off is in the metal.
    [Theory]
    [InlineData(50.0, false)]
    [InlineData(49.9, true)]
    [InlineData(50.1, true)]
    public void A_bond_lies_between_its_parts(double radius, bool isRefused)
    {
        BondedTube joint = new(new(50.Millimetres(), 53.Millimetres(), 20.Gigapascals()), new(44.Millimetres(), 50.Millimetres(),
            70.Gigapascals()), radius.Millimetres(), 1000.Megapascals(), 0.3.Millimetres(), 40.Millimetres());
        Assert.Equal(isRefused, joint.Validate().Any(f => f.Severity == FindingSeverity.Error));
    }

    [Fact]
    public void A_torque_asks_for_the_shear_modulus_of_both_parts()
    {
        TubeMember first = new(50.Millimetres(), 53.Millimetres(), 20.Gigapascals()), second = new(44.Millimetres(), 50.Millimetres(),
            70.Gigapascals());
        foreach (var (one, other) in new[] { (first with { ShearModulus = 8.Gigapascals() }, second),
            (first, second with { ShearModulus = 26.Gigapascals() }) })
        {
            var joint = new BondedTube(one, other, 50.Millimetres(), 1000.Megapascals(), 0.3.Millimetres(), 40.Millimetres());
            Assert.Throws<InvalidDesignException>(() => joint.Twisted(Torque.FromNewtonMeters(10)));
        }
    }
}
