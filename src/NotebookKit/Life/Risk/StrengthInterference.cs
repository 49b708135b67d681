using NotebookKit.Provenance;
using NotebookKit.Quantities;

namespace NotebookKit.Life.Risk;

/// <summary>Strength that scatters against a load that scatters.</summary>
/// <param name="Strength">Mean burst pressure; above 0 to 10 000 bar gauge.</param>
/// <param name="StrengthSpread">Its coefficient of variation [-]; 0 to 0.6.</param>
/// <param name="Load">Mean of the maximum pressure of a fill; above 0 to 10 000 bar gauge.</param>
/// <param name="LoadSpread">Its coefficient of variation [-]; 0 to 0.6.</param>
/// <remarks>Source: M. H. Faber, lecture notes (normal, author unverified); J. L. Withiam and others, 1997 (lognormal).</remarks>
public sealed record StrengthInterference(GaugePressure Strength, double StrengthSpread, GaugePressure Load, double LoadSpread)
{
    /// <summary>Everything that is wrong with it.</summary>
    public IReadOnlyList<Finding> Validate() =>
        [.. new[]
        {
            Pressures.Find(Strength, "mean burst pressure", "Check bar against psi."),
            Pressures.Find(Load, "mean pressure of a fill", "Check bar against psi."),
            Spreads.Find(StrengthSpread, "spread of the burst pressure", "It is the coefficient of variation, 0.1 for 10 %."),
            Spreads.Find(LoadSpread, "spread of the fill pressure", "It is the coefficient of variation, 0.05 for 5 %."),
            StrengthSpread == 0 && LoadSpread == 0 ? LifeFindings.NeitherStrengthNorLoadScatters() : null,
        }.OfType<Finding>()];

    /// <summary>Both normal: β = (μR − μS)/√(σR² + σS²). Source: M. H. Faber, lecture notes.</summary>
    /// <exception cref="InvalidDesignException">A value is out of range.</exception>
    public InterferenceResult Normal()
    {
        Check();
        double r = StrengthSpread * Strength.Bar, s = LoadSpread * Load.Bar;
        return new InterferenceResult(this, "normal", new((Strength.Bar - Load.Bar) / Math.Sqrt(r * r + s * s)));
    }

    /// <summary>Both lognormal: β = ln[(R/S) √((1 + Vs²)/(1 + Vr²))]/√ln[(1 + Vr²)(1 + Vs²)]. Source: Withiam and others 1997.</summary>
    /// <exception cref="InvalidDesignException">A value is out of range.</exception>
    public InterferenceResult Lognormal()
    {
        Check();
        double r = 1 + StrengthSpread * StrengthSpread, s = 1 + LoadSpread * LoadSpread;
        return new InterferenceResult(this, "lognormal", new(Math.Log(Strength / Load * Math.Sqrt(s / r)) / Math.Sqrt(Math.Log(r * s))));
    }

    private static ValidRange<GaugePressure> Pressures => new(0.01.BarGauge(), 10_000.BarGauge());

    private static ValidRange<double> Spreads => new(0, 0.6);

    private void Check() => InvalidDesignException.ThrowIfAny("Strength against load", Validate());
}
