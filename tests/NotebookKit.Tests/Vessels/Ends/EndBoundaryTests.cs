using NotebookKit.Provenance;
using NotebookKit.Quantities;
using NotebookKit.Vessels.Ends;
using NotebookKit.Vessels.Ends.Modes;
using UnitsNet;

namespace NotebookKit.Tests.Vessels.Ends;

/// <summary>Plates, rims, threads and caps at the place where one limit takes over from another, worked by hand.</summary>
public class EndBoundaryTests
{
    private static readonly IsotropicMaterial Aluminium = Samples.Stock.Solid("aluminium 6061-T6");

    private static readonly double Yield = Aluminium.YieldStrength.Value.Megapascals;

    // A plate of 66 mm between rims: in bending 6·σ·t²/(4·a²), shear around the rim σ·t/a; they meet at t = 2·a/3 = 22 mm.
    [Theory]
    [InlineData(20, 6 * 20 * 20 / (4.0 * 33 * 33))]
    [InlineData(22, 22 / 33.0)]
    [InlineData(30, 30 / 33.0)]
    public void A_thick_plate_shears_through_at_its_rim_before_it_bends(double thickness, double share) =>
        Tolerance.Relative(share * Yield, PlateStrength.CollapsePascals(new(Aluminium, thickness.Millimetres()), 0.066) / 1e6, 1e-9);

    // Both moments full all over, and the rim's turned: p·(R³ − b³)/6 = M0·(R − b) + M0·R; with b = R/2 that is 6·1.5/0.875 of M0/R².
    [Fact]
    public void A_clamped_plate_with_a_hole_by_the_largest_moment()
    {
        var plate = new PlateCollapse(50.Millimetres(), 25.Millimetres(), 4.Millimetres(), 200.Megapascals(), PlateRim.Clamped)
        {
            Rule = PlateYieldRule.MaximumMoment,
        };
        Tolerance.Relative(6 * 1.5 / 0.875, plate.Limit().Factor, 1e-12);
        Tolerance.Relative(6 * 0.5 / 0.875, (plate with { Rim = PlateRim.Supported }).Limit().Factor, 1e-12);
    }

    // The plate's equation along the yield ellipse in r itself, by SciPy's DOP853 to 1e-12.
    [Theory]
    [InlineData(PlateRim.Supported, 6.516413100022)]
    [InlineData(PlateRim.Clamped, 12.552057607345)]
    public void A_whole_plate_by_the_ellipse_to_ten_digits(PlateRim rim, double factor) => Tolerance.Relative(factor,
        new PlateCollapse(50.Millimetres(), Length.Zero, 4.Millimetres(), 200.Megapascals(), rim) { Rule = PlateYieldRule.VonMises }
            .Limit().Factor, 1e-10);

    [Theory]
    [InlineData(100, 120, "stress at the rim governs")]
    [InlineData(120, 100, "the area taken out governs")]
    public void A_rim_says_which_of_its_two_limits_governs(double stress, double area, string which)
    {
        RimStrength rim = new(new(33.Millimetres(), 2.Millimetres(), 6.5.Millimetres(), 240.Megapascals(), 0.3), 3, 0.Millimetres(),
            stress.BarGauge(), area.BarGauge());
        Assert.Equal(100, rim.Pressure!.Value.Bar, 9);
        Assert.Equal(which, rim.Lines[0].Note);
    }

    // EN 13445-3, pressure against area, for a hemisphere of 66 mm bore and 3 mm wall: R = 34.5² / 34.5 mm, hole 20 mm, reach
    // √(2·34.5·3) = 14.387 mm, so 43.162 mm² of wall and 34.5·24.387/2 = 420.683 mm² under pressure. A boss of 40 mm around a thread
    // of 20 mm adds 10 mm of wall over its height above the dome: 12 − 3 mm as engaged, or √(30·10) − 3 = 14.321 mm where more engages.
    [Theory]
    [InlineData(null, 12, 420.683 / 43.162)]
    [InlineData(40.0, 12, 420.683 / (43.162 + 10 * 9))]
    [InlineData(40.0, 25, 420.683 / (43.162 + 10 * 14.3205))]
    public void A_boss_adds_its_ring_above_the_dome_and_no_higher_than_it_reaches(double? boss, double engaged, double ratio)
    {
        var dome = DomedClosure.Hemisphere(Aluminium, 3.Millimetres(), 66.Millimetres()) with { Opening = 20.Millimetres() };
        var thread = new ThreadedFitting(Aluminium, 20.Millimetres(), 2.5.Millimetres(), engaged.Millimetres())
        {
            Boss = boss?.Millimetres(),
        };
        Tolerance.Relative(Yield / (ratio + 0.5), RimLimit.Pascals(dome, 0.066, thread) / 1e6, 1e-5);
    }

