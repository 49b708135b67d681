using CsCheck;
using NotebookKit.Provenance;
using NotebookKit.Quantities;
using UnitsNet;

namespace NotebookKit.Tests.Aerodynamics.FinStructures;

public class FinStructureResultTests
{
    private static FinSheet Sheet { get; } = new("carbon 0/90, 1.5 mm", Pressure.FromGigapascals(5), Pressure.FromMegapascals(500),
        Source.CommonPractice("invented"));

    private static FinBond Bond { get; } = new(6.Millimetres(), Pressure.FromMegapascals(10), Source.CommonPractice("invented"));

    // By hand at 100 m/s and 5 m/s of gust: q = 6125 Pa, alpha = atan(0.05) = 0.0499584; N = q A CNa1 K alpha with M = 0.29386.
    [Fact]
    public void Loads_add_up_by_hand()
    {
        var result = SampleBodies.ThreeFins.FinStructure(Sheet, Bond, 100.MetresPerSecond(), 5.MetresPerSecond());
        var slope = SampleBodies.ThreeFins.NormalForce(100 / 340.294).Components[1].Slope / 1.5;
        var load = 6125 * Math.PI / 4 * 0.0036 * slope * Math.Atan(0.05);
        Tolerance.Relative(load, result.FinLoad.Newtons, 1e-5);
        Tolerance.Relative(load * 0.0275, result.RootMoment.NewtonMeters, 1e-5);
        Tolerance.Relative(6 * load * 0.0275 / (0.1 * 1.5e-3 * 1.5e-3), result.RootStress.Pascals, 1e-5);
        Tolerance.Relative(((load * 0.0275 / 4.5e-3) + (load / 2)) / (0.1 * 6e-3 / Math.Sqrt(2)), result.BondStress.Pascals, 1e-5);
        Tolerance.Relative(500e6 / result.RootStress.Pascals, result.SheetFactor, 1e-9);
        Assert.Equal(Cautions.ForFlight, result.Cautions);
    }

    [Fact]
    public void Thin_soft_fins_are_refused_a_pass_with_the_remedy()
    {
        var result = SampleBodies.ThreeFins.FinStructure(Sheet with { ShearModulus = Pressure.FromGigapascals(1) }, Bond,
            200.MetresPerSecond(), 10.MetresPerSecond());
        Assert.False(result.Holds);
        Assert.Contains(result.Findings, f => f.Severity == FindingSeverity.Error
            && f.Message.Contains("will break off", StringComparison.Ordinal));
    }

    [Fact]
    public void The_stated_thickness_gives_the_wanted_margin()
        => Gen.Select(Gen.Double[0.5, 40], Gen.Double[50, 250]).Sample((shear, speed) =>
    {
        var (fins, modulus, fastest) = (SampleBodies.ThreeFins.Fins[0], Pressure.FromGigapascals(shear), speed.MetresPerSecond());
        var thickness = fins.Flutter(modulus, fastest).RequiredThickness;
        if (thickness > 20.Millimetres()) return;
        Tolerance.Relative(FlutterResult.RequiredMargin, (fins with { Thickness = thickness }).Flutter(modulus, fastest).Margin, 1e-9);
    });

    // Same shape at any size in the same air flutters at the same speed: the criterion has no length of its own.
    [Fact]
    public void Flutter_does_not_depend_on_size() => Gen.Double[0.3, 3].Sample(factor =>
    {
        var fins = SampleBodies.ThreeFins.Fins[0];
        var scaled = fins with { Planform = fins.Planform.Scaled(factor), Thickness = fins.Thickness * factor };
        Tolerance.Relative(
            fins.Flutter(Pressure.FromGigapascals(5), 100.MetresPerSecond()).FlutterSpeed.MetersPerSecond,
            scaled.Flutter(Pressure.FromGigapascals(5), 100.MetresPerSecond()).FlutterSpeed.MetersPerSecond, 1e-12);
    });

