using System.Diagnostics;
using System.Globalization;
using System.Text.Json;
using NotebookKit.Quantities;

namespace NotebookKit.Benchmarks.Flight;

/// <summary>Times one vertical flight for a comparison with another integrator on the same machine: see tests/side-by-side.</summary>
internal static class SideBySide
{
    public static void Run()
    {
        var flight = new VerticalFlight(
            new Charge(new Chamber(2.5.Litres(), 95.Millimetres(), 40.BarGauge()), 32.Percent(), 35.BarGauge(), 293.15.Kelvins()),
            new Nozzle(13.Millimetres()), 1.05.Kilograms(), DragCurve.Constant(0.33, 95.Millimetres()),
            new LaunchSite("sea level", 0.Metres(), Atmosphere.LinearLapse)) { Flow = FlowModel.Plain };
        var tables = FiringTables.None;
        var peak = flight.PeakUnchecked(tables);

        // Many short rounds, the best of the last half: on a busy machine a short round has a chance of not being interrupted.
        const int rounds = 4000, flights = 40;
        var best = double.PositiveInfinity;
        for (var round = 0; round < rounds; round++)
        {
            var start = Stopwatch.GetTimestamp();
            for (var i = 0; i < flights; i++) peak = flight.PeakUnchecked(tables);
            var microseconds = Stopwatch.GetElapsedTime(start).TotalMicroseconds / flights;
            if (round >= rounds / 2) best = Math.Min(best, microseconds);
        }

        // The library's own line comes last: vertical_flight.py reads that.
        if (CompiledTwin.Run() is { } twin)
        {
            var microseconds = JsonDocument.Parse(twin).RootElement.GetProperty("microseconds").GetDouble();
            Console.WriteLine(string.Create(CultureInfo.InvariantCulture,
                $"C++ {twin}; the library takes {best / microseconds:F2} times as long"));
        }

        Console.WriteLine(string.Create(CultureInfo.InvariantCulture,
            $"{{\"apogee\": {peak.ApogeeMetres:R}, \"time\": {peak.ApogeeSeconds:R}, \"evaluations\": {peak.Evaluations}, "
                + $"\"microseconds\": {best:F3}}}"));
    }
}
