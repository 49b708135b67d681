using NotebookKit.Quantities;
using UnitsNet;

namespace NotebookKit.Tests.Published.Aerodynamics;

public class FinStructureTests
{
    private const string Martin = "D. J. Martin, NACA TN 4197, 1958, eq. 18, constant 39.3 with p / 14.7 psi; worked independently in SI "
        + "and US units";

    private static AirConditions Z1000 { get; } = new(AbsolutePressure.FromPascals(89876.3), Temperature.FromKelvins(281.651));

    private static FinSet Fins(double thicknessMm = 1.5) =>
        FinSet.Trapezoidal(3, 100.Millimetres(), 60.Millimetres(), 60.Millimetres(), 40.Millimetres(), thicknessMm.Millimetres(),
            1.7.Metres());

    [Theory]
    [PublishedCase("F21", Martin)]
    [InlineData(3, 187.784, 197.124)]
    [InlineData(5, 242.428, 254.487)]
    [InlineData(20, 484.856, 508.973)]
    [InlineData(30, 593.825, 623.362)]
    public void Flutter_speed(double gigapascals, double seaLevel, double at1000)
    {
        var shear = Pressure.FromGigapascals(gigapascals);
        Tolerance.Relative(seaLevel, Fins().Flutter(shear, 100.MetresPerSecond()).FlutterSpeed.MetersPerSecond, 4e-6);
        Tolerance.Relative(at1000, Fins().Flutter(shear, 100.MetresPerSecond(), Z1000).FlutterSpeed.MetersPerSecond, 4e-6);
    }

    // A plate of one thickness: on the mean chord the ratio, and with it the speed, would come out higher; the root chord errs low.
    [Fact]
    [PublishedCase("F21", Martin)]
    public void The_root_chord_is_taken_not_the_mean()
    {
        var mean = FinAeroelasticity.FlutterMps(5e9, 0.01875, 0.75, 0.6, 101_325, 340.294);
        Tolerance.Relative(338.803, mean, 4e-6);
        Tolerance.Relative(1.397542, mean / Fins().Flutter(Pressure.FromGigapascals(5),
            100.MetresPerSecond()).FlutterSpeed.MetersPerSecond, 4e-6);
    }

    // A widely copied hobby form has half the constant and gives 342.8 m/s.
    [Fact]
    [PublishedCase("F22", "Erratum to a widely copied form of NACA TN 4197 with 1.337 for 2.674")]
    public void The_constant_is_the_report_s_own()
    {
        Tolerance.Relative(39.294, FinAeroelasticity.MartinConstant * 14.696, 1e-5);
        var speed = Fins().Flutter(Pressure.FromGigapascals(5), 100.MetresPerSecond()).FlutterSpeed.MetersPerSecond;
        Tolerance.Relative(242.4, speed, 2e-4);
        Assert.True(speed < 342.8 / 1.4);
    }

    [Theory]
    [PublishedCase("F21", Martin)]
    [InlineData(5, 1.72895)]
    [InlineData(30, 0.951481)]
    public void Thickness_for_a_flutter_speed_of_300_metres_per_second(double gigapascals, double millimetres)
    {
        // 300 m/s is wanted with the margin of 1.5: asked for by a fastest speed of 200 m/s.
        var result = Fins().Flutter(Pressure.FromGigapascals(gigapascals), 200.MetresPerSecond());
        Tolerance.Relative(millimetres, result.RequiredThickness.Millimeters, 4e-6);
    }

