using NotebookKit.Provenance;
using NotebookKit.Quantities;
using UnitsNet;

namespace NotebookKit.Vessels.Ends.Modes;

/// <summary>A tube, ring or solid plug that takes part in a round bond.</summary>
/// <param name="InnerRadius">Inner radius; 0 for a solid plug, up to 2000 mm.</param>
/// <param name="OuterRadius">Outer radius; above the inner one, up to 2000 mm.</param>
/// <param name="Modulus">Young's modulus along the axis; 1 MPa to 1000 GPa.</param>
/// <remarks>Source: area and second moment of a circle.</remarks>
public sealed record TubeMember(Length InnerRadius, Length OuterRadius, Pressure Modulus)
{
    /// <summary>Shear modulus in torsion; only a torque asks for it. 1 MPa to 1000 GPa.</summary>
    public Pressure? ShearModulus { get; init; }

    /// <summary>All that is wrong with it.</summary>
    public IReadOnlyList<Finding> Validate() => ModeInput.All(
        new ValidRange<Length>(0.Millimetres(), 2000.Millimetres())
            .Find(InnerRadius, "inner radius of the bonded part", "Give 0 for a solid plug."),
        new ValidRange<Length>(0.1.Millimetres(), 2000.Millimetres())
            .Find(OuterRadius, "outer radius of the bonded part", "Half its outer diameter."),
        ModeInput.Below(InnerRadius, OuterRadius, "inner radius of the bonded part", "part's outside", "The part needs a wall."),
        ModeInput.Moduli.Find(Modulus, "modulus of the bonded part", "Aluminium is 69 GPa."),
        ShearModulus is { } shear ? ModeInput.Moduli.Find(shear, "shear modulus of the bonded part", "Aluminium is 26 GPa.") : null);

    /// <summary>E·A [N].</summary>
    internal double AxialStiffness => Modulus.Pascals * Math.PI * (Square(OuterRadius) - Square(InnerRadius));

    /// <summary>G·J [N·m²].</summary>
    internal double TorsionalStiffness(Pressure shear) =>
        shear.Pascals * Math.PI / 2 * (Square(OuterRadius) * Square(OuterRadius) - Square(InnerRadius) * Square(InnerRadius));

    private static double Square(Length length) => length.Meters * length.Meters;
}
