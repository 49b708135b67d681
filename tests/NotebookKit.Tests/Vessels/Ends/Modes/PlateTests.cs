using CsCheck;
using NotebookKit.Provenance;
using NotebookKit.Quantities;
using NotebookKit.Vessels.Ends.Modes;
using UnitsNet;

namespace NotebookKit.Tests.Vessels.Ends.Modes;

public class PlateTests
{
    private static readonly AnnularPlate Plate = new(33.Millimetres(), 6.5.Millimetres(), 8.Millimetres(), 69.Gigapascals(), 0.33,
        PlateRim.Supported);
    private static readonly PlateCollapse Collapse = new(33.Millimetres(), 6.5.Millimetres(), 8.Millimetres(), 240.Megapascals(),
        PlateRim.Supported);

    [Fact]
    public void A_thicker_plate_yields_later_and_bends_less() =>
        Gen.Select(Gen.Double[2, 12], Gen.Double[0.02, 0.8], Gen.Bool).Sample((t, hole, clamped) =>
    {
        var thin = new AnnularPlate(50.Millimetres(), (50 * hole).Millimetres(), t.Millimetres(), 69.Gigapascals(), 0.33, clamped
            ? PlateRim.Clamped : PlateRim.Supported);
        var thick = thin with { Thickness = (1.1 * t).Millimetres() };
        return thick.FirstYield(240.Megapascals()) > thin.FirstYield(240.Megapascals())
            && thick.BendingAt(10.BarGauge()).MaximumDeflection < thin.BendingAt(10.BarGauge()).MaximumDeflection;
    }, iter: 60);

    [Fact]
    public void A_clamped_rim_and_a_cover_held_elsewhere_only_help() =>
        Gen.Select(Gen.Double[0.02, 0.9], Gen.Double[1, 12]).Sample((hole, t) =>
    {
        var plate = new PlateCollapse(50.Millimetres(), (50 * hole).Millimetres(), t.Millimetres(), 240.Megapascals(), PlateRim.Supported);
        var clamped = plate with { Rim = PlateRim.Clamped };
        return clamped.Limit().Pressure > plate.Limit().Pressure
            && (plate with { Cover = HoleCover.HeldElsewhere }).Limit().Pressure > plate.Limit().Pressure
            && (clamped with { Cover = HoleCover.HeldElsewhere }).Limit().Pressure > clamped.Limit().Pressure;
    }, iter: 100);

    // Tresca's hexagon lies inside von Mises's ellipse, which lies inside one 2/√3 times as large.
    [Fact, Trait("Length", "long")]
    public void Tresca_is_never_above_von_Mises_nor_far_below() =>
        Gen.Select(Gen.Double[0.02, 0.9], Gen.Bool, Gen.Bool).Sample((hole, clamped, held) =>
    {
        var plate = new PlateCollapse(50.Millimetres(), (50 * hole).Millimetres(), 5.Millimetres(), 240.Megapascals(), clamped
            ? PlateRim.Clamped : PlateRim.Supported)
        {
            Cover = held ? HoleCover.HeldElsewhere : HoleCover.SupportedAtEdge,
        };
        var ratio = (plate with { Rule = PlateYieldRule.VonMises }).Limit().Pressure / plate.Limit().Pressure;
        return ratio is > 0.9999 and < 1.1548;
    }, iter: 60);

    [Fact]
    public void First_yield_lies_below_collapse() => Gen.Select(Gen.Double[0.02, 0.9], Gen.Bool).Sample((hole, clamped) =>
    {
        var rim = clamped ? PlateRim.Clamped : PlateRim.Supported;
        var elastic = new AnnularPlate(50.Millimetres(), (50 * hole).Millimetres(), 5.Millimetres(), 69.Gigapascals(), 0.33, rim)
            .FirstYield(240.Megapascals());
        return elastic < new PlateCollapse(50.Millimetres(), (50 * hole).Millimetres(), 5.Millimetres(), 240.Megapascals(), rim).Limit()
            .Pressure;
    }, iter: 60);

    // A tiny hole doubles the stress at the middle of an evenly bent plate, but leaves the deflection and the collapse.
    [Fact]
    public void A_tiny_hole_doubles_the_stress_and_little_else()
    {
        var whole = Plate with { HoleRadius = Length.Zero };
        var pierced = Plate with { HoleRadius = 0.05.Millimetres() };
        Tolerance.Relative(2, pierced.BendingAt(10.BarGauge()).MaximumStress / whole.BendingAt(10.BarGauge()).MaximumStress, 2e-3);
        Tolerance.Relative(1, pierced.BendingAt(10.BarGauge()).MaximumDeflection / whole.BendingAt(10.BarGauge()).MaximumDeflection, 2e-3);
        Tolerance.Relative(1, (Collapse with { HoleRadius = 0.05.Millimetres() }).Limit()
            .Pressure / (Collapse with { HoleRadius = Length.Zero }).Limit().Pressure, 5e-3);
    }

