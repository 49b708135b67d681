using NotebookKit.Provenance;
using NotebookKit.Quantities;
using NotebookKit.Quantities.Numbers;
using UnitsNet;

namespace NotebookKit.Proofing.Plans;

/// <summary>A long vessel lying on two supports, full of water: how far it bends, and how far apart the supports may be.</summary>
/// <remarks>
/// Thin round tube, simply supported, load w = weight of water and wall per length; σ = M/(π r² t), I = π r³ t, δ = 5 w L⁴/(384 E I).
/// Source: J. M. Gere, S. P. Timoshenko, Mechanics of Materials, 1997.
/// </remarks>
/// <param name="Bore">Internal diameter; 5 mm to 1 m.</param>
/// <param name="Wall">Wall thickness; above 0 to a fifth of the bore.</param>
/// <param name="Span">Distance between the supports; above 0 to 10 m.</param>
/// <param name="WallDensity">Density of the wall; 500 to 10 000 kg/m³.</param>
/// <param name="AxialModulus">Young's modulus of the wall along the vessel; 0.1 GPa to 1000 GPa.</param>
public sealed record HorizontalSupport(Length Bore, Length Wall, Length Span, Density WallDensity, Pressure AxialModulus)
{
    /// <summary>Density of the water; 950 to 1050 kg/m³, 1000 unless said.</summary>
    public Density WaterDensity { get; init; } = Density.FromKilogramsPerCubicMeter(1000);

    /// <summary>Mean radius of the wall.</summary>
    public Length MeanRadius => (Bore + Wall) / 2;

    /// <summary>Weight of water and wall per length. Source: geometry.</summary>
    public ForcePerLength Load => ForcePerLength.FromNewtonsPerMeter(LoadNewtonsPerMetre);

    /// <summary>Bending moment at mid-span, w L²/8. Source: Gere and Timoshenko 1997.</summary>
    public Torque Moment => Torque.FromNewtonMeters(LoadNewtonsPerMetre * Span.Meters * Span.Meters / 8);

    /// <summary>Bending stress at mid-span, M/(π r² t). Source: Gere and Timoshenko 1997.</summary>
    public Pressure BendingStress => Pressure.FromPascals(Moment.NewtonMeters /
        SectionModulusCubicMetres).ToUnit(UnitsNet.Units.PressureUnit.Megapascal);

    /// <summary>Sag at mid-span, 5 w L⁴/(384 E I). Source: Gere and Timoshenko 1997.</summary>
    public Length Sag
    {
        get
        {
            var second = Math.PI * Math.Pow(MeanRadius.Meters, 3) * Wall.Meters;
            return Length.FromMeters(5 * LoadNewtonsPerMetre * Math.Pow(Span.Meters,
                4) / (384 * AxialModulus.Pascals * second)).ToUnit(UnitsNet.Units.LengthUnit.Millimeter);
        }
    }

    /// <summary>Largest distance between supports for which bending adds no more than a share of the axial stress from pressure.</summary>
    /// <param name="pressure">Proof pressure; above 0.</param>
    /// <param name="share">Share of the axial stress p r/(2 t) allowed for bending; above 0 to 20 %.</param>
    /// <exception cref="OutOfRangeException">The pressure or the share is outside its range.</exception>
    public Length LongestSpan(GaugePressure pressure, Ratio share)
    {
        new ValidRange<GaugePressure>(0.1.BarGauge(), 1000.BarGauge()).Check(pressure, "proof pressure",
            "The share is taken of the stress from pressure.");
        new ValidRange<Ratio>(0.01.Percent(), 20.Percent()).Check(share.ToUnit(UnitsNet.Units.RatioUnit.Percent),
            "share of the axial stress", "Bending is to stay small beside pressure.");
        var allowedPa = share.DecimalFractions * pressure.Pascals * MeanRadius.Meters / (2 * Wall.Meters);
        return Length.FromMeters(Math.Sqrt(8 * allowedPa * SectionModulusCubicMetres / LoadNewtonsPerMetre));
    }

    /// <summary>Everything wrong with this support.</summary>
    public IReadOnlyList<Finding> Validate() =>
        new[]
        {
            new ValidRange<Length>(5.Millimetres(), 1.Metres()).Find(Bore, "bore", "Check the unit it was given in."),
            new ValidRange<Length>(1.Micrometres(), Bore / 5).Find(Wall, "wall thickness",
                "The thin-tube formulae need a wall under a fifth of the bore."),
            new ValidRange<Length>(1.Millimetres(), 10.Metres()).Find(Span, "distance between supports", "Check the unit it was given in."),
            new ValidRange<Density>(Density.FromKilogramsPerCubicMeter(500), Density.FromKilogramsPerCubicMeter(10_000)).Find(WallDensity,
                "density of the wall", "Laminates have 1300 to 2000 kg/m³."),
            new ValidRange<Density>(Density.FromKilogramsPerCubicMeter(950), Density.FromKilogramsPerCubicMeter(1050)).Find(WaterDensity,
                "density of the water", "Prove with plain water."),
            new ValidRange<Pressure>(0.1.Gigapascals(),
                1000.Gigapascals()).Find(AxialModulus.ToUnit(UnitsNet.Units.PressureUnit.Gigapascal), "axial modulus",
                "Was another unit meant?"),
        }.OfType<Finding>().ToList();

    private double SectionModulusCubicMetres => Math.PI * MeanRadius.Meters * MeanRadius.Meters * Wall.Meters;

    private double LoadNewtonsPerMetre =>
        StandardConstants.Gravity
        * (WaterDensity.KilogramsPerCubicMeter * Math.PI / 4 * Bore.Meters * Bore.Meters
            + WallDensity.KilogramsPerCubicMeter * 2 * Math.PI * MeanRadius.Meters * Wall.Meters);
}
