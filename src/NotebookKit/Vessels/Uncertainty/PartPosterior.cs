using NotebookKit.Numerics;

namespace NotebookKit.Vessels.Uncertainty;

/// <summary>
/// Belief in one part: a weight for every pair of its ratio, actual over predicted strength, and of the scatter from vessel to vessel.
/// Strengths are Weibull: of the usual forms the one with the heaviest low tail, and the one whose scatter and size effect hang together.
/// </summary>
internal sealed class PartPosterior
{
    public const double MinimumScatter = 0.03;
    public const double MaximumScatter = 0.60;

    /// <summary>Standard deviation of a batch's mean about that of all batches, in the logarithm [-]. Common practice, no source.</summary>
    public const double BatchShift = 0.10;

    private const int Ratios = 181;
    private const int Scatters = 25;
    private const int Buckets = 64;
    private const double LowestLog = -2.0;
    private const double HighestLog = 1.0;
    private const double Step = (HighestLog - LowestLog) / (Ratios - 1);

    // The logarithm of a Weibull variable has the standard deviation (π/√6)/m.
    private static readonly double DeviationOfUnit = Math.PI / Math.Sqrt(6);
    private static readonly double MedianOfUnit = Math.Log(Math.Log(2));
    private static readonly double[] Scatter = [.. Enumerable.Range(0,
        Scatters).Select(j => MinimumScatter * Math.Pow(MaximumScatter / MinimumScatter, j / (Scatters - 1.0)))];

    // A search rates thousands of vessels whose ends share this one.
    private static readonly PartPosterior OfDefault = Of(PartPrior.Default);

    private readonly double[] _logs;
    private Shares? _shares;

    private PartPosterior(double[] logs) => _logs = logs;

    /// <summary>Shares of the belief, added up only where somebody asks: most beliefs are steps on the way to another.</summary>
    private Shares All => _shares ??= new Shares(_logs);

    /// <summary>Belief before any test.</summary>
    public static PartPosterior Before(PartPrior prior) => prior == PartPrior.Default ? OfDefault : Of(prior);

    private static PartPosterior Of(PartPrior prior)
    {
        var logs = new double[Ratios * Scatters];
        for (var j = 0; j < Scatters; j++)
        {
            var s = Math.Log(Scatter[j] / prior.Scatter) / prior.ScatterDoubt;
            for (var i = 0; i < Ratios; i++)
            {
                var r = (LowestLog + i * Step - Math.Log(prior.Ratio)) / prior.RatioDoubt;
                logs[j * Ratios + i] = -0.5 * (r * r + s * s);
            }
        }

        return new PartPosterior(logs);
    }

    /// <summary>Nothing believed: where the likelihood of a batch starts.</summary>
    public static PartPosterior Nothing { get; } = new(new double[Ratios * Scatters]);

    /// <summary>This belief and what others have shown, together.</summary>
    public PartPosterior Times(PartPosterior other) => new([.. _logs.Zip(other._logs, (a, b) => a + b)]);

    /// <summary>
    /// What is shown of the mean of all batches by one batch, or of one batch by the mean of all: the ratio may differ by the batch's
    /// shift.
    /// Beyond the grid the likelihood is taken to go on as at its edge.
    /// </summary>
    public PartPosterior Shifted()
    {
        const int reach = (int)(4 * BatchShift / Step) + 1;
        var kernel = new double[2 * reach + 1];
        for (var d = -reach; d <= reach; d++) kernel[d + reach] = Math.Exp(-0.5 * Math.Pow(d * Step / BatchShift, 2));
        var norm = kernel.Sum();
        var largest = _logs.Max();
        var logs = new double[_logs.Length];
        var column = new double[Ratios];
        var run = WorkRun.Current;
        for (var j = 0; j < Scatters; j++)
        {
            run.ThrowIfStopped();
            for (var i = 0; i < Ratios; i++) column[i] = Math.Exp(_logs[j * Ratios + i] - largest);
            for (var i = 0; i < Ratios; i++)
            {
                var sum = 0.0;
                for (var d = -reach; d <= reach; d++) sum += kernel[d + reach] * column[Math.Clamp(i + d, 0, Ratios - 1)];
                logs[j * Ratios + i] = Math.Log(Math.Max(sum / norm, 1e-300));
            }
        }

        return new PartPosterior(logs);
    }

