using MathNet.Numerics.Distributions;
using MathNet.Numerics.Statistics;
using NotebookKit.Provenance;
using NotebookKit.Quantities;
using NotebookKit.Vessels.Uncertainty;
using UnitsNet;
using UnitsNet.Units;

namespace NotebookKit.Life.Damage;

/// <summary>A proof as a sieve: vessels weaker than the proof burst in it and never see a fill.</summary>
/// <param name="Median">Burst that half of the vessels lie below; above 0 to 2000 bar gauge.</param>
/// <param name="Spread">Coefficient of variation of the burst [-]; 0.01 to 0.6.</param>
/// <param name="Proof">Proof pressure; above 0 to 2000 bar gauge.</param>
/// <param name="Fill">Pressure of a fill; above 0 to the proof pressure.</param>
/// <remarks>
/// Lognormal strength; after the proof the vessel keeps a share k of it: p = [F(fill/k) − F(proof)]⁺/(1 − F(proof)). The proof rules a
/// burst out only while k is at least fill over proof. Source: conditional probability.
/// </remarks>
public sealed record ScreeningByProof(GaugePressure Median, double Spread, GaugePressure Proof, GaugePressure Fill)
{
    private static readonly ValidRange<GaugePressure> Pressures = new(0.01.BarGauge(), 2000.BarGauge());

    /// <summary>
    /// A proof of vessels whose bursts were sampled: the median is theirs, the spread that of a lognormal law with the scatter of their
    /// logarithms.
    /// Source: lognormal distribution, method of moments in the logarithm.
    /// </summary>
    /// <param name="bursts">Bursts of vessels made alike.</param>
    /// <param name="proof">Proof pressure; above 0 to 2000 bar gauge.</param>
    /// <param name="fill">Pressure of a fill; above 0 to the proof pressure.</param>
    /// <exception cref="InvalidDesignException">A burst isn't above zero, or a value is out of range.</exception>
    public static ScreeningByProof Of(BurstDistribution bursts, GaugePressure proof, GaugePressure fill)
    {
        ArgumentNullException.ThrowIfNull(bursts);
        return Of(bursts.Bursts.Values, proof, fill);
    }

    /// <summary>Everything that is wrong with it.</summary>
    public IReadOnlyList<Finding> Validate() =>
        [.. new[]
        {
            Pressures.Find(Median, "median burst pressure", "Check bar against psi."),
            new ValidRange<double>(0.01, 0.6).Find(Spread, "spread of the burst pressure",
                "It is the coefficient of variation, 0.1 for 10 %."),
            Pressures.Find(Proof, "proof pressure", "Check bar against psi."),
            Pressures.Find(Fill, "pressure of a fill", "Check bar against psi."),
            Fill > Proof ? LifeFindings.PressureOfFillOutOfRange(Fill, Proof) : null,
        }.OfType<Finding>()];

    /// <summary>Share of new vessels that burst in the proof [-]. Source: lognormal distribution.</summary>
    /// <exception cref="InvalidDesignException">A value is out of range.</exception>
    public double BurstInProof()
    {
        Check();
        return Below(Proof.Bar);
    }

    /// <summary>Chance of bursting in a fill without a proof [-]. Source: lognormal distribution.</summary>
    /// <param name="kept">Share of the strength that is left at the fill; 5 to 100 %.</param>
    /// <exception cref="InvalidDesignException">A value is out of range.</exception>
    /// <exception cref="OutOfRangeException">The share is out of range.</exception>
    public double WithoutProof(Ratio kept)
    {
        Check();
        return Below(Fill.Bar / Kept(kept));
    }

    /// <summary>Chance of bursting in a fill after a passed proof [-]. Source: conditional probability.</summary>
    /// <param name="kept">Share of the strength at the proof that is left at the fill; 5 to 100 %.</param>
    /// <exception cref="InvalidDesignException">A value is out of range.</exception>
    /// <exception cref="OutOfRangeException">The share is out of range.</exception>
    public double AfterProof(Ratio kept)
    {
        Check();
        // The upper tail itself: 1 − F loses digits where few vessels outlast the proof.
        double needed = Fill.Bar / Kept(kept), held = Proof.Bar;
        if (needed <= held) return 0;
        return (Below(needed) - Below(held)) / Above(held);
    }

    /// <summary>Least share of the strength for which the proof still rules a burst out: fill over proof. Source: conditional
    /// probability.</summary>
    /// <exception cref="InvalidDesignException">A value is out of range.</exception>
    public Ratio RulesOutDownTo()
    {
        Check();
        return Ratio.FromPercent(100 * (Fill / Proof));
    }

    /// <summary>Share of the strength at which the chance after a passed proof has come up to a value. Source: conditional probability,
    /// solved.</summary>
    /// <param name="chance">Chance of bursting in a fill [-]; 1e-12 to 0.5.</param>
    /// <exception cref="InvalidDesignException">A value is out of range.</exception>
    /// <exception cref="OutOfRangeException">The chance is out of range.</exception>
    public Ratio KeptWhereChanceIs(double chance)
    {
        Check();
        new ValidRange<double>(1e-12, 0.5).Check(chance, "chance of bursting", "0.000001 is one in a million.");
        // By the upper tail, so that a weak population (proof above the median) keeps its digits.
        var quantile = Median.Bar * Math.Exp(-Sigma * Normal.InvCDF(0, 1, Above(Proof.Bar) * (1 - chance)));
        return Ratio.FromPercent(100 * Fill.Bar / quantile);
    }

    internal static ScreeningByProof Of(IReadOnlyList<double> sortedBar, GaugePressure proof, GaugePressure fill)
    {
        if (sortedBar[0] <= 0)
            InvalidDesignException.ThrowIfAny("Screening by proof", [LifeFindings.LowestBurstSampledOutOfRange(sortedBar[0])]);
        var logs = sortedBar.Select(b => Math.Log(b)).ToArray();
        var median = SortedArrayStatistics.Median([.. sortedBar]);
        ScreeningByProof screening = new(median.BarGauge(), Math.Sqrt(Math.Exp(logs.Variance()) - 1), proof, fill);
        screening.Check();
        return screening;
    }

    internal double Sigma => Math.Sqrt(Math.Log(1 + Spread * Spread));

    private double Below(double bar) => Normal.CDF(0, 1, Math.Log(bar / Median.Bar) / Sigma);

    private double Above(double bar) => Normal.CDF(0, 1, -Math.Log(bar / Median.Bar) / Sigma);

    private static double Kept(Ratio kept) =>
        new ValidRange<Ratio>(5.Percent(), 100.Percent()).Check(kept.ToUnit(RatioUnit.Percent), "share of the strength that is left",
            "A vessel that has lost more is scrap.").DecimalFractions;

    private void Check() => InvalidDesignException.ThrowIfAny("Screening by proof", Validate());
}
