using NotebookKit.Provenance;
using NotebookKit.Quantities;
using UnitsNet;

namespace NotebookKit.Vessels.Ends.Modes;

/// <summary>Pressure at which a flat round plate of ductile metal collapses.</summary>
/// <param name="Plate">The plate.</param>
/// <param name="Factor">Collapse pressure times R² over the full plastic moment [-].</param>
/// <param name="Pressure">Collapse pressure.</param>
/// <param name="HingeCircle">Radius at which the moment along the radius turns from pull to push; none where there is no such circle or
/// the rule doesn't give one.</param>
/// <remarks>Source: Hopkins and Prager, J. Mech. Phys. Solids 2, 1953; Hopkins and Wang, the same journal 3, 1954 (unverified).</remarks>
public sealed record PlateLimit(PlateCollapse Plate, double Factor, GaugePressure Pressure, Length? HingeCircle) : EndModeResult
{
    private Source Origin => Plate.Rule == PlateYieldRule.VonMises ? ModeSources.HopkinsWang : ModeSources.HopkinsPrager;

    /// <inheritdoc/>
    public override string Title => $"Collapse of a round plate, {(Plate.Rim == PlateRim.Clamped ? "clamped" : "supported")}";

    /// <inheritdoc/>
    public override ModelCard Model => new(
        "Plastic limit load of a round plate",
        ["Rigid, perfectly plastic, ductile metal.",
            "Bending alone: neither shear at the hole's edge nor stretching of the middle plane is counted.",
            "Screw holes, grooves and threads are not counted."],
        "Thickness below about half the width from hole to rim.",
        [Origin]);

    /// <inheritdoc/>
    public override IReadOnlyList<ResultLine> Lines =>
    [
        new("collapse pressure", Pressure.ToString(),
            Plate.Rule switch { PlateYieldRule.Tresca => "Tresca", PlateYieldRule.VonMises => "von Mises", _ =>
            "largest moment, not for a rating" }),
        new("full plastic moment", Plate.FullMoment.Show()),
        .. HingeCircle is { } circle ? (ResultLine[])[new("hinge circle", circle.Show())] : [],
    ];

    /// <inheritdoc/>
    public override Working Working => new(Title,
    [
        new("Full plastic moment", @"M_0 = \frac{\sigma_y\,t^2}{4}", $"{Plate.YieldStrength.Show()} × ({Plate.Thickness.Show()})² / 4",
            Plate.FullMoment.Show(), Origin),
        new("Collapse pressure", @"p = k\,\frac{M_0}{R^2}",
            $"{Digits.Round(Factor, 4)} × {Plate.FullMoment.Show()} / ({Plate.OuterRadius.Show()})²", Pressure.ToString(), Origin),
    ]);
}
