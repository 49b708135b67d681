using BenchmarkDotNet.Attributes;
using NotebookKit.Quantities;

namespace NotebookKit.Benchmarks.Filling;

/// <summary>What a fill costs by each road, and what a state of real air costs.</summary>
[MemoryDiagnoser]
public class FillBenchmarks
{
    private static readonly PadFill Plain = new()
    {
        Chamber = new Chamber(2.5.Litres(), 66.Millimetres(), 45.BarGauge()),
        Supply = 45.BarGauge(),
        Restrictor = new SonicRestrictor(0.1.LitresPerSecondBar(), 0.35),
        Target = 40.BarGauge(),
        WaterFraction = 32.Percent(),
    };

    private static readonly PadFill WithWall = Plain with { Heat = FillHeat.Wall };
    private static readonly PadFill RealFromCylinder = WithWall
        with { Properties = GasProperties.Real, Cylinder = new("A", 10.Litres(), 200.BarGauge()) };
    private static readonly Vent Abort = new() { Chamber = Plain.Chamber, Restrictor = new Orifice(1.Millimetres(), 0.8),
        From = 40.BarGauge(), WaterFraction = 32.Percent() };

    [Benchmark]
    public FillResult ClosedForms() => Plain.Run();

    [Benchmark]
    public FillResult HeatToTheWall() => WithWall.Run();

    [Benchmark]
    public FillResult RealAirFromACylinder() => RealFromCylinder.Run();

    [Benchmark]
    public VentResult VentThreeWays() => Abort.Run();

    [Benchmark]
    public RealGasState StateOfRealAir() => RealGas.Air.At(60.BarAbsolute(), 293.15.Kelvins());
}