    /// <summary>Belief after one vessel more.</summary>
    /// <param name="logRatio">Logarithm of the pressure over the part's predicted burst [-].</param>
    /// <param name="failed">Whether the part failed there; otherwise it held at least as much.</param>
    /// <param name="logSize">Logarithm of the stressed size of the tested part over that of the part in hand [-].</param>
    /// <remarks>
    /// A smaller part is taken to be stronger by the whole Weibull size effect, a larger one not to be weaker: both keep the belief in the
    /// part in hand low, wherever between nothing and the whole the true effect lies.
    /// </remarks>
    public PartPosterior With(double logRatio, bool failed, double logSize)
    {
        WorkRun.Current.ThrowIfStopped();
        var logs = new double[_logs.Length];
        var stronger = Math.Max(-logSize, 0);
        for (var j = 0; j < Scatters; j++)
        {
            var unit = Scatter[j] / DeviationOfUnit;
            // w falls by one step over the unit from ratio to ratio, so that one exponential serves a whole column.
            var w = (logRatio - LowestLog) / unit - stronger + MedianOfUnit;
            var hazard = Math.Exp(w);
            var fall = Math.Exp(-Step / unit);
            var density = failed ? -Math.Log(unit) : 0;
            for (var i = 0; i < Ratios; i++)
            {
                var k = j * Ratios + i;
                logs[k] = _logs[k] - Math.Min(hazard, 1e6) + density + (failed ? w : 0);
                hazard *= fall;
                w -= Step / unit;
            }
        }

        return new PartPosterior(logs);
    }

    public double MeanRatio => Expected(i => Math.Exp(LowestLog + i * Step));

    public double MeanScatter => Scatter.Select((s, j) => s * (All.Columns[j] - (j == 0 ? 0 : All.Columns[j - 1]))).Sum();

    /// <summary>Ratio that a share of the belief lies below [-].</summary>
    public double RatioAt(double share) => Math.Exp(Solve(x => Below(x, 0), share));

    /// <summary>Scatter that a share of the belief lies below [-].</summary>
    public double ScatterAt(double share)
    {
        var j = 0;
        while (j < Scatters - 1 && All.Columns[j] < share) j++;
        var before = j == 0 ? 0 : All.Columns[j - 1];
        var part = (share - before) / Math.Max(All.Columns[j] - before, 1e-300);
        return Math.Clamp(Scatter[j] * Math.Pow(MaximumScatter / MinimumScatter, (part - 0.5) / (Scatters - 1)), MinimumScatter,
            MaximumScatter);
    }

    /// <summary>Logarithm of the strength ratio that a share of all such parts lies below, said with a confidence.</summary>
    /// <param name="share">Share of the parts that are weaker [-].</param>
    /// <param name="confidence">Chance that the true one lies above [-].</param>
    public double LowLogPoint(double share, double confidence)
    {
        var depth = Depth(share);
        return Solve(x => Below(x, depth), 1 - confidence);
    }

    /// <summary>Logarithm of the strength ratio that the next part falls below with a chance [-].</summary>
    public double NextLogQuantile(double chance) => Solve(x => NextBelow(x, 0), chance);

