using NotebookKit.Flight.Site;
using NotebookKit.Numerics;
using NotebookKit.Numerics.Bits;
using NotebookKit.Provenance;
using NotebookKit.Quantities;

namespace NotebookKit.Flight.Dispersion;

/// <summary>Flies the flights of a dispersion, all or a part of them. Every flight depends on the seed and its number alone.</summary>
internal abstract class DispersionRun(string vehicle, LaunchSite site, int flights, ulong seed, bool isSixDegrees, int stages,
    string subject)
{
    private readonly Lock _door = new();
    private DispersionPlan? _plan;

    /// <summary>What it is about.</summary>
    public DispersionPlan Plan
    {
        get
        {
            lock (_door) return _plan ??= new(vehicle, site.Name, flights, seed, isSixDegrees, stages, site.Ceiling?.Meters.Metres(),
                site.Field, Fingerprint(), subject) { IsWindGiven = site.Wind.IsGiven };
        }
    }

    private int RowLength { get; } = DispersionLayout.For(stages).RowLength;

    /// <summary>Everything that is wrong with how much is to be flown.</summary>
    public static IEnumerable<Finding> Validate(int flights, int? threads, int most = 1_000_000)
    {
        if (new ValidRange<int>(2, most).Find(flights, "number of flights",
            "One flight has no scatter; more flights give no further information.") is { } wrong) yield return wrong;
        if (threads is < 1) yield return FlightFindings.NumberOfThreadsOutOfRange(threads);
    }

    /// <summary>Flies what the batch wants of it: everything, one part, or nothing where the flights are there already.</summary>
    public DispersionResult Result(IDispersionBatch? batch, IProgress<int>? progress, int? threads, CancellationToken cancellation)
    {
        if (batch?.Find(Plan) is { } flown)
        {
            return flown.Plan.Fingerprint == Plan.Fingerprint && flown.Part == ShardNumber.Whole ? new(flown)
                : throw new InvalidOperationException(
                $"the flights handed over are shard {flown.Part} of {flown.Plan} ({flown.Plan.Fingerprint}); wanted is the whole of "
                    + $"{Plan} ({Plan.Fingerprint}). Merge the shards again.");
        }

        var shard = Shard(batch?.Part ?? ShardNumber.Whole, progress, threads, cancellation);
        batch?.Keep(shard);
        return new(shard);
    }

    /// <summary>Flies one part.</summary>
    public DispersionShard Shard(ShardNumber part, IProgress<int>? progress, int? threads, CancellationToken cancellation)
    {
        var (first, count) = DispersionShard.Range(flights, part.Number, part.Of);
        return new(Plan, part, Rows(first, count, threads, progress, cancellation));
    }

    /// <summary>Flies all and keeps none.</summary>
    public DispersionSummary Summary(int? threads, CancellationToken cancellation)
    {
        var (tally, bins) = new FlightStream(Plan, Fly).Run(threads, cancellation);
        return new(Plan, tally, bins);
    }

    /// <summary>Flies one and fills its row.</summary>
    protected abstract void Fly(long flight, Span<double> row);

    private double[] Rows(int first, int count, int? threads, IProgress<int>? progress, CancellationToken cancellation)
    {
        var rows = new double[(long)count * RowLength];
        var done = 0;
        var step = Math.Max(1, count / 100);
        // Who brings a listener of his own isn't shown the same twice.
        using var run = WorkRun.Begin(cancellation, progress is null ? null : new Told(progress));
        Parallel.For(0, count, run.Parallel(threads), i =>
        {
            run.ThrowIfStopped();
            Fly(first + i, rows.AsSpan(i * RowLength, RowLength));
            var finished = Interlocked.Increment(ref done);
            if (finished % step == 0 || finished == count) run.Tell(new("flights", finished, count));
        });
        return rows;
    }

    /// <summary>The bits of the first, a middle and the last flight, and of what their landings are judged by.</summary>
    private string Fingerprint()
    {
        var mark = new BitMark();
        Span<double> row = stackalloc double[RowLength];
        foreach (var flight in (ReadOnlySpan<int>)[0, flights / 2, flights - 1])
        {
            Fly(flight, row);
            foreach (var value in row) mark.Add(value);
        }

        foreach (var letter in $"{vehicle}\n{site.Name}\n{flights}\n{seed}") mark.Add((ulong)letter);
        mark.Add(site.Ceiling?.Meters ?? double.NaN);
        if (!site.Wind.IsGiven) mark.Add(double.NaN);
        mark.Add(site.Field?.Radius?.Meters ?? double.NaN);
        foreach (var corner in site.Field?.Corners ?? [])
        {
            mark.Add(corner.East.Meters);
            mark.Add(corner.North.Meters);
        }

        return mark.ToString();
    }

    private sealed class Told(IProgress<int> progress) : IProgress<WorkDone>
    {
        public void Report(WorkDone value) => progress.Report(value.Done);
    }
}
