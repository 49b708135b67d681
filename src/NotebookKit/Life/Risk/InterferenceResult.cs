using NotebookKit.Provenance;
using NotebookKit.Quantities;
using NotebookKit.Vessels.Allowables;

namespace NotebookKit.Life.Risk;

/// <summary>Chance that a load exceeds a strength. Source: see <see cref="Model"/>.</summary>
/// <param name="Input">Strength and load.</param>
/// <param name="Distribution">Name of the distribution: "normal", "lognormal".</param>
/// <param name="Index">Reliability index and chance.</param>
public sealed record InterferenceResult(StrengthInterference Input, string Distribution, ReliabilityIndex Index) : Result
{
    private static readonly ModelCard Card = new(
        "Strength against load",
        ["Strength and load scatter independently, both by the named distribution.",
            "The spreads are known; what is not known of them has to be in them."],
        "Chances rarer than one in a thousand rest on the shape of the assumed distributions.",
        [LifeSources.Interference, LifeSources.LognormalInterference, LifeSources.ReliabilityIndex]);

    // Rarer than this no bench shows it: the number rests on the shape of the tail alone.
    private const double Rare = 1e-3;

    /// <inheritdoc/>
    public override string Title => $"Strength against load, {Distribution}";

    /// <inheritdoc/>
    public override ModelCard Model => Card;

    /// <inheritdoc/>
    public override IReadOnlyList<Caution> Cautions => Provenance.Cautions.ForPressure;

    /// <inheritdoc/>
    public override IReadOnlyList<Finding> Findings => Index.Chance >= Rare
        ? []
        : [LifeFindings.SmallChanceRestsOnTails(Distribution, FewFailureTests.Needed(1e-6, 0, 0.95))];

    /// <inheritdoc/>
    public override IReadOnlyList<ResultLine> Lines =>
    [
        new("Reliability index", Digits.Round(Index.Beta), Distribution),
        new("Chance that the load exceeds the strength", Digits.Round(Index.Chance),
            Index.Chance > 0 ? $"1 in {Digits.Round(1 / Index.Chance, 2)}" : ""),
    ];

    /// <inheritdoc/>
    public override Working Working => new(Title,
    [
        Distribution == "normal"
            ? new("Index", @"\beta = \frac{\mu_R - \mu_S}{\sqrt{\sigma_R^2 + \sigma_S^2}}", Numbers, Digits.Round(Index.Beta),
                LifeSources.Interference)
            : new("Index", @"\beta = \frac{\ln\left[\frac{R}{S}\sqrt{\frac{1 + V_S^2}{1 + V_R^2}}\right]}{\sqrt{\ln[(1 + V_R^2)(1 + "
                + @"V_S^2)]}}", Numbers, Digits.Round(Index.Beta), LifeSources.LognormalInterference),
        new("Chance", @"P = \Phi(-\beta)", $"Φ(−{Digits.Round(Index.Beta)})", Digits.Round(Index.Chance), LifeSources.ReliabilityIndex),
    ]);

    private string Numbers => $"burst {Input.Strength} ± {Digits.Round(100 * Input.StrengthSpread)} %, load {Input.Load} ± "
        + $"{Digits.Round(100 * Input.LoadSpread)} %";
}