    /// <summary>Chance that the next part, of a size, falls below a ratio [-].</summary>
    /// <param name="logRatio">Logarithm of the pressure over the predicted burst [-].</param>
    /// <param name="logSize">Logarithm of its stressed size over that of the part in hand [-].</param>
    public double NextBelow(double logRatio, double logSize)
    {
        var cells = All.Cells;
        var stronger = Math.Max(-logSize, 0);
        var sum = 0.0;
        for (var j = 0; j < Scatters; j++)
        {
            var unit = Scatter[j] / DeviationOfUnit;
            var hazard = Math.Exp((logRatio - LowestLog) / unit - stronger + MedianOfUnit);
            var fall = Math.Exp(-Step / unit);
            var before = 0.0;
            for (var i = 0; i < Ratios; i++)
            {
                var at = cells[j * Ratios + i];
                if (at - before > 1e-15) sum += (at - before) * (hazard < 1e-8 ? hazard : 1 - Math.Exp(-hazard));
                before = at;
                hazard *= fall;
            }
        }

        return sum;
    }

    /// <summary>One pair of the belief: logarithm of the median ratio, and unit of the logarithm (one over the Weibull modulus).</summary>
    /// <param name="first">Number from 0 to 1 that chooses the scatter [-].</param>
    /// <param name="second">Number from 0 to 1 that chooses the ratio [-].</param>
    public (double LogRatio, double Unit) Draw(double first, double second)
    {
        var shares = All;
        var j = FirstFrom(shares.Columns, 0, Scatters, first);
        var (column, start) = (shares.Cells, j * Ratios);
        var wanted = second * column[start + Ratios - 1];
        var i = FirstFrom(column, start, Ratios, wanted);
        var before = i == 0 ? 0 : column[start + i - 1];
        var at = column[start + i];
        var part = at > before ? (wanted - before) / (at - before) : 0.5;
        return (LowestLog + (i - 0.5 + part) * Step, Scatter[j] / DeviationOfUnit);
    }

    /// <summary>Many pairs of the belief, as <see cref="Draw(double, double)"/> gives them one by one.</summary>
    /// <param name="first">Numbers from 0 to 1 that choose the scatter [-].</param>
    /// <param name="second">Numbers from 0 to 1 that choose the ratio [-].</param>
    /// <param name="pairs">Where the pairs go; no more than there are numbers.</param>
    public void Draw(double[] first, double[] second, (double LogRatio, double Unit)[] pairs)
    {
        var (columns, cells) = (All.Columns, All.Cells);
        var scatterFrom = Guide(columns, 0, Scatters);
        var ratioFrom = new int[Scatters][];
        for (var d = 0; d < pairs.Length; d++)
        {
            var j = scatterFrom[(int)(first[d] * Buckets)];
            while (j < Scatters - 1 && columns[j] < first[d]) j++;
            var start = j * Ratios;
            var whole = cells[start + Ratios - 1];
            var wanted = second[d] * whole;
            var i = (ratioFrom[j] ??= Guide(cells, start, Ratios))[(int)(second[d] * Buckets)];
            while (i < Ratios - 1 && cells[start + i] < wanted) i++;
            var before = i == 0 ? 0 : cells[start + i - 1];
            var at = cells[start + i];
            var part = at > before ? (wanted - before) / (at - before) : 0.5;
            pairs[d] = (LowestLog + (i - 0.5 + part) * Step, Scatter[j] / DeviationOfUnit);
        }
    }

    // Where to look for the first of some rising values that is no less than each sixty-fourth of the last.
    private static int[] Guide(double[] values, int start, int count)
    {
        var (from, at) = (new int[Buckets + 1], 0);
        for (var b = 0; b <= Buckets; b++)
        {
            // A last bit of the product may lie on the other side.
            var least = b * (1 - 1e-12) / Buckets * values[start + count - 1];
            while (at < count - 1 && values[start + at] < least) at++;
            from[b] = at;
        }

        return from;
    }

    // The first of some rising values that is no less than the wanted one; the last where all are.
    private static int FirstFrom(double[] values, int start, int count, double wanted)
    {
        var (low, left) = (0, count - 1);
        while (left > 0)
        {
            var half = left >> 1;
            if (values[start + low + half] < wanted)
            {
                low += half + 1;
                left -= half + 1;
            }
            else
            {
                left = half;
            }
        }

        return low;
    }

