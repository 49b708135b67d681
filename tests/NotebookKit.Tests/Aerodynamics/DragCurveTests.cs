using NotebookKit.Aerodynamics;
using NotebookKit.Provenance;
using NotebookKit.Quantities;

namespace NotebookKit.Tests.Aerodynamics;

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
    public void A_running_jet_lowers_the_drag()
    {
        var coast = SampleBodies.ThreeFins.DragCurves().Middle;
        var boost = SampleBodies.ThreeFins.DragCurves(jet: 30.Millimetres()).Middle;
        for (var mach = 0.05; mach < 0.9; mach += 0.05) Assert.True(boost.Coefficient(mach) < coast.Coefficient(mach));
    }

    [Fact]
    public void A_constant_stays_constant() =>
        Assert.All(Enumerable.Range(0, 91), i => Assert.Equal(0.45, DragCurve.Constant(0.45, 28.SquareCentimetres()).Coefficient(i / 100.0), 12));

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
        var sum = curve.Coefficient(0.2);
        var before = GC.GetAllocatedBytesForCurrentThread();
        for (var i = 0; i < 1000; i++) sum += curve.Coefficient(i * 0.0009);
        Assert.Equal(before, GC.GetAllocatedBytesForCurrentThread());
        Assert.True(sum > 0);
    }
}