    // First yield takes the boss as a rim of up to five times the wall, over the half of what the boss stands out.
    [Theory]
    [InlineData(12, 12)]
    [InlineData(20, 15)]
    public void First_yield_of_a_boss_is_that_of_a_rim_as_thick_and_as_wide(double engaged, double rimWall)
    {
        var dome = DomedClosure.Hemisphere(Aluminium, 3.Millimetres(), 66.Millimetres()) with { Opening = 20.Millimetres() };
        var thread = new ThreadedFitting(Aluminium, 20.Millimetres(), 2.5.Millimetres(), engaged.Millimetres())
        {
            Boss = 40.Millimetres(),
        };
        var rim = new RimAtOpening(34.5.Millimetres(), 3.Millimetres(), 10.Millimetres(), Aluminium.YieldStrength.Value,
            Aluminium.PoissonRatio.Value) { RimWall = rimWall.Millimetres(), RimReach = 10.Millimetres() };
        Tolerance.Relative(rim.Allows().FromStress!.Value.Pascals, RimLimit.FirstYield(dome, 0.066, thread)!.Value.Pascals, 1e-9);
    }

    // Kirsch: twice the membrane stress at a small hole; a sphere of 1 m radius with 20 mm of wall has 25 times the pressure.
    [Fact]
    public void A_small_hole_in_a_dome_takes_half_the_pressure_of_the_dome() => Tolerance.Relative(240 / (2 * 25.0),
        new RimAtOpening(1000.Millimetres(), 20.Millimetres(), 0.5.Millimetres(), 240.Megapascals(), 0.3) { EdgePressed = false }
            .Allows().FromStress!.Value.Pascals / 1e6, 0.03);

    // 2a·tr = 2a·(t − tr) + 2·pad: R 50, t 2, a 10. A pad of 1 × 4 mm leaves tr = 1.2 mm; of one of 6 mm the 2.5·t count over 3 mm: 1.75;
    // one that gives back more than was taken leaves the dome's own wall.
    [Theory]
    [InlineData(3, 4, 1.2)]
    [InlineData(8, 3, 1.75)]
    [InlineData(8, 15, 2)]
    public void The_area_taken_out_by_hand(double wall, double reach, double needed) => Tolerance.Relative(
        2 * 200 * needed / (50 + 0.2 * needed),
        new RimAtOpening(50.Millimetres(), 2.Millimetres(), 10.Millimetres(), 200.Megapascals(), 0.3)
        {
            RimWall = wall.Millimetres(), RimReach = reach.Millimetres(),
        }.Allows().FromArea!.Value.Pascals / 1e6, 1e-9);

    // a/√(R·t) = 0.5 at R 50, t 2: a = 5 mm. Half the radius is the widest hole.
    [Theory]
    [InlineData(4.9, false, false)]
    [InlineData(5.1, true, false)]
    [InlineData(24.9, true, false)]
    [InlineData(25.1, false, true)]
    public void A_hole_is_called_wide_from_half_the_shells_length_on(double hole, bool isWide, bool isTooWide)
    {
        var rim = new RimAtOpening(50.Millimetres(), 2.Millimetres(), hole.Millimetres(), 200.Megapascals(), 0.3);
        Assert.Equal(isTooWide, rim.Allows().Pressure is null);
        Assert.Equal(isWide, rim.Allows().Findings.Any(f => f.Severity == FindingSeverity.Warning
            || f.Severity == FindingSeverity.Note) && !isTooWide);
    }