    /// <summary>Logarithm of the hazard (minus the logarithm of the chance to hold) at a pressure, for a drawn pair.</summary>
    /// <param name="logPressure">Logarithm of the pressure over the predicted burst [-].</param>
    /// <param name="drawn">The drawn pair.</param>
    public static double LogHazard(double logPressure, (double LogRatio, double Unit) drawn) => (logPressure - drawn.LogRatio) / drawn.Unit
        + MedianOfUnit;

    /// <summary>Logarithm of the strength ratio of one part of a size, for a drawn pair [-].</summary>
    /// <param name="drawn">The drawn pair.</param>
    /// <param name="chance">Number from 0 to 1: how many in a hundred such parts are weaker [-].</param>
    /// <param name="logSize">Logarithm of its stressed size over that of the part in hand [-].</param>
    public static double LogStrength((double LogRatio, double Unit) drawn, double chance, double logSize) =>
        drawn.LogRatio + drawn.Unit * (Math.Log(-Math.Log(1 - chance)) - MedianOfUnit + Math.Max(-logSize, 0));

    /// <summary>How many units below the median a share lies.</summary>
    private static double Depth(double share) => MedianOfUnit - Math.Log(-Math.Log(1 - share));

    /// <summary>Belief that the median, less so many units of scatter, lies below.</summary>
    private double Below(double x, double depth)
    {
        var sum = 0.0;
        for (var j = 0; j < Scatters; j++)
        {
            var place = (x + depth * Scatter[j] / DeviationOfUnit - LowestLog) / Step + 0.5;
            if (place <= 0) continue;
            var column = j * Ratios;
            if (place >= Ratios)
            {
                sum += All.Cells[column + Ratios - 1];
                continue;
            }

            var i = (int)place;
            var before = i == 0 ? 0 : All.Cells[column + i - 1];
            sum += before + (place - i) * (All.Cells[column + i] - before);
        }

        return sum;
    }

    private double Expected(Func<int, double> value)
    {
        var sum = 0.0;
        for (var j = 0; j < Scatters; j++)
        {
            var before = 0.0;
            for (var i = 0; i < Ratios; i++)
            {
                var at = All.Cells[j * Ratios + i];
                sum += (at - before) * value(i);
                before = at;
            }
        }

        return sum;
    }

    /// <summary>Where a rising share meets a value; six decimals of a logarithm are plenty.</summary>
    // By halving, and its lower end: a share off a grid rises in steps, and the answer errs low.
    private static double Solve(Func<double, double> share, double wanted)
    {
        double low = LowestLog - 4, high = HighestLog + 0.5;
        var run = WorkRun.Current;
        while (high - low > 1e-6)
        {
            run.ThrowIfStopped();
            var middle = 0.5 * (low + high);
            if (share(middle) < wanted) low = middle;
            else high = middle;
        }

        return low;
    }

    /// <summary>Share of the belief below each ratio within a scatter, and below each scatter.</summary>
    private sealed class Shares
    {
        public Shares(double[] logs)
        {
            var largest = logs.Max();
            Cells = new double[logs.Length];
            Columns = new double[Scatters];
            var total = 0.0;
            for (var j = 0; j < Scatters; j++)
            {
                var sum = 0.0;
                for (var i = 0; i < Ratios; i++)
                {
                    var below = logs[j * Ratios + i] - largest;
                    if (below > -40) sum += Math.Exp(below);
                    Cells[j * Ratios + i] = sum;
                }

                total += sum;
                Columns[j] = total;
            }

            for (var k = 0; k < Cells.Length; k++) Cells[k] /= total;
            for (var j = 0; j < Scatters; j++) Columns[j] /= total;
        }

        public double[] Cells { get; }

        public double[] Columns { get; }
    }
}
