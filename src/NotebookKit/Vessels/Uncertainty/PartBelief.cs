using NotebookKit.Quantities;

namespace NotebookKit.Vessels.Uncertainty;

/// <summary>What is believed of one part of the vessel in hand after the tests.</summary>
/// <remarks>Source: as <see cref="PartEvidence"/>; basis values by their definition in MIL-HDBK-17-1F, ch. 8, of a belief instead of a
/// sample.</remarks>
public sealed record PartBelief
{
    private readonly PartPosterior _belief;

    internal PartBelief(PredictedPart part, PartPosterior belief, IReadOnlyList<PartTest> tests)
    {
        Part = part;
        Bursts = tests.Count(t => t.HasFailed(part));
        Held = tests.Count(t => t.Parts.Any(p => p.Is(part.Name))) - Bursts;
        _belief = belief;
        BBasis = At(belief.LowLogPoint(0.10, 0.95));
    }

    /// <summary>The part, as predicted.</summary>
    public PredictedPart Part { get; }

    /// <summary>How many tests it ended.</summary>
    public int Bursts { get; }

    /// <summary>How many tests it held.</summary>
    public int Held { get; }

    /// <summary>Mean of the belief in the ratio of actual over predicted strength, of the middle vessel [-].</summary>
    public double Ratio => _belief.MeanRatio;

    /// <summary>Ratio that one in twenty of the belief lies below [-].</summary>
    public double RatioLow => _belief.RatioAt(0.05);

    /// <summary>Ratio that one in twenty of the belief lies above [-].</summary>
    public double RatioHigh => _belief.RatioAt(0.95);

    /// <summary>Mean of the belief in the scatter from vessel to vessel, standard deviation of the strength's logarithm [-].</summary>
    public double Scatter => _belief.MeanScatter;

    /// <summary>Scatter that one in twenty of the belief lies below [-].</summary>
    public double ScatterLow => _belief.ScatterAt(0.05);

    /// <summary>Scatter that one in twenty of the belief lies above [-].</summary>
    public double ScatterHigh => _belief.ScatterAt(0.95);

    /// <summary>Pressure at which the part of the next vessel is as likely to have given way as not.</summary>
    public GaugePressure Next => At(_belief.NextLogQuantile(0.50));

    /// <summary>Pressure at which the part of the next vessel has given way with a chance of one in a hundred: scatter and what isn't
    /// known, together.</summary>
    public GaugePressure NextLow => At(_belief.NextLogQuantile(0.01));

    /// <summary>B-basis: nine such parts in ten are stronger, with 95 % confidence. Source: definition in MIL-HDBK-17-1F, ch. 8.</summary>
    public GaugePressure BBasis { get; }

    /// <summary>A-basis: ninety-nine in a hundred are stronger, with 95 % confidence. Source: definition in MIL-HDBK-17-1F, ch.
    /// 8.</summary>
    public GaugePressure ABasis => At(_belief.LowLogPoint(0.01, 0.95));

    private GaugePressure At(double logRatio) => GaugePressure.FromPascals(Part.Burst.Pascals * Math.Exp(logRatio));
}
