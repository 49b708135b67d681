using NotebookKit.Provenance;
using NotebookKit.Quantities;
using UnitsNet;

namespace NotebookKit.Propulsion.Charges;

/// <summary>A tube on the pad that reaches up through the nozzle into the vessel: the vehicle rides up it like a cylinder on a piston
/// before any water leaves.</summary>
/// <remarks>
/// F = (p − pa) A, the gas expanding by A x; no leak and no friction. Source: first law for the gas; own derivation, checked by energy.
/// </remarks>
/// <param name="Diameter">Outer diameter; 2 mm to the nozzle's throat.</param>
/// <param name="Stroke">Length that the vehicle rides along; 10 mm to 3 m.</param>
public sealed record LaunchTube(Length Diameter, Length Stroke)
{
    /// <summary>Gas space inside a hollow tube that is open to the vessel; none unless given. Its gas stays behind.</summary>
    public Volume Hollow { get; init; } = Volume.Zero;

    /// <summary>Area that the gas pushes on. Source: geometry.</summary>
    public Area Area => (Math.PI / 4 * Diameter.Meters * Diameter.Meters).SquareMetres();

    /// <summary>Volume of the tube inside the vessel before release. Source: geometry.</summary>
    public Volume Displaced => (Area.SquareMeters * Stroke.Meters).CubicMetres();

    /// <summary>Everything that is wrong with it.</summary>
    public IReadOnlyList<Finding> Validate()
    {
        Finding?[] all =
        [
            new ValidRange<Length>(2.Millimetres(), 100.Millimetres()).Find(Diameter, "diameter of the launch tube",
                "The tube must pass through the nozzle."),
            new ValidRange<Length>(10.Millimetres(), 3.Metres()).Find(Stroke, "stroke of the launch tube",
                "It reaches up inside the vessel."),
            new ValidRange<Volume>(Volume.Zero, Displaced).Find(Hollow, "gas space inside the launch tube",
                "It can't hold more than its outside measures."),
        ];
        return [.. all.OfType<Finding>()];
    }
}
