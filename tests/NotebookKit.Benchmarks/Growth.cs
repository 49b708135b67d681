using System.Diagnostics;
using System.Globalization;
using System.Runtime.CompilerServices;
using System.Text;
using NotebookKit.Benchmarks.Flight;
using NotebookKit.Benchmarks.Vessels;
using NotebookKit.Flight.Dispersion;
using NotebookKit.Quantities;

namespace NotebookKit.Benchmarks;

/// <summary>How time and memory grow with the size of the question: each at four sizes, the best of three rounds, and the slope of the
/// straight line through log time over log size: 1 doubles with the size, 2 is four times.</summary>
internal static class Growth
{
    private const int Rounds = 3;

    private static readonly (string What, string Of, int[] Sizes, Func<int, object> Do)[] Questions =
    [
        ("flights in three degrees of freedom", "flights", [1000, 2000, 4000, 8000],
            n => BenchmarkVehicle.Trainer.Disperse(BenchmarkVehicle.Site, new Spread(), n, 1)),
        ("one part in n of n thousand flights", "parts", [1, 2, 4, 8], n => Part(1000 * n, n)),
        ("sampled bursts", "samples", [5000, 10_000, 20_000, 40_000], n => VesselBenchmarks.Sampled(n)),
        ("belief of eight parts after tests", "tests", [10, 20, 40, 80], n => PartEvidenceBenchmarks.Learned(n)),
        ("fins on a sheet", "fins", [4, 8, 16, 32], n => new SheetNest(1.2.Metres(), 0.9.Metres(), [Fin(n)]).Place()),
        ("map of flights", "cells", [15 * 15, 30 * 30, 60 * 60, 120 * 120],
            n => FlightMapBenchmarks.Map((int)Math.Sqrt(n))),
    ];

    /// <summary>Measures all and writes a table.</summary>
    /// <param name="file">Where to; none writes to the console alone.</param>
    public static void Run(string? file)
    {
        var page = new StringBuilder(FormattableString.Invariant($"""
            # Growth with size

            Best of {Rounds} rounds on {Environment.ProcessorCount} cores. The slope is that of log time over log size by least squares: 1 doubles with
            the size, 2 is four times. "Kept" is what lives on after a collection, the answer itself.

            | what | sizes | time | slope of time | kept | slope of what is kept |
            |---|---|---|---|---|---|

            """));
        foreach (var (what, of, sizes, act) in Questions)
        {
            Kept(() => act(sizes[0]));
            var measured = sizes.Select(n => (Milliseconds: Time(() => act(n)), KeptKilobytes: Kept(() => act(n)))).ToList();
            page.AppendLine(CultureInfo.InvariantCulture, $"| {what} | {string.Join(", ", sizes.Select(n => Text(n)))} {of} | "
                + $"{string.Join(", ", measured.Select(m => $"{m.Milliseconds:G3}"))} ms | "
                + $"{Slope(sizes, measured.Select(m => m.Milliseconds)):F2} | "
                + $"{string.Join(", ", measured.Select(m => $"{m.KeptKilobytes:G3}"))} kB | "
                + $"{Slope(sizes, measured.Select(m => m.KeptKilobytes)):F2} |");
            Console.WriteLine(what);
        }

        Console.WriteLine(page.ToString());
        if (file is not null) File.WriteAllText(file, page.ToString());
    }

    /// <summary>Flies a hundred thousand and a million in three degrees of freedom, none of which is kept, and says what memory that
    /// took.</summary>
    public static void Million()
    {
        foreach (var flights in (ReadOnlySpan<int>)[100_000, 1_000_000])
        {
            var clock = Stopwatch.StartNew();
            var flown = BenchmarkVehicle.Trainer.DisperseMany(BenchmarkVehicle.Site, new Spread(), flights, 1);
            var (seconds, kept) = (clock.Elapsed.TotalSeconds, GC.GetTotalMemory(forceFullCollection: true));
            using var process = Process.GetCurrentProcess();
            var (middle, east) = (flown.Apogee.Quantile(0.5), flown.Landings!.MeanEast.Meters);
            Console.WriteLine(string.Create(CultureInfo.InvariantCulture,
                $"{Text(flights)} flights: {seconds:F1} s, {process.TotalProcessorTime.TotalSeconds:F0} s of processors so far, "
                + $"{kept / 1e6:F1} MB kept, {process.PeakWorkingSet64 / 1e6:F0} MB at most in memory; middle apogee {middle.Value:F3} m "
                + $"± {middle.Error:F3} m by the bins, mean {flown.Apogee.Mean:F4} m, mean landing {east:F3} m east"));
        }
    }

    private static DispersionResult Part(int flights, int of, int number = 1)
    {
        var batch = new Only(new(number, of));
        return BenchmarkVehicle.Trainer.Disperse(BenchmarkVehicle.Site, new Spread(), flights, 1, batch: batch);
    }

    private static SheetPiece Fin(int count) => new("fin", [.. new[] { (0, 0), (60, 85), (130, 85), (130, 0) }
        .Select(p => new SheetPoint(p.Item1.Millimetres(), p.Item2.Millimetres()))], count);

    private static double Time(Func<object> act)
    {
        var best = double.PositiveInfinity;
        for (var round = 0; round < Rounds; round++)
        {
            var clock = Stopwatch.StartNew();
            act();
            best = Math.Min(best, clock.Elapsed.TotalMilliseconds);
        }

        return best;
    }

    // In a frame of its own, so that no earlier answer still stands in a local.
    [MethodImpl(MethodImplOptions.NoInlining)]
    private static double Kept(Func<object> act)
    {
        var before = GC.GetTotalMemory(forceFullCollection: true);
        var answer = act();
        var kept = GC.GetTotalMemory(forceFullCollection: true) - before;
        GC.KeepAlive(answer);
        return Math.Max(1, kept) / 1e3;
    }

    private static double Slope(IReadOnlyList<int> sizes, IEnumerable<double> values)
    {
        double[] x = [.. sizes.Select(n => Math.Log(n))], y = [.. values.Select(v => Math.Log(v))];
        double mx = x.Average(), my = y.Average();
        return x.Zip(y).Sum(p => (p.First - mx) * (p.Second - my)) / x.Sum(v => (v - mx) * (v - mx));
    }

    private static string Text(int n) => n.ToString("N0", CultureInfo.InvariantCulture).Replace(',', ' ');

    private sealed class Only(ShardNumber part) : IDispersionBatch
    {
        public ShardNumber Part => part;

        public DispersionShard? Find(DispersionPlan plan) => null;

        public void Keep(DispersionShard shard)
        {
        }
    }
}
