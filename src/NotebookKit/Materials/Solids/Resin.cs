using NotebookKit.Provenance;
using NotebookKit.Quantities;
using UnitsNet;

namespace NotebookKit.Materials.Solids;

/// <summary>A cured laminating resin.</summary>
/// <param name="Name">Name it is looked up by.</param>
/// <param name="Density">Cured density; 800 to 2500 kg/m³.</param>
/// <param name="Modulus">Young's modulus; 0.1 to 20 GPa.</param>
/// <param name="PoissonRatio">Poisson's ratio [-]; 0 to 0.49.</param>
/// <param name="TensileStrength">Tensile strength; 1 to 300 MPa.</param>
/// <param name="CompressiveStrength">Compressive strength; 1 to 500 MPa.</param>
/// <param name="ShearStrength">Shear strength; 1 to 300 MPa.</param>
/// <param name="ServiceTemperature">Highest temperature it may work at; −50 to 250 °C.</param>
public sealed record Resin(
    string Name,
    Property<Density> Density,
    Property<Pressure> Modulus,
    Property<double> PoissonRatio,
    Property<Pressure> TensileStrength,
    Property<Pressure> CompressiveStrength,
    Property<Pressure> ShearStrength,
    Property<Temperature> ServiceTemperature) : IMaterial
{
    /// <summary>Glass temperature of the cured resin, dry; 40 to 300 °C. None where it isn't given: then nothing says what heat leaves of
    /// its strength.</summary>
    public Property<Temperature>? GlassTemperature { get; init; }

    /// <inheritdoc/>
    public IReadOnlyList<string> Overrides => OverrideList.Of(
        Name, (Density, "density"), (Modulus, "modulus"), (PoissonRatio, "Poisson's ratio"), (TensileStrength, "tensile strength"),
        (CompressiveStrength, "compressive strength"), (ShearStrength, "shear strength"), (ServiceTemperature, "service temperature"),
        (GlassTemperature, "glass temperature"));

    /// <inheritdoc/>
    public IReadOnlyList<Finding> Validate() =>
    [
        .. Density.Find(Name, "density", new(800.KilogramsPerCubicMetre(), 2500.KilogramsPerCubicMetre()),
            "Cured epoxy is near 1150 kg/m³."),
        .. Modulus.Find(Name, "modulus", new(0.1.Gigapascals(), 20.Gigapascals()), "Cured epoxy is near 3 GPa."),
        .. PoissonRatio.Find(Name, "Poisson's ratio", new(0, 0.49), "Cured epoxy is near 0.35."),
        .. TensileStrength.Find(Name, "tensile strength", new(1.Megapascals(), 300.Megapascals()), "Cured epoxy is 50 to 80 MPa."),
        .. CompressiveStrength.Find(Name, "compressive strength", new(1.Megapascals(), 500.Megapascals()), "Cured epoxy is 80 to 130 MPa."),
        .. ShearStrength.Find(Name, "shear strength", new(1.Megapascals(), 300.Megapascals()), "Cured epoxy is 35 to 60 MPa."),
        .. ServiceTemperature.Find(Name, "service temperature", new((-50).Celsius(), 250.Celsius()), "Room-cured epoxy is near 50 °C."),
        .. GlassTemperature?.Find(Name, "glass temperature", new(40.Celsius(), 300.Celsius()), "Room-cured epoxy is 50 to 80 °C.") ?? [],
    ];

    /// <summary>Its name.</summary>
    public override string ToString() => Name;
}
