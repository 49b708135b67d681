using CsCheck;
using NotebookKit.Provenance;
using NotebookKit.Quantities;
using NotebookKit.Vessels.Ends.Modes;
using UnitsNet;

namespace NotebookKit.Tests.Vessels.Ends.Modes;

public class RimTests
{
    // A dome of 66 mm with a wall of 2 mm.
    private static readonly RimAtOpening Dome = new(33.Millimetres(), 2.Millimetres(), 6.5.Millimetres(), 240.Megapascals(), 0.3);

    [Fact]
    public void A_nozzle_s_hole_is_rated_and_a_hole_as_wide_as_the_dome_is_not()
    {
        var nozzle = Dome.Allows();
        Assert.Equal(ResultStatus.Completed, nozzle.Status);
        Assert.True(nozzle.Pressure > 10.BarGauge());
        var wide = (Dome with { HoleRadius = 30.Millimetres() }).Allows();
        Assert.Equal(ResultStatus.Failed, wide.Status);
        Assert.Null(wide.Pressure);
        Assert.Null(wide.StressFactor);
        Assert.Contains("The hole of 60 mm takes 90.9 % of the dome's diameter of 66 mm", Assert.Single(wide.Findings).Message,
            StringComparison.Ordinal);
        Assert.Contains(wide.Lines, l => l.Value == "the hole is too wide");
    }

    // The sphere's equations of Reissner and Meissner, another form than the model's, by a boundary-value solver (SciPy's solve_bvp).
    [Theory]
    [InlineData(.06, .19697, .3, false, 4.39441, 2.17020)]
    [InlineData(.06, .19697, .3, true, 4.80174, 2.31063)]
    [InlineData(.02, .3, .3, false, 7.77433, 5.06045)]
    [InlineData(.03, .5, .33, true, 9.22343, 6.76204)]
    [InlineData(.005, .3, .3, true, 13.19667, 10.29103)]
    [InlineData(.05, .005, .3, false, 2.01419, 1.98822)]
    [InlineData(.05, .005, .3, true, 2.11561, 2.08704)]
    public void Stress_around_the_edge_meets_another_solution(double wall, double hole, double poisson, bool pressed, double outer,
        double inner)
    {
        var edge = ShellEdge.Solve(wall, hole, wall, 0, poisson, pressed)[0];
        var (one, other) = (edge.AroundOuter * 2 * wall, edge.AroundInner * 2 * wall);
        Tolerance.Relative(outer, Math.Max(one, other), 1e-3);
        Tolerance.Relative(inner, Math.Min(one, other), 1e-3);
    }

    [Fact]
    public void A_small_hole_meets_the_flat_sheet()
    {
        var small = new RimAtOpening(1000.Millimetres(), 20.Millimetres(), 0.5.Millimetres(), 240.Megapascals(),
            0.3) { EdgePressed = false };
        var pressed = small with { EdgePressed = true };
        var membrane = 1000 / (2 * 20.0);
        // 2S, or 2S + p, at the edge, and the pressure of 1 on the inner face, over S.
        Tolerance.Relative(HoleStress.Factor(1) + 1 / membrane, small.Allows().StressFactor!.Value, 0.01);
        var flat = HoleStress.AtEdge(membrane.Megapascals(), 10.BarGauge()).Megapascals;
        Tolerance.Relative((flat + 1) / membrane, pressed.Allows().StressFactor!.Value, 0.01);
        // With a laminate the flat sheet's 1 + ξ² at the distance.
        var laminate = small with { PointDistance = HoleStress.PointDistance };
        Tolerance.Relative(1 / HoleStress.StrengthLeftByPoint(0.5.Millimetres(), HolePull.Even, HoleStress.PointDistance),
            laminate.Allows().StressFactor!.Value, 0.01);
    }

    // Two rings by Lamé: a thicker one around the hole, a wide sheet of the dome's wall around that.
    [Theory]
    [InlineData(2, 2)]
    [InlineData(3, 1.5)]
    public void A_thicker_rim_of_a_small_hole_meets_two_flat_rings(double thicker, double reach)
    {
        const double wall = 0.02, a = 0.001, nu = 0.3;
        double c = reach * a, square = c * c + a * a, gap = c * c - a * a;
        var q = 2 / (square / gap - nu + (1 + nu) * thicker);
        var flat = 2 * q * c * c / gap;
        var edge = ShellEdge.Solve(wall, a, thicker * wall, c - a, nu, false)[0];
        // Bending of so small a hole is the last per cent.
        Tolerance.Relative(flat, (edge.AroundOuter + edge.AroundInner) * wall, 0.01);
    }

    [Fact]
    public void A_wider_hole_takes_less_pressure() => Gen.Select(Gen.Double[1, 15], Gen.Double[0.5, 5]).Sample((hole, wall) =>
    {
        var rim = Dome with { HoleRadius = hole.Millimetres(), Wall = wall.Millimetres() };
        return (rim with { HoleRadius = (1.05 * hole).Millimetres() }).Allows().FromStress < rim.Allows().FromStress;
    }, iter: 30);

    [Fact]
    public void A_thicker_rim_takes_more_pressure()
    {
        var thick = (Dome with { RimWall = 5.Millimetres(), RimReach = 8.Millimetres() }).Allows();
        Assert.True(thick.FromStress > Dome.Allows().FromStress);
        Assert.True(thick.FromArea > Dome.Allows().FromArea);
    }

    [Fact]
    public void The_lower_of_stress_and_area_counts()
    {
        var allows = Dome.Allows();
        Assert.Equal(Math.Min(allows.FromStress!.Value.Pascals, allows.FromArea!.Value.Pascals), allows.Pressure!.Value.Pascals);
        // With no thicker rim half of the wall's area has to replace the hole's: p = σ·t/(R + 0.1·t).
        Tolerance.Relative(240e6 * 2 / 33.2, allows.FromArea.Value.Pascals, 1e-9);
    }

    [Fact]
    public void A_laminate_is_rated_at_a_distance_and_says_what_that_rests_on()
    {
        var laminate = Dome with { PointDistance = HoleStress.PointDistance };
        Assert.True(laminate.Allows().StressFactor < Dome.Allows().StressFactor);
        Assert.Contains(laminate.Allows().Findings, f => f.Severity == FindingSeverity.Warning
            && f.Message.Contains("tests with holes", StringComparison.Ordinal));
    }

    [Fact]
    public void Bad_rims_are_refused_in_words()
    {
        Assert.Contains("radius of the hole in the dome is 34 mm",
            Assert.Throws<InvalidDesignException>(() => (Dome with { HoleRadius = 34.Millimetres() }).Allows()).Message,
            StringComparison.Ordinal);
        Assert.Contains("reach is not given",
            Assert.Throws<InvalidDesignException>(() => (Dome with { RimWall = 4.Millimetres() }).Allows()).Message,
            StringComparison.Ordinal);
        Assert.Contains("wall is not given",
            Assert.Throws<InvalidDesignException>(() => (Dome with { RimReach = 4.Millimetres() }).Allows()).Message,
            StringComparison.Ordinal);
        Assert.Throws<InvalidDesignException>(() => (Dome with { Wall = 8.Millimetres() }).Allows());
        Assert.Throws<InvalidDesignException>(() => (Dome with { Strength = Pressure.FromPascals(-1) }).Allows());
    }
}
