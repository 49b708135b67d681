using NotebookKit.Provenance;
using NotebookKit.Vessels.Design;

namespace NotebookKit.Vessels.Uncertainty;

/// <summary>What is believed of one part before any test: how its actual strength stands to the predicted one, and how far it
/// scatters.</summary>
/// <param name="Ratio">Middle of the ratio of actual over predicted strength [-]; 0.3 to 1.5.</param>
/// <param name="RatioDoubt">Standard deviation of the ratio's logarithm [-]; 0.05 to 0.6.</param>
/// <param name="Scatter">Middle of the scatter from vessel to vessel, standard deviation of the strength's logarithm [-]; 0.04 to
/// 0.4.</param>
/// <param name="ScatterDoubt">Standard deviation of the scatter's logarithm [-]; 0.05 to 1.</param>
/// <remarks>
/// Source: common practice, no source. Middle and doubts of <see cref="Default"/> were chosen by simulated clubs, so that a B-basis lies
/// above the true tenth percentile in no more than one club in twenty, in each kind of club that was tried, with scatters drawn from 6 to
/// 20 %. Where every vessel scatters by 20 % up to 7 bounds in 100 are too high, at 25 % up to 12. Hand-made vessels are said to scatter by
/// 8 to 15 %, which is unverified and not data.
/// </remarks>
public sealed record PartPrior(double Ratio, double RatioDoubt, double Scatter, double ScatterDoubt)
{
    /// <summary>Doubt of the prediction itself, beside that of the making: standard deviation of the logarithm [-]. Common practice, no
    /// source: chosen by simulated clubs.</summary>
    internal const double ModelDoubt = 0.27;

    /// <summary>A part of which nothing is known but its prediction: four fifths of it, nine times in ten within a factor of 1.7, scatter 8
    /// to 34 %.</summary>
    public static PartPrior Default { get; } = new(0.80, 0.32, 0.16, 0.45);

    /// <summary>
    /// A wall made as the fabrication says: its doubt of the efficiency and that of the prediction add up, the scatter is no less than the
    /// default. The default fabrication gives the default prior. Source: variances of independent doubts add up.
    /// </summary>
    /// <param name="fabrication">How well the vessel is made.</param>
    /// <exception cref="InvalidDesignException">The fabrication isn't valid.</exception>
    public static PartPrior Of(Fabrication fabrication)
    {
        ArgumentNullException.ThrowIfNull(fabrication);
        InvalidDesignException.ThrowIfAny("Fabrication", fabrication.Validate());
        // From one in twenty below to one in twenty above: 3.29 standard deviations.
        var making = Math.Log(fabrication.EfficiencyHigh / fabrication.EfficiencyLow) / 3.2897;
        return Default with
        {
            RatioDoubt = Math.Min(Math.Sqrt(making * making + ModelDoubt * ModelDoubt), 0.6),
            Scatter = Math.Max(Default.Scatter, fabrication.VesselSpread),
        };
    }

    /// <summary>All that is wrong with it.</summary>
    public IReadOnlyList<Finding> Validate() =>
    [
        .. new[]
        {
            new ValidRange<double>(0.3, 1.5).Find(Ratio, "ratio of actual over predicted strength", "0.8 is the default."),
            new ValidRange<double>(0.05, 0.6).Find(RatioDoubt, "doubt of the ratio",
                "0.32 is the default, a standard deviation of the logarithm."),
            new ValidRange<double>(0.04, 0.4).Find(Scatter, "scatter from vessel to vessel", "0.16 is the default."),
            new ValidRange<double>(0.05, 1).Find(ScatterDoubt, "doubt of the scatter",
                "0.45 is the default, a standard deviation of the logarithm."),
        }.OfType<Finding>(),
    ];

    /// <summary>Whether a bound on it may be less safe than the simulated clubs have shown: it expects more, doubts less, or scatters less
    /// than the default.</summary>
    internal bool IsBolder => Ratio > Default.Ratio || RatioDoubt < Default.RatioDoubt - 0.01 || Scatter < Default.Scatter
        || ScatterDoubt < Default.ScatterDoubt;
}