    // No limits of a thread of 1.5 mm on 20 mm: half of the cylinder at 0.577 of the weaker's yield, p = 2·l·τ/d, counted to one diameter.
    [Theory]
    [InlineData("aluminium 6061-T6", "aluminium 6061-T6", 12, 1.2)]
    [InlineData("aluminium 6061-T6", "aluminium 6061-T6", 30, 2)]
    [InlineData("PVC-U", "aluminium 6061-T6", 12, 1.2)]
    [InlineData("aluminium 6061-T6", "PVC-U", 12, 1.2)]
    public void A_fittings_thread_holds_by_the_weaker_metal_and_one_diameter(string fitting, string closure, double engaged, double share)
    {
        IsotropicMaterial inner = Samples.Stock.Solid(fitting), outer = Samples.Stock.Solid(closure);
        var thread = new ThreadedFitting(inner, 20.Millimetres(), 1.5.Millimetres(), engaged.Millimetres()) { Boss = 80.Millimetres() };
        var weaker = Math.Min(inner.YieldStrength.Value.Pascals, outer.YieldStrength.Value.Pascals);
        Tolerance.Relative(share * 0.577 * weaker, Assert.Single(FittingStrength.Modes(thread,
            new FlatClosure(outer, 12.Millimetres()) { Opening = 18.Millimetres() })).Pascals, 1e-9);
    }

    // A shoulder of 3 × 40 mm behind a hole of 20 mm: sheared off at 4·t·τ/d, the edge crushed at σ·(40²/20² − 1) of the weaker.
    [Theory]
    [InlineData("PVC-U", "aluminium 6061-T6")]
    [InlineData("aluminium 6061-T6", "PVC-U")]
    public void A_shoulder_crushes_the_weaker_of_fitting_and_edge(string fitting, string closure)
    {
        IsotropicMaterial inner = Samples.Stock.Solid(fitting), outer = Samples.Stock.Solid(closure);
        var modes = FittingStrength.Modes(new ShoulderedFitting(inner, 3.Millimetres(), 40.Millimetres()),
            new FlatClosure(outer, 12.Millimetres()) { Opening = 20.Millimetres() }).ToList();
        Tolerance.Relative(4 * 3 / 20.0 * 0.577 * inner.YieldStrength.Value.Pascals, modes[0].Pascals, 1e-9);
        Tolerance.Relative(3 * Math.Min(inner.YieldStrength.Value.Pascals, outer.YieldStrength.Value.Pascals), modes[1].Pascals, 1e-9);
    }

    // 12 mm of M12 is one diameter; three turns of 1.75 mm are 5.25 mm.
    [Theory]
    [InlineData(12.0, false, false)]
    [InlineData(12.1, true, false)]
    [InlineData(5.3, false, false)]
    [InlineData(5.2, false, true)]
    public void A_cap_counts_one_diameter_and_asks_for_three_turns(double engaged, bool isLong, bool isShort)
    {
        var strips = new ScrewedCap(ThreadLimits.Named("M12"), engaged.Millimetres(), 20.Millimetres(), 100.Megapascals(),
            100.Megapascals()).Strips();
        Assert.Equal(isLong, strips.Findings.Any(f => f.Message.Contains("first turns", StringComparison.OrdinalIgnoreCase)));
        Assert.Equal(isShort, strips.Findings.Any(f => f.Message.Contains("three turns", StringComparison.OrdinalIgnoreCase)));
    }

    // M12, 6g in 6H: (11.701 − 10.441) / 2 mm of overlap. A major diameter above the nominal one is none of a tolerance's.
    [Fact]
    public void Threads_overlap_by_half_the_difference_of_their_diameters()
    {
        var thread = ThreadLimits.Named("M12");
        Tolerance.Relative(0.63, thread.Overlap.Millimeters, 1e-9);
        Assert.Empty((thread with { ExternalMajor = 12.Millimetres() }).Validate());
        Assert.Contains((thread with { ExternalMajor = 12.01.Millimetres() }).Validate(),
            f => f.Message.Contains("least major diameter of the external thread", StringComparison.Ordinal));
    }
}
