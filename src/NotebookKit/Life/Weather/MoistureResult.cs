using NotebookKit.Provenance;
using NotebookKit.Quantities;
using UnitsNet;
using UnitsNet.Units;

namespace NotebookKit.Life.Weather;

/// <summary>Water in a wall after a time in the damp. Source: see <see cref="Model"/>.</summary>
/// <param name="Wall">The wall.</param>
/// <param name="Time">Time in the damp.</param>
/// <param name="Saturation">Uptake of the saturated wall, as a share of its mass.</param>
/// <param name="Share">Share of the final uptake that is reached.</param>
public sealed record MoistureResult(MoistureUptake Wall, Duration Time, Ratio Saturation, Ratio Share) : Result
{
    private static readonly ModelCard Card = new(
        "Moisture uptake by Fick's law",
        [
            "The wall starts dry; its wet faces are at saturation from the first moment; edges take up nothing.",
            "Diffusivity does not change with the uptake; it grows steeply with temperature, so measure it as warm as the wall will be.",
            "With the outer face alone the same uptake takes four times as long. The outer plies are wetter than the mean at all times.",
        ],
        "Sound laminates below their glass temperature; cracks and voids take up more and faster.",
        [LifeSources.Fick, LifeSources.ShenSpringer]);

    /// <summary>Mean uptake, as a share of the wall's mass. Source: saturation times share.</summary>
    public Ratio Moisture => Ratio.FromPercent(Saturation.Percent * Share.DecimalFractions);

    /// <inheritdoc/>
    public override string Title => "Moisture uptake of a wall";

    /// <inheritdoc/>
    public override ModelCard Model => Card;

    /// <inheritdoc/>
    public override IReadOnlyList<Finding> Findings =>
        [LifeFindings.OuterPliesHoldMoreWater()];

    /// <inheritdoc/>
    public override IReadOnlyList<Caution> Cautions => Provenance.Cautions.ForPressure;

    /// <inheritdoc/>
    public override IReadOnlyList<ResultLine> Lines =>
    [
        new("Share of the final uptake", Share.Show(), $"after {Digits.Round(Time.Days)} days, "
            + $"{(Wall.Faces == WetFaces.Both ? "both faces wet" : "outer face wet")}"),
        new("Water in the wall", Moisture.Show(), $"saturated {Saturation.ToUnit(RatioUnit.Percent).Show()}"),
        new("99.9 % of the final uptake", $"{Digits.Round(Wall.TimeTo(99.9.Percent()).Days)} days"),
    ];

    /// <inheritdoc/>
    public override Working Working => new(Title,
    [
        new("Scaled time", @"x = \frac{D\,t}{h^2}", $"{Digits.Round(Wall.DiffusivityMm2PerS)} mm²/s × {Digits.Round(Time.Seconds)} s / "
            + $"({Digits.Round(Wall.PathMm)} mm)²", Digits.Round(Wall.Scaled(Time)), LifeSources.Fick),
        new("Share", @"1 - \frac{8}{\pi^2} \sum_{j=0}^{\infty} \frac{e^{-(2j+1)^2 \pi^2 x}}{(2j+1)^2}",
            $"x = {Digits.Round(Wall.Scaled(Time))}", Share.Show(), LifeSources.Fick),
        new("Water in the wall", @"M = M_m\,G", $"{Saturation.ToUnit(RatioUnit.Percent).Show()} × {Digits.Round(Share.DecimalFractions)}",
            Moisture.Show(), LifeSources.Fick),
    ]);
}