    [Theory]
    [InlineData(PlateRim.Supported, PlateYieldRule.Tresca)]
    [InlineData(PlateRim.Clamped, PlateYieldRule.Tresca)]
    [InlineData(PlateRim.Supported, PlateYieldRule.VonMises)]
    [InlineData(PlateRim.Clamped, PlateYieldRule.VonMises)]
    [InlineData(PlateRim.Clamped, PlateYieldRule.MaximumMoment)]
    public void A_tiny_hole_leaves_the_collapse_of_the_whole_plate(PlateRim rim, PlateYieldRule rule)
    {
        var pierced = Collapse with { Rim = rim, Rule = rule, HoleRadius = 0.034.Millimetres() };
        Tolerance.Relative(1, pierced.Limit().Pressure / (pierced with { HoleRadius = Length.Zero }).Limit().Pressure, 2e-3);
    }

    [Fact]
    public void Units_make_no_difference()
    {
        var inches = new AnnularPlate(
            Plate.OuterRadius.ToUnit(UnitsNet.Units.LengthUnit.Inch), Plate.HoleRadius.ToUnit(UnitsNet.Units.LengthUnit.Inch),
                Plate.Thickness.ToUnit(UnitsNet.Units.LengthUnit.Inch),
            Plate.Modulus.ToUnit(UnitsNet.Units.PressureUnit.PoundForcePerSquareInch), 0.33, PlateRim.Supported);
        Tolerance.Relative(Plate.FirstYield(240.Megapascals()).Pascals, inches.FirstYield((240e6 / 6894.757293168361).Psi()).Pascals, 1e-9);
    }

    [Fact]
    public void The_rim_carries_the_whole_thrust()
    {
        // The moment along the radius balances the shear: (r·Mr)′ − Mt = −p·r²/2 with the plug on the hole.
        var bent = Plate.BendingAt(60.BarGauge());
        double M(Pressure stress) => stress.Pascals * 0.008 * 0.008 / 6;
        foreach (var r in new[] { 8.0, 15, 25, 32 })
        {
            const double h = 0.01;
            var change = (M(bent.RadialStressAt((r + h).Millimetres())) * (r + h) - M(bent.RadialStressAt((r - h).Millimetres())) * (
                r - h)) / (2 * h);
            Tolerance.Relative(-60e5 * r * r / 2e6, change - M(bent.AroundStressAt(r.Millimetres())), 1e-5);
        }
    }

    [Fact]
    public void It_shows_itself()
    {
        var bent = Plate.BendingAt(60.BarGauge());
        Assert.Equal(ResultStatus.Completed, bent.Status);
        Assert.Equal(3, bent.Working.Steps.Count);
        Assert.Contains(bent.Findings, f => f.Severity == FindingSeverity.Warning
            && f.Message.Contains("thick for its width", StringComparison.Ordinal));
        var thin = (Plate with { Thickness = 1.Millimetres() }).BendingAt(60.BarGauge());
        Assert.Contains(thin.Findings, f => f.Message.Contains("more than half its thickness of 1 mm", StringComparison.Ordinal));
        Assert.DoesNotContain(bent.Findings, f => f.Message.Contains("half its thickness", StringComparison.Ordinal));
        Assert.Contains(bent.Lines, l => l.Name == "largest stress" && l.Note.StartsWith("around", StringComparison.Ordinal));
        var limit = (Collapse with { Rule = PlateYieldRule.MaximumMoment }).Limit();
        Assert.Contains(limit.Findings, f => f.Severity == FindingSeverity.Warning);
        Assert.NotEmpty(limit.Cautions);
    }

    [Fact]
    public void Bad_plates_are_refused_in_words()
    {
        var wide = Assert.Throws<InvalidDesignException>(() => (Plate with { HoleRadius = 40.Millimetres() }).BendingAt(60.BarGauge()));
        Assert.Contains("radius of the hole in the plate is 40 mm; it must be 0.033 mm to 32.67 mm", wide.Message,
            StringComparison.Ordinal);
        Assert.Throws<InvalidDesignException>(() => (Collapse with { HoleRadius = 40.Millimetres() }).Limit());
        Assert.Throws<InvalidDesignException>(() => (Plate with { HoleRadius = (-1).Millimetres() }).BendingAt(60.BarGauge()));
        Assert.Throws<InvalidDesignException>(() => (Plate with { Thickness = Length.Zero }).FirstYield(240.Megapascals()));
        Assert.Throws<InvalidDesignException>(() => (Plate with { PoissonRatio = double.NaN }).FirstYield(240.Megapascals()));
        Assert.Throws<OutOfRangeException>(() => Plate.BendingAt((-1).BarGauge()));
        Assert.Throws<OutOfRangeException>(() =>
            (Plate with { HoleRadius = Length.Zero }).BendingAt(1.BarGauge(), ForcePerLength.FromNewtonsPerMillimeter(1)));
        Assert.Throws<OutOfRangeException>(() => Plate.BendingAt(1.BarGauge()).DeflectionAt(5.Millimetres()));
        Assert.Throws<InvalidDesignException>(() => (Collapse with { HoleRadius = Length.Zero }).EdgeLoadLimit());
        Assert.Throws<InvalidDesignException>(() => Collapse.CentralLoadLimit(1.Millimetres()));
        Assert.Throws<OutOfRangeException>(() => (Collapse with { HoleRadius = Length.Zero }).CentralLoadLimit(34.Millimetres()));
    }
}
