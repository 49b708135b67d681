using NotebookKit.Provenance;
using NotebookKit.Quantities;
using UnitsNet;

namespace NotebookKit.Materials.Solids;

/// <summary>A reinforcing fibre, as a single filament in a maker's table: what a resin-wet vessel delivers of its strength is a matter of
/// fabrication.</summary>
/// <param name="Name">Name it is looked up by.</param>
/// <param name="Density">Density; 500 to 5000 kg/m³.</param>
/// <param name="LongitudinalModulus">Modulus along the fibre; 1 to 1000 GPa.</param>
/// <param name="TransverseModulus">Modulus across the fibre; 0.5 to 1000 GPa.</param>
/// <param name="ShearModulus">Shear modulus along the fibre; 0.5 to 500 GPa.</param>
/// <param name="PoissonRatio">Major Poisson's ratio [-]; 0 to 0.5.</param>
/// <param name="TensileStrength">Tensile strength of the bare fibre or impregnated strand; 100 to 10 000 MPa.</param>
public sealed record Fibre(
    string Name,
    Property<Density> Density,
    Property<Pressure> LongitudinalModulus,
    Property<Pressure> TransverseModulus,
    Property<Pressure> ShearModulus,
    Property<double> PoissonRatio,
    Property<Pressure> TensileStrength) : IMaterial
{
    /// <summary>Strain at which the bare fibre breaks, strength over modulus. Source: Hooke's law.</summary>
    public Ratio FailureStrain => Ratio.FromPercent(100 * (TensileStrength.Value.Pascals / LongitudinalModulus.Value.Pascals));

    /// <inheritdoc/>
    public IReadOnlyList<string> Overrides => OverrideList.Of(
        Name, (Density, "density"), (LongitudinalModulus, "longitudinal modulus"), (TransverseModulus, "transverse modulus"),
        (ShearModulus, "shear modulus"), (PoissonRatio, "Poisson's ratio"), (TensileStrength, "tensile strength"));

    /// <inheritdoc/>
    public IReadOnlyList<Finding> Validate() =>
    [
        .. Density.Find(Name, "density", new(500.KilogramsPerCubicMetre(), 5000.KilogramsPerCubicMetre()),
            "Carbon is near 1800, glass near 2550 kg/m³."),
        .. LongitudinalModulus.Find(Name, "longitudinal modulus", new(1.Gigapascals(), 1000.Gigapascals()),
            "Carbon is near 230, glass near 73 GPa."),
        .. TransverseModulus.Find(Name, "transverse modulus", new(0.5.Gigapascals(), 1000.Gigapascals()),
            "Carbon is near 15 GPa; glass is the same in every direction."),
        .. ShearModulus.Find(Name, "shear modulus", new(0.5.Gigapascals(), 500.Gigapascals()), "Carbon is near 15, glass near 30 GPa."),
        .. PoissonRatio.Find(Name, "Poisson's ratio", new(0, 0.5), "Most fibres are near 0.2."),
        .. TensileStrength.Find(Name, "tensile strength", new(100.Megapascals(), 10_000.Megapascals()),
            "Carbon is 3500 to 5000, glass 1500 to 3500 MPa."),
    ];

    /// <summary>Its name.</summary>
    public override string ToString() => Name;
}
