using BenchmarkDotNet.Attributes;
using NotebookKit.Quantities;

namespace NotebookKit.Benchmarks.Aerodynamics;

/// <summary>What a design explorer asks for while it is dragged, and what a flight asks for at every step.</summary>
[MemoryDiagnoser]
public class BodyBenchmarks
{
    private static readonly FinnedBody Body = new(
        [Nose.TangentOgive(210.Millimetres(), 70.Millimetres()), new BodyTube(1.2.Metres(), 70.Millimetres())],
        [FinSet.Trapezoidal(4, 110.Millimetres(), 60.Millimetres(), 75.Millimetres(), 50.Millimetres(), 1.6.Millimetres(), 1.29.Metres())]);

    private static readonly DragCurve Curve = Body.DragCurves().Middle;
    private static readonly AerodynamicNumbers Numbers = new(Body);

    [Benchmark]
    public NormalForceResult CentreOfPressure() => Body.NormalForce(0.2);

    [Benchmark]
    public DragResult DragByParts() => Body.Drag(90.MetresPerSecond());

    [Benchmark]
    public DragCurves DragTables() => Body.DragCurves();

    [Benchmark]
    public double OneDragReading() => Curve.Coefficient(0.234);

    [Benchmark]
    public double OneStepOfTheComponentMethod() => Numbers.At(0.234).Slope;
}
