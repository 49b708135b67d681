using BenchmarkDotNet.Attributes;
using NotebookKit.Aerodynamics;
using NotebookKit.Flight;
using NotebookKit.Propulsion;
using NotebookKit.Quantities;
using NotebookKit.Vessels;

namespace NotebookKit.Benchmarks.Flight;

/// <summary>One vertical flight: water, gas, coast to the top. The budget is 50 µs at a relative tolerance of 1e-6.</summary>
[MemoryDiagnoser]
public class VerticalFlightBenchmarks
{
    private readonly VerticalFlight _flight = new(
        new Charge(new Chamber(2.5.Litres(), 95.Millimetres(), 40.BarGauge()), 32.Percent(), 35.BarGauge(), 293.15.Kelvins()),
        new Nozzle(13.Millimetres()), 1.05.Kilograms(), DragCurve.Constant(0.33, 95.Millimetres()),
        new LaunchSite("sea level", 0.Metres(), Atmosphere.LinearLapse));

    private VerticalFlight _tabulated = null!;

    [GlobalSetup]
    public void Setup() => _tabulated = _flight with { Drag = DragCurve.From("rising", _flight.Drag.ReferenceArea, m => 0.33 + 0.05 * m * m) };

    /// <summary>The equations alone.</summary>
    [Benchmark(Baseline = true)]
    public double Peak_unchecked() => _flight.PeakUnchecked().ApogeeMetres;

    /// <summary>With drag by table.</summary>
    [Benchmark]
    public double Peak_with_drag_table() => _tabulated.PeakUnchecked().ApogeeMetres;

    /// <summary>With all inputs checked.</summary>
    [Benchmark]
    public double Peak() => _flight.Peak().ApogeeMetres;

    /// <summary>With all curves at a relative tolerance of 1e-9.</summary>
    [Benchmark]
    public double Fly() => _flight.Fly().Apogee.Meters;
}
