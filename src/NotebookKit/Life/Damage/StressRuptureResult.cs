using NotebookKit.Provenance;
using NotebookKit.Quantities;
using UnitsNet;
using UnitsNet.Units;

namespace NotebookKit.Life.Damage;

/// <summary>Life under sustained load. Source: see <see cref="Model"/>.</summary>
/// <param name="Parameters">Parameters with their source.</param>
/// <param name="Stress">Stress over the characteristic short-time strength.</param>
/// <param name="Reliability">Reliability at the end of the life [-].</param>
/// <param name="ByFormula">What the formula gives.</param>
/// <param name="AtMost">Limit of the time at pressure.</param>
public sealed record StressRuptureResult(StressRuptureParameters Parameters, Ratio Stress, double Reliability, Duration ByFormula,
    Duration AtMost) : Result
{
    private static readonly ModelCard Card = new(
        "Stress rupture, power law and Weibull",
        [
            "The strength that the stress is counted by is the characteristic one of the very vessel type, fibre and resin, at the same "
                + "temperature.",
            "Time at each load adds up, whatever the order; damage, heat and moisture are left out.",
            "Parameters without a published source may shorten a life and never lengthen it.",
        ],
        "The fibre and resin that the parameters were measured on. There are none for carbon here.",
        [LifeSources.StressRupture]);

    /// <summary>The life to count on: the formula's where its parameters are published, otherwise the shorter of it and the
    /// limit.</summary>
    public Duration Life => Parameters.IsPublished || ByFormula < AtMost ? ByFormula : AtMost;

    /// <inheritdoc/>
    public override string Title => "Life under sustained load";

    /// <inheritdoc/>
    public override ModelCard Model => Card;

    /// <inheritdoc/>
    public override IReadOnlyList<Caution> Cautions => Provenance.Cautions.ForPressure;

    /// <inheritdoc/>
    public override IReadOnlyList<Finding> Findings =>
    [
        .. Parameters.Validate(),
        .. Life < ByFormula
            ? [LifeFindings.LimitAtPressureStands(ByFormula.Hours, AtMost.Hours)]
            : Array.Empty<Finding>(),
        LifeFindings.MorePressureCutsTime(Math.Pow(1.05, Parameters.Exponent)),
    ];

    /// <inheritdoc/>
    public override IReadOnlyList<ResultLine> Lines =>
    [
        new("Time at pressure", $"{Digits.Round(Life.Hours)} h",
            $"{Stress.ToUnit(RatioUnit.Percent).Show()} of the strength, reliability {Digits.Round(Reliability, 9)} at its end"),
        new("By the formula alone", $"{Digits.Round(ByFormula.Hours)} h", Parameters.Source.ToString()),
    ];

    /// <inheritdoc/>
    public override Working Working => new(Title,
    [
        new("Time", @"t = t_{ref}\,\frac{(-\ln R)^{1/\beta}}{SR^{\rho}}",
            $"{Digits.Round(Parameters.Reference.Hours)} h × (−ln {Digits.Round(Reliability, 9)})^(1/{Digits.Round(Parameters.Shape)}) / "
                + $"{Digits.Round(Stress.DecimalFractions)}^{Digits.Round(Parameters.Exponent)}",
            $"{Digits.Round(ByFormula.Hours)} h", Parameters.Source),
    ]);
}
