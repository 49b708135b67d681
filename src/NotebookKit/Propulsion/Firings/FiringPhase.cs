using NotebookKit.Quantities;
using NotebookKit.Quantities.Numbers;
using UnitsNet;

namespace NotebookKit.Propulsion.Firings;

/// <summary>One phase of a firing: water leaving, or gas leaving.</summary>
/// <remarks>Source: impulse is thrust integrated with the equations of motion; specific impulse is impulse over weight expelled
/// (definition).</remarks>
/// <param name="Name">"water" or "gas".</param>
/// <param name="Start">Beginning, from release; 0 or above.</param>
/// <param name="End">End, from release; at or above the beginning.</param>
/// <param name="Impulse">Thrust integrated over the phase; 0 or above.</param>
/// <param name="Expelled">Mass that left; 0 or above.</param>
public sealed record FiringPhase(string Name, Duration Start, Duration End, Impulse Impulse, Mass Expelled)
{

    /// <summary>How long it lasts.</summary>
    public Duration Length => End - Start;

    /// <summary>Impulse over duration.</summary>
    public Force MeanThrust => (Length.Seconds > 0 ? Impulse.NewtonSeconds / Length.Seconds : 0).Newtons();

    /// <summary>Impulse over weight expelled, in seconds as the trade says it.</summary>
    public Duration SpecificImpulse => (Expelled.Kilograms > 0 ? Impulse.NewtonSeconds / (Expelled.Kilograms * StandardConstants.Gravity)
        : 0).Seconds();
}
