using BenchmarkDotNet.Attributes;
using NotebookKit.Quantities;

namespace NotebookKit.Benchmarks.Flight;

/// <summary>One vertical flight: water, gas, coast to the top. The budget is 50 µs at a relative tolerance of 1e-6.</summary>
[MemoryDiagnoser]
public class VerticalFlightBenchmarks
{
    private readonly VerticalFlight _flight = new(
        new Charge(new Chamber(2.5.Litres(), 95.Millimetres(), 40.BarGauge()), 32.Percent(), 35.BarGauge(), 293.15.Kelvins()),
        new Nozzle(13.Millimetres()), 1.05.Kilograms(), DragCurve.Constant(0.33, 95.Millimetres()),
        new LaunchSite("sea level", 0.Metres(), Atmosphere.LinearLapse)) { Flow = FlowModel.Plain };

    private VerticalFlight _tabulated = null!;
    private VerticalFlight _builtUp = null!;
    private VerticalFlight _real = null!;
    private VerticalFlight _unsteady = null!;
    private readonly FiringTables _none = FiringTables.None;
    private FiringTables _tables = null!;

    [GlobalSetup]
    public void Setup()
    {
        _real = _flight with { Flow = FlowModel.Real };
        _unsteady = _flight with { Flow = FlowModel.Plain with { Water = WaterFlow.Unsteady } };
        _tables = _real.Tables;
        _builtUp = _flight with { Drag = BenchmarkVehicle.Trainer.Body.DragCurves().Middle };
        _tabulated = _flight with { Drag = DragCurve.From("rising", _flight.Drag.ReferenceArea, m => 0.33 + 0.05 * m * m) };
    }

    /// <summary>The equations alone.</summary>
    [Benchmark(Baseline = true)]
    public double Peak_unchecked() => _flight.PeakUnchecked(_none).ApogeeMetres;

    /// <summary>With drag by table.</summary>
    [Benchmark]
    public double Peak_with_drag_table() => _tabulated.PeakUnchecked(_none).ApogeeMetres;

    /// <summary>With the drag of a build-up, its friction in the air of the height flown.</summary>
    [Benchmark]
    public double Peak_with_drag_by_parts() => _builtUp.PeakUnchecked(_none).ApogeeMetres;

    /// <summary>With real gas, its tables at hand, as a map runs it.</summary>
    [Benchmark]
    public double Peak_with_real_gas() => _real.PeakUnchecked(_tables).ApogeeMetres;

    /// <summary>Making the tables of a real gas.</summary>
    [Benchmark]
    public object Tables_of_real_gas() => _real.Tables;

    /// <summary>With the unsteady jet.</summary>
    [Benchmark]
    public double Peak_with_unsteady_jet() => _unsteady.PeakUnchecked(_none).ApogeeMetres;

    /// <summary>With all inputs checked.</summary>
    [Benchmark]
    public double Peak() => _flight.Peak().ApogeeMetres;

    /// <summary>With all curves at a relative tolerance of 1e-9.</summary>
    [Benchmark]
    public double Fly() => _flight.Fly().Apogee.Meters;
}
