using NotebookKit.Provenance;
using NotebookKit.Quantities;

namespace NotebookKit.Vessels.Allowables;

/// <summary>Basis values of bursts by one distribution.</summary>
/// <param name="Distribution">Name of the distribution: "normal", "Weibull".</param>
/// <param name="Tests">Number of bursts.</param>
/// <param name="Mean">Mean burst.</param>
/// <param name="Spread">Coefficient of variation [-].</param>
/// <param name="BBasis">Nine vessels in ten are stronger, with 95 % confidence.</param>
/// <param name="ABasis">Ninety-nine in a hundred are stronger, with 95 % confidence; none where the tests are too few or too many for the
/// method.</param>
/// <param name="Findings">What has to be said.</param>
/// <param name="Working">How it was worked out.</param>
/// <remarks>Source: MIL-HDBK-17-1F (now CMH-17 Volume 1, ch. 8).</remarks>
public sealed record BasisValue(
    string Distribution, int Tests, GaugePressure Mean, double Spread, GaugePressure BBasis, GaugePressure? ABasis,
        IReadOnlyList<Finding> Findings, Working Working) : Result
{
    private static readonly ModelCard Card = new(
        "Basis values of a few bursts",
        ["The vessels are alike in design and making, and were burst the same way.", "Their bursts follow the named distribution."],
        "Normal from 2 bursts, Weibull from 5. Few bursts give low values: that is the price of not knowing.",
        [AllowableSources.Handbook]);

    /// <inheritdoc/>
    public override IReadOnlyList<Finding> Findings { get; internal init; } = Findings;

    /// <inheritdoc/>
    public override Working Working { get; } = Working;

    /// <inheritdoc/>
    public override string Title => $"Basis values of {Tests} bursts, {Distribution}";

    /// <inheritdoc/>
    public override ModelCard Model => Card;

    /// <inheritdoc/>
    public override IReadOnlyList<Caution> Cautions => Provenance.Cautions.ForPressure;

    /// <inheritdoc/>
    public override IReadOnlyList<ResultLine> Lines =>
    [
        new("Bursts", Tests.ToString(System.Globalization.CultureInfo.InvariantCulture)),
        new("Mean", Mean.ToString(), $"spread {Digits.Round(100 * Spread)} %"),
        new("B-basis", BBasis.ToString(), $"nine in ten are stronger, with 95 % confidence; {Digits.Round(BBasis / Mean)} of the mean"),
        .. ABasis is { } a ? [new ResultLine("A-basis", a.ToString(), "ninety-nine in a hundred are stronger, with 95 % confidence")]
            : Array.Empty<ResultLine>(),
    ];
}
