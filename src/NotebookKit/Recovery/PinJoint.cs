using UnitsNet;
using NotebookKit.Quantities;

namespace NotebookKit.Recovery;

/// <summary>A joint held by shear pins, and what acts on it. Source: direct shear, as <see cref="ShearPins"/>.</summary>
/// <param name="Pins">The pins.</param>
/// <param name="PistonBore">Bore of the compartment that is pressurised to part the joint; 5 mm to 1 m.</param>
/// <param name="Separating">Force of the charge, spring or piston that separates the joint; 0 to 1 MN.</param>
public sealed record PinJoint(ShearPins Pins, Length PistonBore, Force Separating)
{
    /// <summary>Force by which drag pulls the joint apart at its worst; 0 to 1 MN.</summary>
    public Force DragSeparation { get; init; } = Force.Zero;

    /// <summary>Pressure of air trapped in the compartment as the outside thins; 0 to 1 bar. A small vent hole takes it to none.</summary>
    public GaugePressure Trapped { get; init; } = GaugePressure.Zero;

    /// <summary>Whether the pins hold what flight puts on them and let go when they should. Source: direct shear.</summary>
    /// <exception cref="Provenance.InvalidDesignException">The pins can't be computed; carries all findings.</exception>
    /// <exception cref="Provenance.OutOfRangeException">An input is outside its range.</exception>
    public PinResult Check() => Pins.Check(PistonBore, Separating, DragSeparation, Trapped);
}
