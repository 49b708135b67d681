namespace NotebookKit.Numerics.Functions;

/// <summary>
/// Counts of numbers in bins of one width, with one bin more at either end for what lies beyond: quantiles of any number of values in the
/// memory of the bins. Counts add up to the same in any order and on any number of threads.
/// </summary>
internal sealed class BinCounts
{
    private const int Bins = 4096;

    private readonly double _low;
    private readonly double _perBin;
    private readonly long[] _counts = new long[Bins + 2];

    /// <summary>Bins over a first look at the values, and as far again to both sides of them.</summary>
    /// <param name="low">Least of them.</param>
    /// <param name="high">Greatest of them.</param>
    public BinCounts(double low, double high)
    {
        var reach = Math.Max(high - low, 1e-9 * Math.Max(1, Math.Max(Math.Abs(low), Math.Abs(high))));
        if (!double.IsFinite(reach)) (low, reach) = (0, 1);
        _low = low - reach;
        Width = 3 * reach / Bins;
        _perBin = 1 / Width;
    }

    /// <summary>Width of a bin.</summary>
    public double Width { get; }

    /// <summary>Counts a number; from any thread.</summary>
    public void Add(double value) => Interlocked.Increment(ref _counts[Bin(value)]);

    /// <summary>
    /// Quantile of what was counted, by linear interpolation between neighbours in rank (definition 7 of Hyndman and Fan), and how far it
    /// may be from the one of the numbers themselves: the bins of both neighbours are known, and the quantile lies as far within them.
    /// </summary>
    /// <param name="share">Share that lies below [-]; 0 to 1.</param>
    /// <param name="least">Least number counted.</param>
    /// <param name="greatest">Greatest number counted.</param>
    public (double Value, double Error) Quantile(double share, double least, double greatest)
    {
        var rank = share * (_counts.Sum() - 1);
        var first = (long)Math.Floor(rank);
        var part = rank - first;
        var (low, high) = At(first, least, greatest);
        var (nextLow, nextHigh) = part > 0 ? At(first + 1, least, greatest) : (low, high);
        var (from, to) = (low + (part * (nextLow - low)), high + (part * (nextHigh - high)));
        return ((from + to) / 2, (to - from) / 2 * (1 + 1e-9));
    }

    /// <summary>Between what the number of a rank lies, the least of rank 0.</summary>
    private (double Low, double High) At(long rank, double least, double greatest)
    {
        var bin = 0;
        for (var below = _counts[0]; below <= rank; below += _counts[bin]) bin++;
        var low = bin == 0 ? least : _low + ((bin - 1) * Width);
        var high = bin == Bins + 1 ? greatest : _low + (bin * Width);
        return (Math.Max(low, least), Math.Min(high, greatest));
    }

    private int Bin(double value)
    {
        var position = (value - _low) * _perBin;
        return position < 0 ? 0 : position >= Bins ? Bins + 1 : 1 + (int)position;
    }
}
