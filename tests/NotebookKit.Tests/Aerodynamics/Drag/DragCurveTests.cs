using NotebookKit.Provenance;
using NotebookKit.Quantities;
using UnitsNet;

namespace NotebookKit.Tests.Aerodynamics.Drag;

public class DragCurveTests
{
    [Theory]
    [InlineData(20)]
    [InlineData(100)]
    [InlineData(217)]
    [InlineData(300)]
    public void Tables_read_what_the_build_up_gives(double metresPerSecond)
    {
        var result = SampleBodies.ThreeFins.Drag(metresPerSecond.MetresPerSecond());
        var curves = SampleBodies.ThreeFins.DragCurves();
        // The steep start of the friction law leaves the largest error of interpolation at low speed.
        Tolerance.Relative(result.Low, curves.Low.Coefficient(result.Mach), 2e-4);
        Tolerance.Relative(result.Middle, curves.Middle.Coefficient(result.Mach), 2e-4);
        Tolerance.Relative(result.High, curves.High.Coefficient(result.Mach), 2e-4);
    }

    [Fact]
    public void Sharp_leading_edges_are_counted_from_nothing_to_the_rounded_value()
    {
        DragResult With(FinEdge edge) => (SampleBodies.ThreeFins
            with { Fins = [.. SampleBodies.ThreeFins.Fins.Select(f => f with { LeadingEdge = edge })] }).Drag(200.MetresPerSecond());
        DragComponent Edges(DragResult drag) => drag.Components.Single(c => c.Name == "Fin leading edges");
        var (sharp, rounded) = (Edges(With(FinEdge.Sharp)), Edges(With(FinEdge.Rounded)));
        Assert.Equal(0, sharp.Low);
        Assert.True(rounded.High > 0);
        Assert.Equal(rounded.High, sharp.High, 12);
        Assert.Equal(rounded.Low, rounded.High, 12);
    }

    // U.S. Standard Atmosphere 1976, Table I, at 500, 1000, 2000, 5000 and 11 000 m. Interpolation over Mach number leaves 5e-4;
    // 2.5e-3 where slow flight in thin air is read between the table's first rows, where the friction law is steepest.
    [Theory]
    [InlineData(95461.3, 284.9003)]
    [InlineData(89876.3, 281.6510)]
    [InlineData(79501.4, 275.1541)]
    [InlineData(54048.3, 255.6755)]
    [InlineData(22700.0, 216.7735)]
    public void In_thinner_air_they_read_what_the_build_up_gives_there(double pascals, double kelvin)
    {
        var air = new AirConditions(AbsolutePressure.FromPascals(pascals), Temperature.FromKelvins(kelvin));
        var curves = SampleBodies.ThreeFins.DragCurves();
        foreach (var mach in new[] { 0.05, 0.1, 0.2, 0.35, 0.6, 0.85 })
        {
            var tolerance = pascals < 30_000 || mach < 0.1 ? 2.5e-3 : 5e-4;
            var result = SampleBodies.ThreeFins.Drag(mach * air.SpeedOfSound, air);
            Tolerance.Relative(result.Low, curves.Low.Coefficient(mach, air), tolerance);
            Tolerance.Relative(result.Middle, curves.Middle.Coefficient(mach, air), tolerance);
            Tolerance.Relative(result.High, curves.High.Coefficient(mach, air), tolerance);
        }
    }

    // By hand for a smooth turbulent body without base: friction goes as (log10 Re)^-2.58, and Re at one Mach number as p (T + 110.4) / T².
    [Fact]
    public void Friction_grows_as_its_law_says()
    {
        var body = new FinnedBody([SampleBodies.ThreeFins.Parts[0], new BodyTube(1.56.Metres(), 60.Millimetres())], []);
        var curve = body.DragCurves(assumptions: DragAssumptions.SmoothTurbulent, jet: 60.Millimetres()).Middle;
        var air = new AirConditions(AbsolutePressure.FromPascals(79501.4), Temperature.FromKelvins(275.1541));
        var share = 79501.4 / 101325 * (275.1541 + 110.4) / (288.15 + 110.4) * Math.Pow(288.15 / 275.1541, 2);
        var reynolds = 0.3 * 340.294 * 1.225 * 1.8 / 1.78938e-5;
        Tolerance.Relative(Math.Pow(Math.Log10(reynolds) / Math.Log10(reynolds * share), 2.58),
            curve.Coefficient(0.3, air) / curve.Coefficient(0.3), 1e-5);
    }

    [Fact]
    public void A_curve_without_friction_of_its_own_is_the_same_in_any_air()
    {
        var curve = DragCurve.Constant(0.45, 28.SquareCentimetres());
        Assert.Equal(0.45, curve.Coefficient(0.3, new AirConditions(AbsolutePressure.FromPascals(54048.3), (-17.5).Celsius())), 12);
        Assert.Throws<ArgumentNullException>(() => curve.Coefficient(0.3, null!));
        Assert.Throws<OutOfRangeException>(() => curve.Coefficient(double.NaN, AirConditions.SeaLevel));
    }

    [Fact]
    public void A_factor_from_a_flight_acts_at_every_height()
    {
        var (curve, air) = (SampleBodies.ThreeFins.DragCurves().Middle,
            new AirConditions(AbsolutePressure.FromPascals(89876.3), 8.5.Celsius()));
        Tolerance.Relative(1.1 * curve.Coefficient(0.3, air), curve.Times(1.1).Coefficient(0.3, air), 1e-12);
    }

    [Fact]
    public void A_running_jet_lowers_the_drag()
    {
        var coast = SampleBodies.ThreeFins.DragCurves().Middle;
        var boost = SampleBodies.ThreeFins.DragCurves(jet: 30.Millimetres()).Middle;
        for (var mach = 0.05; mach < 0.9; mach += 0.05) Assert.True(boost.Coefficient(mach) < coast.Coefficient(mach));
    }

    [Fact]
    public void A_constant_stays_constant() =>
        Assert.All(Enumerable.Range(0, 91), i => Assert.Equal(0.45,
            DragCurve.Constant(0.45, 28.SquareCentimetres()).Coefficient(i / 100.0), 12));

    [Theory]
    [InlineData(-0.01)]
    [InlineData(0.91)]
    [InlineData(double.NaN)]
    public void Reading_beyond_the_table_is_refused(double mach)
    {
        var error = Assert.Throws<OutOfRangeException>(() => DragCurve.Constant(0.45, 28.SquareCentimetres()).Coefficient(mach));
        Assert.Contains("0.9", error.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Reading_allocates_nothing()
    {
        var curve = SampleBodies.ThreeFins.DragCurves().Middle;
        var air = new AirConditions(AbsolutePressure.FromPascals(89876.3), 8.5.Celsius());
        var sum = curve.Coefficient(0.2) + curve.Coefficient(0.2, air);
        var before = GC.GetAllocatedBytesForCurrentThread();
        for (var i = 0; i < 1000; i++) sum += curve.Coefficient(i * 0.0009) + curve.Coefficient(i * 0.0009, air);
        Assert.Equal(before, GC.GetAllocatedBytesForCurrentThread());
        Assert.True(sum > 0);
    }
}
