using NotebookKit.Materials.Solids;
using NotebookKit.Provenance;
using NotebookKit.Quantities.Numbers;
using NotebookKit.Quantities;
using NotebookKit.Vessels.Limits;
using UnitsNet;

namespace NotebookKit.Vessels.Laminates;

/// <summary>Fibre and resin together, as a unidirectional ply: from the two to its density, stiffness and strength.</summary>
/// <param name="Fibre">Fibre.</param>
/// <param name="Resin">Resin.</param>
/// <param name="FibreFraction">Fibre volume fraction; 5 to 78.5 %, where square packing has no room left.</param>
/// <remarks>
/// Source: Kaw, Mechanics of Composite Materials, 2nd ed. 2006, ch. 3; Chamis, NASA TM-83320, 1983.
/// </remarks>
public sealed record Composite(Fibre Fibre, Resin Resin, Ratio FibreFraction)
{
    private double Fraction => FibreFraction.DecimalFractions;

    /// <summary>Density of the void-free composite. Source: Kaw 2006, Eq. 3.8.</summary>
    public Density Density => Density.FromKilogramsPerCubicMeter(
        MicromechanicsFormulas.Mixtures(Fibre.Density.Value.KilogramsPerCubicMeter, Resin.Density.Value.KilogramsPerCubicMeter, Fraction));

    /// <summary>Share of the mass that is fibre. Source: Kaw 2006, Eq. 3.5.</summary>
    public Ratio FibreMassFraction => Ratio.FromPercent(100 * Fraction * (Fibre.Density.Value / Density));

    /// <summary>Share of a pull along the fibres that the fibres carry. Source: Kaw 2006, Eq. 3.36.</summary>
    public Ratio FibreLoadShare => Ratio.FromPercent(100 * Fraction * (Fibre.LongitudinalModulus.Value / Lamina().Longitudinal));

    /// <summary>All that is wrong with the fibre, the resin and the fraction.</summary>
    public IReadOnlyList<Finding> Validate()
    {
        List<Finding> findings = [.. Fibre.Validate(), .. Resin.Validate()];
        if (CompositeLimits.FindFibreFraction(FibreFraction, "fibre volume fraction") is { } fraction) findings.Add(fraction);
        return findings;
    }

    /// <summary>Stiffness of the ply: rule of mixtures along the fibres, the chosen rule across.</summary>
    /// <param name="rule">Rule across the fibres.</param>
    /// <exception cref="InvalidDesignException">A value is out of range.</exception>
    /// <remarks>Source: Kaw 2006, Eq. 3.34, 3.44 along; <see cref="MatrixRule"/> across.</remarks>
    public Lamina Lamina(MatrixRule rule = MatrixRule.Chamis)
    {
        InvalidDesignException.ThrowIfAny("Composite", Validate());
        var em = Resin.Modulus.Value.Pascals;
        var gm = em / (2 * (1 + Resin.PoissonRatio.Value));
        return new Lamina(
            Pressure.FromPascals(MicromechanicsFormulas.Mixtures(Fibre.LongitudinalModulus.Value.Pascals, em, Fraction)),
            Pressure.FromPascals(MicromechanicsFormulas.Transverse(rule, Fibre.TransverseModulus.Value.Pascals, em, Fraction, 2)),
            Pressure.FromPascals(MicromechanicsFormulas.Transverse(rule, Fibre.ShearModulus.Value.Pascals, gm, Fraction, 1)),
            MicromechanicsFormulas.Mixtures(Fibre.PoissonRatio.Value, Resin.PoissonRatio.Value, Fraction));
    }

    /// <summary>Strength of the ply.</summary>
    /// <param name="efficiency">Share of the fibre's strength that fabrication delivers; 20 to 110 %.</param>
    /// <exception cref="InvalidDesignException">A value is out of range.</exception>
    /// <remarks>
    /// Source: Kaw 2006, Eq. 3.163 along, with the fibre's strength times the efficiency; Chamis, NASA TM-83320, 1983, for the
    /// resin-dominated strengths. Compression along the fibres is taken as 0.6 of tension, a typical ratio.
    /// </remarks>
    public PlyStrength Strength(Ratio efficiency)
    {
        List<Finding> findings = [.. Validate()];
        if (CompositeLimits.FindEfficiency(efficiency) is { } finding) findings.Add(finding);
        InvalidDesignException.ThrowIfAny("Composite", findings);
        var em = Resin.Modulus.Value.Pascals;
        var gm = em / (2 * (1 + Resin.PoissonRatio.Value));
        var ef = Fibre.TransverseModulus.Value.Pascals;
        var along = MicromechanicsFormulas.LongitudinalStrength(
            efficiency.DecimalFractions * Fibre.TensileStrength.Value.Pascals, Fibre.LongitudinalModulus.Value.Pascals, em, Fraction);
        return new PlyStrength(
            Pressure.FromPascals(along),
            Pressure.FromPascals(CompressionShare * along),
            Pressure.FromPascals(MicromechanicsFormulas.MatrixStrength(Resin.TensileStrength.Value.Pascals, ef, em, Fraction)),
            Pressure.FromPascals(MicromechanicsFormulas.MatrixStrength(Resin.CompressiveStrength.Value.Pascals, ef, em, Fraction)),
            Pressure.FromPascals(MicromechanicsFormulas.MatrixStrength(Resin.ShearStrength.Value.Pascals, Fibre.ShearModulus.Value.Pascals,
                gm, Fraction)));
    }

    /// <summary>Cured thickness of an areal weight of dry fibre. Source: mass of fibre over density and volume fraction.</summary>
    /// <param name="arealWeight">Dry areal weight; above 0.</param>
    public Length CuredThickness(AreaDensity arealWeight) => Length.FromMeters(Finite.Check(MicromechanicsFormulas.Thickness(
        arealWeight.KilogramsPerSquareMeter, Fibre.Density.Value.KilogramsPerCubicMeter, Fraction), "cured thickness", "m"));

    /// <summary>Resin that an areal weight of dry fibre holds, nothing wasted. Source: volumes add up.</summary>
    /// <param name="arealWeight">Dry areal weight; above 0.</param>
    public AreaDensity ResinWeight(AreaDensity arealWeight) => arealWeight
        * Finite.Check((1 - Fraction) / Fraction * (Resin.Density.Value / Fibre.Density.Value), "resin over fibre", "");

    /// <summary>The fibre volume fraction that a share of fibre by mass comes to, no voids. Source: Kaw 2006, Eq. 3.5.</summary>
    /// <param name="fibre">Fibre.</param>
    /// <param name="resin">Resin.</param>
    /// <param name="fibreMassFraction">Share of fibre by mass; 0 to 100 %.</param>
    public static Ratio FibreFractionFromMass(Fibre fibre, Resin resin, Ratio fibreMassFraction)
    {
        ArgumentNullException.ThrowIfNull(fibre);
        ArgumentNullException.ThrowIfNull(resin);
        var share = new ValidRange<Ratio>(0.Percent(), 100.Percent()).Check(fibreMassFraction, "fibre mass fraction",
            "Weigh the dry fibre and the cured part.").DecimalFractions;
        var fibreVolume = share / fibre.Density.Value.KilogramsPerCubicMeter;
        var resinVolume = (1 - share) / resin.Density.Value.KilogramsPerCubicMeter;
        return Ratio.FromPercent(100 * fibreVolume / (fibreVolume + resinVolume));
    }

    internal const double CompressionShare = 0.6;
}
