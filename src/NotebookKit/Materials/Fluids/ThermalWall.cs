using NotebookKit.Provenance;
using NotebookKit.Quantities;
using UnitsNet;

namespace NotebookKit.Materials.Fluids;

/// <summary>A wall as a store of heat, at one temperature through its thickness.</summary>
/// <param name="Thickness">Thickness; 0.1 mm to 100 mm.</param>
/// <param name="Density">Density; 100 to 20 000 kg/m³.</param>
/// <param name="HeatCapacity">Heat capacity; 100 to 3000 J/(kg K).</param>
public sealed record ThermalWall(Length Thickness, Density Density, SpecificEntropy HeatCapacity)
{
    /// <summary>A steel wall: 7850 kg/m³, 480 J/(kg K). Source: typical values for carbon steel.</summary>
    /// <param name="thickness">Thickness; 0.1 mm to 100 mm.</param>
    public static ThermalWall Steel(Length thickness) => new(thickness, 7850.KilogramsPerCubicMetre(),
        SpecificEntropy.FromJoulesPerKilogramKelvin(480));

    /// <summary>Plastic and laminate of a club's vessel: 1200 kg/m³, 1300 J/(kg K). Source: typical values for PET and epoxy
    /// laminates.</summary>
    /// <param name="thickness">Thickness; 0.1 mm to 100 mm.</param>
    public static ThermalWall Laminate(Length thickness) => new(thickness, 1200.KilogramsPerCubicMetre(),
        SpecificEntropy.FromJoulesPerKilogramKelvin(1300));

    /// <summary>Heat capacity of an area of it.</summary>
    /// <param name="area">The area; above 0.</param>
    internal Entropy Capacity(Area area) =>
        Entropy.FromJoulesPerKelvin(area.SquareMeters * Thickness.Meters * Density.KilogramsPerCubicMeter *
            HeatCapacity.JoulesPerKilogramKelvin);

    /// <summary>Everything that is wrong with it.</summary>
    public IReadOnlyList<Finding> Validate()
    {
        Finding?[] all =
        [
            new ValidRange<Length>(0.1.Millimetres(), 100.Millimetres()).Find(Thickness, "thickness of the wall", "Check its unit."),
            new ValidRange<Density>(100.KilogramsPerCubicMetre(), 20_000.KilogramsPerCubicMetre()).Find(Density, "density of the wall",
                "Check its unit."),
            new ValidRange<double>(100, 3000).Find(HeatCapacity.JoulesPerKilogramKelvin, "heat capacity of the wall in J/(kg K)",
                "Steel has 480, plastics 1000 to 2000."),
        ];
        return [.. all.OfType<Finding>()];
    }
}
