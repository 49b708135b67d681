using NotebookKit.Proofing.Blast;
using NotebookKit.Provenance;
using NotebookKit.Quantities.Numbers;
using NotebookKit.Quantities;
using NotebookKit.Vessels.Bursting;
using UnitsNet;

namespace NotebookKit.Proofing.Plans;

/// <summary>How much a vessel's bore grows in volume under pressure, in proportion to the pressure.</summary>
/// <remarks>Closures are taken as stiff. Source: S. Timoshenko; W. C. Young, R. G. Budynas, Roark's Formulas for Stress and Strain, 2002,
/// thin cylinder with ends.</remarks>
/// <param name="VolumeRatio">Growth in internal volume over internal volume at the pressure <paramref name="At"/>; 0 to 20 %.</param>
/// <param name="At">Pressure at which the growth holds; above 0.</param>
/// <param name="Source">Where the growth comes from.</param>
public sealed record WallExpansion(Ratio VolumeRatio, GaugePressure At, Source Source)
{
    /// <summary>Linear thermal expansion of the wall; 0 to 200 µm/m per kelvin. Left at zero, a warming vessel's pressure rise is
    /// overstated.</summary>
    public CoefficientOfThermalExpansion ThermalExpansion { get; init; }

    /// <summary>Growth of a thin isotropic closed cylinder. Source: Roark 2002; ΔV/V = (p r/E t)(5/2 − 2ν).</summary>
    /// <param name="meanRadius">Mean radius of the wall; above 0 to 1 m.</param>
    /// <param name="wall">Wall thickness; above 0 to a fifth of the radius.</param>
    /// <param name="modulus">Young's modulus; 0.1 GPa to 1000 GPa.</param>
    /// <param name="poissonRatio">Poisson's ratio [-]; 0 to 0.5.</param>
    /// <param name="at">Pressure; above 0 to 1000 bar gauge.</param>
    /// <exception cref="OutOfRangeException">An input is outside its range.</exception>
    public static WallExpansion Isotropic(Length meanRadius, Length wall, Pressure modulus, double poissonRatio, GaugePressure at)
    {
        var (hoop, axial) = IsotropicStrains(meanRadius, wall, modulus, poissonRatio, at);
        return FromStrains(hoop, axial, at, ProofingSources.Cylinder);
    }

    /// <summary>Hoop and axial strain of a thin isotropic closed cylinder. Source: Roark 2002, thin cylinder with ends.</summary>
    /// <param name="meanRadius">Mean radius of the wall; above 0 to 1 m.</param>
    /// <param name="wall">Wall thickness; above 0 to a fifth of the radius.</param>
    /// <param name="modulus">Young's modulus; 0.1 GPa to 1000 GPa.</param>
    /// <param name="poissonRatio">Poisson's ratio [-]; 0 to 0.5.</param>
    /// <param name="at">Pressure; above 0 to 1000 bar gauge.</param>
    /// <exception cref="OutOfRangeException">An input is outside its range.</exception>
    public static (Ratio Hoop, Ratio Axial) IsotropicStrains(Length meanRadius, Length wall, Pressure modulus, double poissonRatio,
        GaugePressure at)
    {
        new ValidRange<Length>(1.Millimetres(), 1.Metres()).Check(meanRadius, "mean radius",
            "It must be above zero; check the unit it was given in.");
        new ValidRange<Length>(1.Micrometres(), meanRadius / 5).Check(wall, "wall thickness",
            "The thin-wall formula needs a wall under a fifth of the radius.");
        new ValidRange<Pressure>(0.1.Gigapascals(), 1000.Gigapascals()).Check(modulus.ToUnit(UnitsNet.Units.PressureUnit.Gigapascal),
            "Young's modulus", "Plastics start near 1 GPa; was another unit meant?");
        new ValidRange<double>(0, 0.5).Check(poissonRatio, "Poisson's ratio", "An isotropic material lies between 0 and 0.5.");
        CheckPressure(at);
        var strain = at.Pascals * meanRadius.Meters / (modulus.Pascals * wall.Meters);
        return (Ratio.FromDecimalFractions(strain * (1 - poissonRatio / 2)), Ratio.FromDecimalFractions(strain * (0.5 - poissonRatio)));
    }

