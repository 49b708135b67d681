using NotebookKit.Materials.Solids;
using NotebookKit.Provenance;
using NotebookKit.Quantities;
using NotebookKit.Vessels.Laminates;
using UnitsNet;
using UnitsNet.Units;

namespace NotebookKit.Life.Weather;

/// <summary>What a warm and wet resin keeps of its dry strength and stiffness. Source: see <see cref="Model"/>.</summary>
/// <param name="Input">What was asked.</param>
/// <param name="Retention">Share of the dry strength and modulus that is kept [-].</param>
/// <param name="Findings">What has to be said.</param>
public sealed record HygrothermalResult(HygrothermalRetention Input, double Retention, IReadOnlyList<Finding> Findings) : Result
{
    private static readonly ModelCard Card = new(
        "Warm and wet resin (Chamis)",
        [
            "Modulus and strengths of the resin fall by one and the same factor; fibres keep theirs.",
            "The wet glass temperature is a share of the dry one with both in °F, as the report has them.",
            "The water is spread evenly; the retention is never taken above 1.",
        ],
        "Up to 10 % of water by mass, below the wet glass temperature.",
        [LifeSources.Chamis]);

    /// <summary>Glass temperature of the wet resin.</summary>
    public Temperature WetGlass => Input.WetGlass;

    /// <summary>The resin with modulus and strengths reduced. Source: Chamis 1983.</summary>
    /// <param name="dry">The resin as measured dry at the reference temperature.</param>
    public Resin Reduce(Resin dry)
    {
        ArgumentNullException.ThrowIfNull(dry);
        return dry with
        {
            Name = $"{dry.Name}, {Input.Moisture.ToUnit(RatioUnit.Percent).Show()} wet at "
                + $"{Input.Service.ToUnit(TemperatureUnit.DegreeCelsius).Show()}",
            Modulus = Times(dry.Modulus),
            TensileStrength = Times(dry.TensileStrength),
            CompressiveStrength = Times(dry.CompressiveStrength),
            ShearStrength = Times(dry.ShearStrength),
        };
    }

    /// <summary>The ply with its resin reduced; its stiffness and strength follow by the usual rules. Source: Chamis 1983.</summary>
    /// <param name="dry">Fibre and dry resin.</param>
    public Composite Reduce(Composite dry)
    {
        ArgumentNullException.ThrowIfNull(dry);
        return dry with { Resin = Reduce(dry.Resin) };
    }

    /// <inheritdoc/>
    public override IReadOnlyList<Finding> Findings { get; internal init; } = Findings;

    /// <inheritdoc/>
    public override string Title => "Strength of a warm and wet resin";

    /// <inheritdoc/>
    public override ModelCard Model => Card;

    /// <inheritdoc/>
    public override IReadOnlyList<Caution> Cautions => Provenance.Cautions.ForPressure;

    /// <inheritdoc/>
    public override IReadOnlyList<ResultLine> Lines =>
    [
        new("Wet glass temperature", WetGlass.Show(), $"dry {Input.DryGlass.ToUnit(TemperatureUnit.DegreeCelsius).Show()}"),
        new("Share of the resin's strength and stiffness kept", $"{Digits.Round(100 * Retention)} %",
            $"at {Input.Service.ToUnit(TemperatureUnit.DegreeCelsius).Show()}, {Input.Moisture.ToUnit(RatioUnit.Percent).Show()} of water"),
    ];

    /// <inheritdoc/>
    public override Working Working => new(Title,
    [
        new("Wet glass temperature", @"T_{gw} = (0.005 M^2 - 0.10 M + 1)\,T_{gd}",
            $"{Digits.Round(HygrothermalRetention.WetGlassRatio(Input.Moisture))} × {Digits.Round(Input.DryGlass.DegreesFahrenheit)} °F",
            $"{Digits.Round(WetGlass.DegreesFahrenheit)} °F = {WetGlass.Show()}", LifeSources.Chamis),
        new("Retention", @"\sqrt{\frac{T_{gw} - T}{T_{gd} - T_0}}",
            $"√({Digits.Round(WetGlass.Kelvins - Input.Service.Kelvins)} K / "
                + $"{Digits.Round(Input.DryGlass.Kelvins - Input.Reference.Kelvins)} K), at most 1",
            Digits.Round(Retention), LifeSources.Chamis),
    ]);

    private Property<Pressure> Times(Property<Pressure> property) => property with { Value = property.Value * Retention };
}