    // Measured flutter of AGARD wing 445.6, weakened model 3 in air; root 0.5587 m, tip 0.3682 m, span 0.762 m, 4 % thick, G 0.4392 GPa.
    // The criterion is too high by 7 % to 55 %: with the margin of 1.5 asked for, every row within Mach 0.8 is on the safe side.
    [Theory]
    [PublishedCase("F23", "E. C. Yates, NASA TM-100492, 1987, wing 445.6 weakened model 3 in air (table recalled, self-consistent)")]
    [PublishedCase("N61", "E. C. Yates, NASA TM-100492, 1987")]
    [InlineData(0.499, 0.42770, 172.5, 184.42)]
    [InlineData(0.678, 0.20818, 231.4, 264.34)]
    [InlineData(0.901, 0.09945, 296.7, 382.45)]
    [InlineData(0.960, 0.06338, 309.0, 479.08)]
    public void Measured_flutter_of_a_wing(double mach, double density, double measured, double martin)
    {
        const double Root = 0.5587, Tip = 0.3682, Span = 0.762;
        var (aspect, taper) = (Span / ((Root + Tip) / 2), Tip / Root);
        Tolerance.Relative(1.64419, aspect, 1e-5);
        var sound = measured / mach;
        var speed = FinAeroelasticity.FlutterMps(0.4392e9, 0.04, aspect, taper, density * sound * sound / 1.4, sound);
        Tolerance.Relative(martin, speed, 2e-4);
        if (mach <= FlutterResult.MaximumMach) Assert.True(speed / FlutterResult.RequiredMargin < measured);
    }

    // A thin flexible wing held at an angle at its root: flutter set in at 49, 43 and 38 m/s at 3, 5 and 7 degrees. That is bending by the
    // steady load, which only a nonlinear model follows, and a plate formula can't be tested with it. So the result has to say that it
    // knows nothing of it, must not change with an angle it has no input for, and its margin must be wider than what the angle cost that
    // wing.
    [Fact]
    [PublishedCase("N60", "A. Drachinsky, D. E. Raveh, 2022, thin flexible wing in a low-speed tunnel: onset 49, 43, 38 m/s at root "
        + "angles of 3°, 5°, 7°")]
    public void Flutter_claims_nothing_about_fins_bent_by_their_load()
    {
        var result = Fins().Flutter(Pressure.FromGigapascals(5), 100.MetresPerSecond());
        Assert.Contains(result.Model.Assumptions, a => a.Contains("Small deflections", StringComparison.Ordinal)
            && a.Contains("can't follow", StringComparison.Ordinal));
        Assert.True(FlutterResult.RequiredMargin > 49.0 / 38);
        var atTheEdge = Fins().Flutter(Pressure.FromGigapascals(5), result.FlutterSpeed * (38.0 / 49));
        Assert.False(atTheEdge.Holds);
    }

    // 45 degree delta plates, sea level to 78 000 ft: indicated flutter speed nearly constant for two of three models, speeds not printed
    // where it was read. Table I of the U.S. Standard Atmosphere 1976 for 0, 1, 5, 11 and 15 km, and 3.2 kPa at 220 K for 78 000 ft.
    [Fact]
    [PublishedCase("N62", "NACA RM L52B14a: 45° delta plates, indicated flutter speed nearly independent of density; fair within 10 %")]
    public void Indicated_flutter_speed_does_not_depend_on_the_height()
    {
        var delta = FinSet.Trapezoidal(4, 200.Millimetres(), 0.Millimetres(), 200.Millimetres(), 200.Millimetres(), 2.Millimetres(),
            0.Millimetres());
        var drawn = delta with { Planform = new PolygonPlanform(delta.Planform.Corners) };
        (double Pascals, double Kelvins)[] heights = [(101325, 288.15), (89876.3, 281.651), (54048.3, 255.6755), (22700, 216.7735),
            (12111.8, 216.65), (3200, 220)];
        var indicated = heights.Select(h =>
        {
            var air = new AirConditions(AbsolutePressure.FromPascals(h.Pascals), h.Kelvins.Kelvins());
            var speed = drawn.Flutter(Pressure.FromGigapascals(5), 50.MetresPerSecond(), air).FlutterSpeed;
            return speed.MetersPerSecond * Math.Sqrt(air.Density.KilogramsPerCubicMeter / 1.225);
        }).ToArray();
        Assert.All(indicated, v => Tolerance.Relative(indicated[0], v, 0.10));
        // True speed, of which a pilot knows nothing, grows sixfold meanwhile.
        Assert.True(delta.Flutter(Pressure.FromGigapascals(5), 50.MetresPerSecond(),
            new AirConditions(AbsolutePressure.FromPascals(3200), 220.Kelvins())).FlutterSpeed
            > 4 * delta.Flutter(Pressure.FromGigapascals(5), 50.MetresPerSecond()).FlutterSpeed);
    }

