using CsCheck;
using NotebookKit.Provenance;
using NotebookKit.Quantities;

namespace NotebookKit.Tests.Vessels.Ends;

/// <summary>What keeps a carried sleeve on its end: what isn't given isn't counted, and a neck that it can't lie on is refused.</summary>
public class CarriedSleeveTests
{
    private static readonly IsotropicMaterial Aluminium = Samples.Stock.Solid("aluminium 6061-T6");
    private static readonly DomedClosure Dome = DomedClosure.Hemisphere(Aluminium, 2.Millimetres(), 66.Millimetres());

    private static readonly BondedPlug Plug = new(Samples.Stock.Adhesive("structural epoxy"), 30.Millimetres(),
        BondSurface.AbradedPlastic, BondSurface.AbradedMetal);

    private static PressureVessel With(params EndJoint[] joints) => Samples.Trainer with { ForwardEnd = new VesselEnd(Dome, joints) };

    private static string[] Errors(IEnumerable<Finding> findings) =>
        [.. findings.Where(f => f.Severity == FindingSeverity.Error).Select(f => f.Message)];

    // 120 yarns of 2.2 mm on 65 mm at 45°: 2π·65·cos 45°/120 = 2.4066 mm of room, so they jam below ½·asin(2.2/2.4066) = 33.04° and above
    // 56.96°; sin θ/D is constant: 65·sin 33.04°/sin 45° = 50.12 mm to 77.06 mm.
    [Theory]
    [InlineData(50.1, true)]
    [InlineData(50.2, false)]
    public void A_neck_on_which_the_sleeve_jams_is_refused_with_its_range(double neck, bool isRefused)
    {
        foreach (var sleeve in new[] { new CarriedSleeve { IsTiedOff = true }, new CarriedSleeve { Tail = 30.Millimetres() } })
        {
            var errors = Errors(With(sleeve with { Neck = neck.Millimetres() }).Validate());
            if (isRefused)
            {
                Assert.Contains("jams and does not lie on the neck, since its yarns have room from 50.1 mm to 77.1 mm",
                    Assert.Single(errors), StringComparison.Ordinal);
                Assert.Throws<InvalidDesignException>(() => With(sleeve with { Neck = neck.Millimetres() }).Burst());
            }
            else
            {
                Assert.Empty(errors);
            }
        }
    }

    [Fact]
    public void A_jam_is_refused_beside_a_bond_as_well_and_the_bond_alone_is_not()
    {
        Assert.NotEmpty(Errors(With(Plug, Samples.Tied with { Neck = 40.Millimetres() }).Validate()));
        Assert.Empty(Errors(With(Plug).Validate()));
    }

    [Fact]
    public void A_sleeve_whose_yarns_have_room_on_no_diameter_lies_on_no_neck()
    {
        var braid = Samples.Stock.Braid("carbon sleeve 65 mm heavy");
        var crowded = braid with { YarnWidth = braid.YarnWidth with { Value = 2.5.Millimetres() } };
        var vessel = With(Samples.Tied) with { Plies = [new BraidedSleeve(crowded)], NozzleEnd = new VesselEnd(Dome, Plug) };
        Assert.Contains("since its yarns of 2.5 mm have room on no diameter", Assert.Single(Errors(vessel.Validate())),
            StringComparison.Ordinal);
    }

    // Opened wider than the vessel it would pull less than on the wall; and no neck is reached where the yarns lie at less than 5°.
    [Fact]
    public void A_neck_out_of_reach_or_wider_than_the_vessel_is_refused()
    {
        Assert.Contains("wider than the vessel under", Assert.Single(Errors(With(Samples.Tied with { Neck = 69.1.Millimetres() })
            .Validate())), StringComparison.Ordinal);
        Assert.Empty(Errors(With(Samples.Tied with { Neck = 69.Millimetres() }).Validate()));
        // 65·sin 5°/sin 45° = 8.012 mm.
        Assert.Contains("can't close down to; the neck must be 8.01 mm to below 91.9 mm", Assert.Single(Errors(
            With(Samples.Tied with { Neck = 8.Millimetres() }).Validate())), StringComparison.Ordinal);
    }

    [Fact]
    public void A_tail_of_no_length_is_refused()
    {
        Assert.Contains("tail of the sleeve is 0 mm; it must be 1 mm to 500 mm", Assert.Single(Errors(With(new CarriedSleeve
        {
            Neck = 54.Millimetres(), Tail = 0.Millimetres(),
        }).Validate())), StringComparison.OrdinalIgnoreCase);
        Assert.Empty(Errors(With(new CarriedSleeve { Neck = 54.Millimetres(), Tail = 1.Millimetres() }).Validate()));
    }

    [Theory]
    [InlineData(false, false, false, "neck and the tail")]
    [InlineData(true, false, false, "tail")]
    [InlineData(false, true, false, "neck")]
    [InlineData(false, false, true, "neck")]
    public void Without_neck_and_tail_there_is_no_rating(bool hasNeck, bool hasTail, bool isTiedOff, string missing)
    {
        var sleeve = new CarriedSleeve
        {
            Neck = hasNeck ? 54.Millimetres() : null, Tail = hasTail ? 40.Millimetres() : null, IsTiedOff = isTiedOff,
        };
        var (alone, bonded) = (With(sleeve).Burst(), With(Plug, sleeve).Burst());
        foreach (var burst in new[] { alone, bonded })
        {
            var rating = burst.Rate();
            Assert.False(rating.IsRated);
            Assert.Contains($"Forward end: the {missing} of the carried sleeve is not given, and a sleeve that slips off",
                Assert.Single(Errors(rating.Findings)), StringComparison.Ordinal);
            Assert.Contains(burst.Findings, f => f.Severity == FindingSeverity.Warning
                && f.Message.StartsWith($"Forward end: the {missing} of the carried sleeve is not given", StringComparison.Ordinal));
        }

        // What holds for certain is the bond; friction of a sleeve without a tail multiplies nothing.
        Assert.Equal(GaugePressure.Zero, alone.Low);
        var bond = With(Plug).Burst();
        Tolerance.Relative(Math.Min(bond.Low.Pascals, bonded.WallLow.Pascals), bonded.Low.Pascals, 1e-9);
    }

    // No tests with a nicer answer for whoever says less: neither the lower bound nor the rating falls by what is said of the tail, a tie
    // holds no less than any bond, and a longer tail no less than a shorter one.
    [Fact]
    public void A_tail_that_is_given_never_lowers_what_is_held_and_a_longer_one_never_does() => Gen.Select(Gen.Double[51, 69],
        Gen.Double[1, 200], Gen.Double[1, 200], Gen.Double[0, 0.6], Gen.Bool).Sample((neck, one, other, friction, hasBond) =>
    {
        var sleeve = new CarriedSleeve { Neck = neck.Millimetres(), Friction = friction };
        var held = new[]
        {
            Of(sleeve), Of(sleeve with { Tail = Math.Min(one, other).Millimetres() }),
            Of(sleeve with { Tail = Math.Max(one, other).Millimetres() }), Of(sleeve with { IsTiedOff = true }),
        };
        return held.Zip(held.Skip(1)).All(p => p.Second.Low >= p.First.Low * (1 - 1e-9) && p.Second.Rated >= p.First.Rated * (1 - 1e-9));

        (double Low, double Rated) Of(CarriedSleeve of)
        {
            var burst = (hasBond ? With(Plug, of) : With(of)).Burst();
            return (burst.Low.Pascals, burst.Rate() is { IsRated: true } rating ? rating.WorkingPressure.Pascals : 0);
        }
    }, iter: 60);
}
