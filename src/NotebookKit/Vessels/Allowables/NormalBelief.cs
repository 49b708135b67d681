using MathNet.Numerics.Distributions;
using NotebookKit.Provenance;

namespace NotebookKit.Vessels.Allowables;

/// <summary>What is believed of a normal quantity whose mean and scatter are both unknown (normal-inverse-gamma).</summary>
/// <param name="Mean">Middle of the mean [the unit of the data]; any finite value.</param>
/// <param name="EquivalentTests">How many values the belief in the mean is worth, κ [-]; 0 or above, 0 where nothing is known.</param>
/// <param name="Freedom">Degrees of freedom of the belief in the scatter, ν [-]; −1 where nothing is known, else above 0.</param>
/// <param name="Deviation">Standard deviation believed in [the unit of the data]; 0 or above.</param>
/// <remarks>Source: Gelman et al., Bayesian Data Analysis, 3rd ed. 2013, §3.2 (nothing known: 1/σ²) and §3.3 (conjugate prior).</remarks>
public sealed record NormalBelief(double Mean, double EquivalentTests, double Freedom, double Deviation)
{
    /// <summary>Nothing known: density 1/σ² over mean and variance. Source: Gelman et al. 2013, §3.2.</summary>
    public static NormalBelief Jeffreys { get; } = new(0, 0, -1, 0);

    /// <summary>α of the inverse gamma [-]. Source: Gelman et al. 2013, §3.3.</summary>
    public double Alpha => Freedom / 2;

    /// <summary>β of the inverse gamma [square of the data's unit]. Source: Gelman et al. 2013, §3.3.</summary>
    public double Beta => Freedom * Deviation * Deviation / 2;

    /// <summary>All that is wrong with it as a prior.</summary>
    public IReadOnlyList<Finding> Validate()
    {
        var findings = new List<Finding>();
        if (!double.IsFinite(Mean)) findings.Add(VesselsFindings.MeanOfBeliefIsNotFinite());
        var nothing = EquivalentTests == 0 && Freedom == -1 && Deviation == 0;
        if (!nothing && !(EquivalentTests > 0 && Freedom > 0 && Deviation > 0 && double.IsFinite(EquivalentTests * Freedom * Deviation)))
            findings.Add(VesselsFindings.NormalBeliefOutOfRange(EquivalentTests, Freedom, Deviation));
        return findings;
    }

    /// <summary>Belief after values. Source: Gelman et al. 2013, §3.3.</summary>
    /// <param name="values">Values [the unit of the data]; any number, each finite.</param>
    /// <exception cref="InvalidDesignException">The belief isn't valid.</exception>
    /// <exception cref="ArgumentException">A value isn't finite.</exception>
    public NormalBelief Learn(IReadOnlyList<double> values)
    {
        ArgumentNullException.ThrowIfNull(values);
        InvalidDesignException.ThrowIfAny("Belief", Validate());
        if (values.Any(v => !double.IsFinite(v))) throw new ArgumentException("A value isn't a finite number; check the list for a "
            + "missing one.", nameof(values));
        if (values.Count == 0) return this;
        double n = values.Count, mean = values.Average(), squares = values.Sum(v => (v - mean) * (v - mean));
        double worth = EquivalentTests + n, freedom = Freedom + n;
        var sum = Math.Max(Freedom, 0) * Deviation * Deviation + squares
            + (EquivalentTests == 0 ? 0 : EquivalentTests * n / worth * (mean - Mean) * (mean - Mean));
        return new NormalBelief((EquivalentTests * Mean + n * mean) / worth, worth, freedom, freedom > 0 ? Math.Sqrt(sum / freedom) : 0);
    }

    /// <summary>Value that the next one falls below with a chance [the unit of the data]. Source: Gelman et al. 2013, §3.2, Student's
    /// t.</summary>
    /// <param name="chance">Chance [-]; 0.0001 to 0.9999.</param>
    /// <exception cref="OutOfRangeException">The chance is out of range.</exception>
    /// <exception cref="InvalidDesignException">Too little is known for an answer.</exception>
    public double NextQuantile(double chance) => Quantile(chance, Math.Sqrt(1 + 1 / Known().EquivalentTests));

    /// <summary>Chance that the next value lies below one [-]. Source: Gelman et al. 2013, §3.2.</summary>
    /// <param name="value">Value [the unit of the data]; any finite value.</param>
    /// <exception cref="InvalidDesignException">Too little is known for an answer.</exception>
    public double NextBelow(double value) => StudentT.CDF(Mean, Known().Deviation * Math.Sqrt(1 + 1 / EquivalentTests), Freedom, value);

    /// <summary>Mean that a share of the belief lies below [the unit of the data]. Source: Gelman et al. 2013, §3.2.</summary>
    /// <param name="share">Share [-]; 0.0001 to 0.9999.</param>
    /// <exception cref="OutOfRangeException">The share is out of range.</exception>
    /// <exception cref="InvalidDesignException">Too little is known for an answer.</exception>
    public double MeanQuantile(double share) => Quantile(share, Math.Sqrt(1 / Known().EquivalentTests));

    /// <summary>Chance that the mean lies below a value [-]. Source: Gelman et al. 2013, §3.2.</summary>
    /// <param name="value">Value [the unit of the data]; any finite value.</param>
    /// <exception cref="InvalidDesignException">Too little is known for an answer.</exception>
    public double MeanBelow(double value) => StudentT.CDF(Mean, Known().Deviation / Math.Sqrt(EquivalentTests), Freedom, value);

    /// <summary>Standard deviation that a share of the belief lies below [the unit of the data]. Source: Gelman et al. 2013, §3.2, scaled
    /// inverse chi-squared.</summary>
    /// <param name="share">Share [-]; 0.0001 to 0.9999.</param>
    /// <exception cref="OutOfRangeException">The share is out of range.</exception>
    /// <exception cref="InvalidDesignException">Too little is known for an answer.</exception>
    public double DeviationQuantile(double share) =>
        Known().Deviation * Math.Sqrt(Freedom / ChiSquared.InvCDF(Freedom, 1 - Share(share)));

    private double Quantile(double share, double factor) => StudentT.InvCDF(Mean, Deviation * factor, Freedom, Share(share));

    private static double Share(double share) => new ValidRange<double>(0.0001, 0.9999).Check(share, "share", "0.05 is 5 %.");

    private NormalBelief Known()
    {
        if (EquivalentTests > 0 && Freedom > 0 && Deviation > 0) return this;
        throw new InvalidDesignException("Belief", [VesselsFindings.NoPriorNeedsTwoValues()]);
    }
}
