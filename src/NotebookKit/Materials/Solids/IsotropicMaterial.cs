using NotebookKit.Provenance;
using NotebookKit.Quantities;
using UnitsNet;

namespace NotebookKit.Materials.Solids;

/// <summary>A plastic or metal that is the same in every direction: liners, closures, bosses.</summary>
/// <param name="Name">Name it is looked up by.</param>
/// <param name="Density">Density; 500 to 20 000 kg/m³.</param>
/// <param name="Modulus">Short-time Young's modulus; 0.1 to 250 GPa.</param>
/// <param name="PoissonRatio">Poisson's ratio [-]; 0 to 0.49.</param>
/// <param name="YieldStrength">Stress at which it yields; 1 to 2000 MPa.</param>
/// <param name="UsableStrain">Strain it can follow without tearing, well below its break elongation; 0.1 to 100 %.</param>
/// <param name="ThermalExpansion">Linear expansion; 0 to 300 µm/(m·K).</param>
/// <param name="ServiceTemperature">Highest temperature it may work at; −50 to 400 °C.</param>
public sealed record IsotropicMaterial(
    string Name,
    Property<Density> Density,
    Property<Pressure> Modulus,
    Property<double> PoissonRatio,
    Property<Pressure> YieldStrength,
    Property<Ratio> UsableStrain,
    Property<CoefficientOfThermalExpansion> ThermalExpansion,
    Property<Temperature> ServiceTemperature) : IMaterial
{
    /// <summary>Whether it holds its yield stress for as long as it is asked to; told by a modulus above 20 GPa, which no plastic
    /// has.</summary>
    public bool IsMetal => Modulus.Value.Gigapascals > 20;

    /// <inheritdoc/>
    public IReadOnlyList<string> Overrides => OverrideList.Of(
        Name, (Density, "density"), (Modulus, "modulus"), (PoissonRatio, "Poisson's ratio"), (YieldStrength, "yield strength"),
        (UsableStrain, "usable strain"), (ThermalExpansion, "thermal expansion"), (ServiceTemperature, "service temperature"));

    /// <inheritdoc/>
    public IReadOnlyList<Finding> Validate() =>
    [
        .. Density.Find(Name, "density", new(500.KilogramsPerCubicMetre(), 20_000.KilogramsPerCubicMetre()),
            "PET is near 1350, aluminium 2700 kg/m³."),
        .. Modulus.Find(Name, "modulus", new(0.1.Gigapascals(), 250.Gigapascals()), "Liner plastics are 2 to 4, aluminium 69 GPa."),
        .. PoissonRatio.Find(Name, "Poisson's ratio", new(0, 0.49), "Plastics are near 0.38, aluminium 0.33."),
        .. YieldStrength.Find(Name, "yield strength", new(1.Megapascals(), 2000.Megapascals()),
            "Liner plastics are 40 to 60, 6061-T6 aluminium 240 MPa."),
        .. UsableStrain.Find(Name, "usable strain", new(0.1.Percent(), 100.Percent()),
            "Take it well below the break elongation of the data sheet."),
        .. ThermalExpansion.Find(Name, "thermal expansion", new(CoefficientOfThermalExpansion.FromPerKelvin(0),
            CoefficientOfThermalExpansion.FromPerKelvin(300e-6)), "Aluminium is 23.6, plastics 60 to 80 µm/(m·K)."),
        .. ServiceTemperature.Find(Name, "service temperature", new((-50).Celsius(), 400.Celsius()), "PET softens from about 70 °C."),
    ];

    /// <summary>Its name.</summary>
    public override string ToString() => Name;
}
