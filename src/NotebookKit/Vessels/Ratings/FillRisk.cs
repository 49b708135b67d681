using NotebookKit.Quantities;

namespace NotebookKit.Vessels.Ratings;

/// <summary>The chance that a vessel bursts at a fill, as far as tests and models tell, and what no count of tests can show.</summary>
/// <param name="Pressure">Pressure of the fill.</param>
/// <param name="Chance">Chance that the next vessel of its kind is weaker than that, before its own proof [-].</param>
/// <param name="Tests">Vessels tested.</param>
/// <param name="Failures">How many of them gave way at or below that pressure.</param>
/// <remarks>Source: posterior predictive distribution, Gelman et al., Bayesian Data Analysis, 3rd ed. 2013, §1.3; success-run theorem, as
/// <see cref="Allowables.ZeroFailureTests"/>.</remarks>
public sealed record FillRisk(GaugePressure Pressure, double Chance, int Tests, int Failures)
{
    private const double Confidence = 0.95;

    /// <summary>
    /// Lowest chance that so many vessels alone could show with 95 % confidence, were none of them to fail: 1 − 0.05^(1/n), some 3/n; none
    /// without a test, or where one failed [-]. Source: success-run theorem.
    /// </summary>
    public double? Showable => Tests > 0 && Failures == 0 ? 1 - Math.Pow(1 - Confidence, 1.0 / Tests) : null;

    /// <summary>Fills without a failure that it would take to show the chance with 95 % confidence: ln 0.05 / ln(1 − chance), some 3 over
    /// the chance [-]. Source: success-run theorem.</summary>
    public double FillsToShow => FillsToShowOf(Chance);

    /// <summary>Whether the chance rests on the tail of the model, below what the tests alone could show.</summary>
    public bool RestsOnModel => !(Showable <= Chance);

    /// <summary>For example "1 in 830".</summary>
    public override string ToString() => Of(Chance);

    internal static double FillsToShowOf(double chance) => chance > 0 ? Math.Log(1 - Confidence) / double.LogP1(-chance)
        : double.PositiveInfinity;

    internal static string Of(double chance) => chance < 1e-9 ? "less than 1 in 1 000 000 000"
        : chance > 0.5 ? $"{Digits.Round(100 * chance)} %" : $"1 in {Digits.Round(1 / chance, 2)}";
}
