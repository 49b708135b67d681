using BenchmarkDotNet.Attributes;
using NotebookKit.Quantities;

namespace NotebookKit.Benchmarks.Flight;

/// <summary>A map of 60 × 60 flights, and the search for the best fill. The budget of the map is 0.5 s on two cores.</summary>
[MemoryDiagnoser]
public class FlightMapBenchmarks
{
    /// <summary>A map of so many cells along each side.</summary>
    public static FlightMapResult Map(int points) => new FlightMap(new FlightMapBenchmarks()._flight,
        MapAxis.WaterFraction(2.Percent(), 70.Percent(), points), MapAxis.Throat(6.Millimetres(), 24.Millimetres(), points)).Compute();

    private readonly VerticalFlight _flight = new(
        new Charge(new Chamber(2.5.Litres(), 95.Millimetres(), 40.BarGauge()), 32.Percent(), 35.BarGauge(), 293.15.Kelvins()),
        new Nozzle(13.Millimetres()), 1.05.Kilograms(), DragCurve.Constant(0.33, 95.Millimetres()), LaunchSite.SeaLevel);

    /// <summary>Water fraction and throat.</summary>
    [Benchmark]
    public double Map_of_water_and_throat() =>
        new FlightMap(_flight, MapAxis.WaterFraction(2.Percent(), 70.Percent()),
            MapAxis.Throat(6.Millimetres(), 24.Millimetres())).Compute().Apogee[1800];

    /// <summary>Water fraction and pressure.</summary>
    [Benchmark]
    public double Map_of_water_and_pressure() =>
        new FlightMap(_flight, MapAxis.WaterFraction(2.Percent(), 70.Percent()),
            MapAxis.Pressure(5.BarGauge(), 40.BarGauge())).Compute().Apogee[1800];

    /// <summary>Best water fraction.</summary>
    [Benchmark]
    public double Best_fill() => _flight.BestFill().WaterFraction.Percent;

    /// <summary>Best water fraction and throat.</summary>
    [Benchmark]
    public double Best_fill_and_throat() => _flight.BestFill(6.Millimetres(), 24.Millimetres()).Throat.Millimeters;
}
