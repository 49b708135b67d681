using MathNet.Numerics.Statistics;
using NotebookKit.Numerics.Functions;
using NotebookKit.Provenance;
using NotebookKit.Quantities;

namespace NotebookKit.Flight.Dispersion;

/// <summary>One input or output over all flights of a dispersion that keeps no flight. Source: see
/// <see cref="DispersionSummary.Model"/>.</summary>
public sealed record ColumnSummary
{
    private static readonly ValidRange<double> Shares = new(0, 1);

    private readonly BinCounts _bins;

    internal ColumnSummary(string name, string unit, RunningStatistics moments, BinCounts bins)
    {
        (Name, Unit, _bins) = (name, unit, bins);
        (Count, Mean, Variance, Minimum, Maximum) = (moments.Count, moments.Mean, moments.Variance, moments.Minimum, moments.Maximum);
    }

    /// <summary>What it is.</summary>
    public string Name { get; }

    /// <summary>Its unit; "-" for a plain number.</summary>
    public string Unit { get; }

    /// <summary>Flights that have it; 0 or more.</summary>
    public long Count { get; }

    /// <summary>Mean [the column's unit]; NaN where no flight has it.</summary>
    public double Mean { get; }

    /// <summary>Variance, n − 1 in the denominator [square of the column's unit]; 0 or above, NaN below two flights.</summary>
    public double Variance { get; }

    /// <summary>Standard deviation [the column's unit]; 0 or above, NaN below two flights.</summary>
    public double Deviation => Math.Sqrt(Variance);

    /// <summary>Least of all [the column's unit]; NaN where no flight has it.</summary>
    public double Minimum { get; }

    /// <summary>Greatest of all [the column's unit]; NaN where no flight has it.</summary>
    public double Maximum { get; }

    /// <summary>The number that a share of the flights stays below, from counts in bins, with how far it may be from the flights' own.
    /// Source: R. J. Hyndman, Y. Fan, Am. Stat. 50 (1996) 361, definition 7 (unverified).</summary>
    /// <param name="share">Share of the flights [-]; 0 to 1.</param>
    /// <exception cref="OutOfRangeException">The share is outside.</exception>
    public StatedQuantile Quantile(double share)
    {
        Shares.Check(share, "share of the flights", "A half gives the middle.");
        if (Count == 0) return new(double.NaN, double.NaN);
        var (value, error) = _bins.Quantile(share, Minimum, Maximum);
        return new(value, error);
    }

    /// <summary>For example "Apogee above pad: mean 205.3 m, deviation 6.9 m".</summary>
    public override string ToString() => $"{Name}: mean {Digits.Round(Mean)} {Unit}, deviation {Digits.Round(Deviation)} {Unit}";
}

/// <summary>A quantile from counts in bins.</summary>
/// <param name="Value">The quantile [the column's unit].</param>
/// <param name="Error">How far at most it is from the quantile of the numbers themselves [the column's unit]; 0 or above.</param>
public readonly record struct StatedQuantile(double Value, double Error);