    [Fact]
    [PublishedCase("F23", "E. C. Yates, NASA TM-100492, 1987: the criterion is up to 55 % too high near Mach 1")]
    public void Nothing_passes_above_Mach_point_eight()
    {
        var thick = Fins(8).Flutter(Pressure.FromGigapascals(30), 285.MetresPerSecond());
        Assert.True(thick.Margin > 10);
        Assert.False(thick.Holds);
        Assert.Contains(thick.Findings, f => f.Message.Contains("no flutter pass", StringComparison.Ordinal));
    }

    [Theory]
    [PublishedCase("F25", "R. L. Bisplinghoff, H. Ashley, R. L. Halfman, Aeroelasticity, 1955, ch. 8; checked by finite elements")]
    [InlineData(80, 80, 2.094395, 92038.8)]
    [InlineData(100, 60, 2.094395, 123828)]
    public void Divergence(double root, double tip, double liftSlope, double expected)
    {
        var strips = new TrapezoidPlanform(root.Millimetres(), tip.Millimetres(), 60.Millimetres(), Length.Zero).Strips;
        var pressure = FinAeroelasticity.DivergencePa(strips, 1.5e-3, 5e9, liftSlope);
        Tolerance.Relative(expected, pressure, 3e-5);
    }

    [Theory]
    [PublishedCase("F25", "R. L. Bisplinghoff, H. Ashley, R. L. Halfman, Aeroelasticity, 1955, ch. 8")]
    [InlineData(2.094395, 449.63)]
    [InlineData(2 * Math.PI, 259.59)]
    public void Divergence_speed(double liftSlope, double expected)
    {
        var pressure = FinAeroelasticity.DivergencePa(Fins().Planform.Strips, 1.5e-3, 5e9, liftSlope);
        Tolerance.Relative(expected, Math.Sqrt(2 * pressure / 1.225), 3e-5);
    }

    [Theory]
    [PublishedCase("F26", "R. M. Jones, Mechanics of Composite Materials, reduced stiffness of a turned ply; worked independently")]
    [InlineData(135, 10, 5, 0.3, new double[] { 0, 90 }, 5.000)]
    [InlineData(135, 10, 5, 0.3, new double[] { 45, -45 }, 34.983)]
    [InlineData(135, 10, 5, 0.3, new double[] { 0, 45, -45, 90 }, 19.992)]
    [InlineData(65, 65, 4.5, 0.05, new double[] { 0 }, 4.500)]
    [InlineData(65, 65, 4.5, 0.05, new double[] { 45 }, 30.952)]
    [InlineData(65, 65, 4.5, 0.05, new double[] { 0, 45 }, 17.726)]
    public void Shear_modulus_of_a_layup(double e1, double e2, double shear, double poisson, double[] angles, double expected)
    {
        var layup = new SheetLayup(angles.Select(a => new SheetPly(
            Pressure.FromGigapascals(e1), Pressure.FromGigapascals(e2), Pressure.FromGigapascals(shear), poisson, a.Degrees(),
                0.25.Millimetres())).ToArray());
        Tolerance.Absolute(expected, layup.ShearModulus.Gigapascals, 6e-4);
    }

    // "A 0/90 face fabric on a ±45 core behaves close to 0/90": with faces of a quarter of the thickness each, 1 - (1/2)³ = 7/8 of the
    // twisting stiffness comes from the faces.
    [Fact]
    [PublishedCase("F26", "R. M. Jones, Mechanics of Composite Materials, D66")]
    public void Outer_plies_rule_the_twisting()
    {
        var layup = new SheetLayup([Cloth(0), Cloth(45), Cloth(45), Cloth(0)]);
        Tolerance.Relative((7.0 / 8 * 4.5) + (30.952 / 8), layup.TorsionModulus.Gigapascals, 1e-4);
        Tolerance.Relative(17.726, layup.ShearModulus.Gigapascals, 1e-4);

        static SheetPly Cloth(double degrees) => new(
            Pressure.FromGigapascals(65), Pressure.FromGigapascals(65), Pressure.FromGigapascals(4.5), 0.05, degrees.Degrees(),
                0.25.Millimetres());
    }
}
