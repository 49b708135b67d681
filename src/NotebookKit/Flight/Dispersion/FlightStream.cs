using NotebookKit.Numerics;
using NotebookKit.Numerics.Functions;

namespace NotebookKit.Flight.Dispersion;

/// <summary>
/// Flies any number of flights and keeps none. Blocks of one length are tallied each by one thread and added up in their order, a group of
/// blocks at a time; what is counted in bins adds up the same in any order. So the answer doesn't depend on the threads, nor the memory on
/// the flights.
/// </summary>
internal sealed class FlightStream(DispersionPlan plan, Action<long, Span<double>> fly)
{
    private const int Block = 256, Group = 64;

    // The first flights are kept until they have shown how far the bins have to reach.
    private const int First = 4 * Block;

    private readonly int _length = DispersionLayout.For(plan.Stages).RowLength;
    private BinCounts[] _bins = [];

    /// <summary>Flies them all.</summary>
    /// <param name="threads">Most threads to use; as many as the machine has where none is given.</param>
    /// <param name="cancellation">Stops it.</param>
    public (FlightTally Tally, IReadOnlyList<BinCounts> Bins) Run(int? threads, CancellationToken cancellation)
    {
        using var run = WorkRun.Begin(cancellation);
        var whole = new FlightTally(plan);
        var first = Math.Min(First, plan.Flights);
        var rows = new double[first * _length];
        Parallel.For(0, first, run.Parallel(threads), i =>
        {
            run.ThrowIfStopped();
            fly(i, rows.AsSpan(i * _length, _length));
        });
        _bins = Bins(rows);
        for (var from = 0; from < first; from += Block)
        {
            var tally = new FlightTally(plan);
            for (var i = from; i < Math.Min(from + Block, first); i++) Take(rows.AsSpan(i * _length, _length), tally);
            whole.Add(tally);
        }

        for (var from = first; from < plan.Flights; from += Group * Block)
        {
            run.Tell(new("flights", from, plan.Flights));
            var tallies = new FlightTally[Math.Min(Group, (plan.Flights - from + Block - 1) / Block)];
            var start = from;
            Parallel.For(0, tallies.Length, run.Parallel(threads), block =>
            {
                var tally = tallies[block] = new FlightTally(plan);
                Span<double> row = stackalloc double[_length];
                var end = Math.Min(start + ((block + 1) * Block), plan.Flights);
                for (var i = start + (block * Block); i < end; i++)
                {
                    run.ThrowIfStopped();
                    fly(i, row);
                    Take(row, tally);
                }
            });
            foreach (var tally in tallies) whole.Add(tally);
        }

        run.Tell(new("flights", plan.Flights, plan.Flights));
        return (whole, _bins);
    }

    private void Take(ReadOnlySpan<double> row, FlightTally tally)
    {
        tally.Add(row);
        for (var i = 0; i < row.Length; i++)
        {
            if (double.IsFinite(row[i])) _bins[i].Add(row[i]);
        }
    }

    private BinCounts[] Bins(double[] rows)
    {
        var bins = new BinCounts[_length];
        for (var column = 0; column < _length; column++)
        {
            var (low, high) = (double.PositiveInfinity, double.NegativeInfinity);
            for (var i = column; i < rows.Length; i += _length)
            {
                if (double.IsFinite(rows[i])) (low, high) = (Math.Min(low, rows[i]), Math.Max(high, rows[i]));
            }

            bins[column] = new(low, high);
        }

        return bins;
    }
}