    // By hand: a square of 80 mm with its corner cut off by 5 mm is a square for all that flutter knows; its tip corner is none of its
    // taper.
    [Fact]
    public void A_corner_cut_off_the_tip_is_no_taper()
    {
        var square = FinSet.Trapezoidal(3, 80.Millimetres(), 80.Millimetres(), 80.Millimetres(), 0.Millimetres(), 1.5.Millimetres(),
            0.Millimetres());
        var cut = square with { Planform = new PolygonPlanform([Corner(0, 0), Corner(0, 75), Corner(40, 80), Corner(80, 75),
            Corner(80, 0)]) };
        var (whole, less) = (Speed(square), Speed(cut));
        Assert.InRange(less / whole, 0.95, 1.05);

        static double Speed(FinSet fins) => fins.Flutter(Pressure.FromGigapascals(5), 100.MetresPerSecond()).FlutterSpeed.MetersPerSecond;
    }

    // t over the longest chord: a fin that widens outwards is as thin there as it is wide.
    [Fact]
    public void A_fin_wider_at_its_tip_flutters_sooner()
    {
        var straight = FinSet.Trapezoidal(3, 80.Millimetres(), 80.Millimetres(), 80.Millimetres(), 0.Millimetres(), 1.5.Millimetres(),
            0.Millimetres());
        var wider = FinSet.Trapezoidal(3, 80.Millimetres(), 100.Millimetres(), 80.Millimetres(), 0.Millimetres(), 1.5.Millimetres(),
            0.Millimetres());
        var (one, other) = (straight.Flutter(Pressure.FromGigapascals(5), 100.MetresPerSecond()),
            wider.Flutter(Pressure.FromGigapascals(5), 100.MetresPerSecond()));
        // A = 80² / (80 × 90) = 8/9, (λ + 1) / 2 = 9/8, t / c = 1.5 / 100 instead of 1, 1, 1.5 / 80.
        var expected = Math.Pow(0.8, 1.5) * Math.Sqrt(((8.0 / 9) + 2) / 3 / Math.Pow(8.0 / 9, 3) / (9.0 / 8));
        Tolerance.Relative(expected, other.FlutterSpeed / one.FlutterSpeed, 1e-12);
    }

    [Fact]
    public void Fins_swept_forward_are_warned_of()
    {
        var fins = FinSet.Trapezoidal(3, 100.Millimetres(), 60.Millimetres(), 60.Millimetres(), (-20).Millimetres(), 1.5.Millimetres(),
            1.7.Metres());
        var result = (SampleBodies.ThreeFins with { Fins = [fins] }).FinStructure(Sheet, Bond, 100.MetresPerSecond(), 5.MetresPerSecond());
        Assert.False(result.Holds);
        Assert.Contains(result.Findings, f => f.Severity == FindingSeverity.Warning
            && f.Message.Contains("swept forward", StringComparison.Ordinal));
        Assert.DoesNotContain(SampleBodies.ThreeFins.FinStructure(Sheet, Bond, 100.MetresPerSecond(), 5.MetresPerSecond()).Findings,
            f => f.Message.Contains("swept", StringComparison.Ordinal));
    }

    [Fact]
    public void Wrong_units_are_caught()
    {
        // 5 MPa written for 5 GPa.
        var error = Assert.Throws<OutOfRangeException>(() => SampleBodies.ThreeFins.Fins[0].Flutter(Pressure.FromMegapascals(5),
            100.MetresPerSecond()));
        Assert.Contains("shear modulus", error.Message, StringComparison.Ordinal);
        Assert.Throws<OutOfRangeException>(() => SampleBodies.ThreeFins.Fins[0].Flutter(Pressure.FromGigapascals(5),
            320.MetresPerSecond()));
    }

    [Fact]
    public void An_empty_layup_is_refused() => Assert.Throws<InvalidDesignException>(() => new SheetLayup([]).ShearModulus);

    private static PlanformPoint Corner(double aft, double outward) => new(aft.Millimetres(), outward.Millimetres());

    [Fact]
    public void Fins_without_any_load_on_them_do_not_pass()
    {
        var result = SampleBodies.ThreeFins.FinStructure(Sheet, Bond, 100.MetresPerSecond(), 0.MetresPerSecond());
        Assert.False(result.Holds);
        Assert.Contains(result.Findings, f => f.Message.Contains("neither gust nor cant", StringComparison.Ordinal));
    }
}