    /// <summary>Growth from the strains of a laminate: twice hoop plus axial. Source: Roark 2002; geometry of a closed cylinder.</summary>
    /// <param name="hoop">Hoop strain at the pressure; −5 % to 10 %.</param>
    /// <param name="axial">Axial strain at the pressure; −5 % to 10 %. Negative where a shallow braid shortens.</param>
    /// <param name="at">Pressure; above 0 to 1000 bar gauge.</param>
    /// <param name="source">Where the strains come from.</param>
    /// <exception cref="OutOfRangeException">An input is outside its range.</exception>
    public static WallExpansion FromStrains(Ratio hoop, Ratio axial, GaugePressure at, Source source)
    {
        var range = new ValidRange<Ratio>((-5).Percent(), 10.Percent());
        range.Check(hoop, "hoop strain", "Small strains only.");
        range.Check(axial, "axial strain", "Small strains only.");
        CheckPressure(at);
        return new(Ratio.FromDecimalFractions(2 * hoop.DecimalFractions + axial.DecimalFractions), at, source);
    }

    /// <summary>Growth as a vessel's layup predicts it: that of its straight part over its whole volume. Source: the
    /// prediction's.</summary>
    /// <param name="expansion">The vessel's growth at a pressure.</param>
    /// <exception cref="OutOfRangeException">The growth was asked for at no pressure.</exception>
    public static WallExpansion Of(VesselExpansion expansion)
    {
        ArgumentNullException.ThrowIfNull(expansion);
        CheckPressure(expansion.Pressure);
        return new(Ratio.FromDecimalFractions(expansion.ElasticExpansion / expansion.Vessel.Volume), expansion.Pressure,
            expansion.Model.Sources[0]);
    }

    /// <summary>Growth as measured: so much volume, at that pressure, for that vessel.</summary>
    /// <param name="growth">Growth in volume with the water's own compression and trapped air taken off; 0 or above.</param>
    /// <param name="vessel">Internal volume of the vessel; above 0.</param>
    /// <param name="at">Pressure; above 0 to 1000 bar gauge.</param>
    /// <exception cref="OutOfRangeException">An input is outside its range.</exception>
    public static WallExpansion Measured(Volume growth, Volume vessel, GaugePressure at)
    {
        StoredEnergy.CheckVolume(vessel, "vessel volume");
        new ValidRange<Volume>(Volume.Zero, vessel / 5).Check(growth, "total expansion of the vessel",
            "More than a fifth is no proof but a failure.");
        CheckPressure(at);
        return new(Ratio.FromDecimalFractions(growth / vessel), at, new("", "measured in a proof", null, "", SourceKind.Measured));
    }

    /// <summary>Growth in volume of a vessel at a pressure.</summary>
    /// <param name="vessel">Internal volume without pressure; above 0.</param>
    /// <param name="pressure">Gauge pressure; 0 or above.</param>
    public Volume Of(Volume vessel, GaugePressure pressure) => vessel * Finite.Check(
        VolumeRatio.DecimalFractions * (pressure / At), "growth of the vessel", "");

    /// <summary>Everything wrong with this expansion.</summary>
    public IReadOnlyList<Finding> Validate() =>
        new[]
        {
            new ValidRange<Ratio>(Ratio.Zero, 20.Percent()).Find(VolumeRatio.ToUnit(UnitsNet.Units.RatioUnit.Percent),
                "relative expansion of the vessel", "A vessel doesn't shrink in volume, and more than 20 % isn't small."),
            new ValidRange<GaugePressure>(0.01.BarGauge(), 1000.BarGauge()).Find(At, "pressure of the expansion",
                "An expansion belongs to a pressure above zero."),
            new ValidRange<double>(0, 200e-6).Find(ThermalExpansion.PerKelvin, "thermal expansion of the wall per kelvin",
                "Plastics have about 70e-6, aluminium 23e-6, carbon near 0."),
        }.OfType<Finding>().ToList();

    private static void CheckPressure(GaugePressure at) =>
        new ValidRange<GaugePressure>(0.01.BarGauge(), 1000.BarGauge()).Check(at, "pressure of the expansion",
            "An expansion belongs to a pressure above zero.");
}
