using NotebookKit.Numerics.Space;

namespace NotebookKit.Flight.RigidBody;

/// <summary>What flies: its mass properties and the loads on it, with unknowns of its own where it has any (what is still in its
/// tanks).</summary>
internal interface IBody
{
    /// <summary>Number of unknowns of its own; 0 or more.</summary>
    int Unknowns { get; }

    /// <summary>Mass and loads at one state; fills the rates of its own unknowns.</summary>
    /// <param name="t">Time [s].</param>
    /// <param name="motion">Motion through the air.</param>
    /// <param name="own">Its own unknowns.</param>
    /// <param name="ownRates">Receives their rates.</param>
    BodyLoads Loads(double t, in BodyMotion motion, ReadOnlySpan<double> own, Span<double> ownRates);
}

/// <summary>Mass, principal moments of inertia about the body axes, and what acts on the body apart from gravitation, along and about
/// them.</summary>
/// <param name="MassKg">Mass [kg].</param>
/// <param name="Inertia">Principal moments of inertia about the centre of gravity [kg m²].</param>
/// <param name="Force">Force [N].</param>
/// <param name="Moment">Moment about the centre of gravity [N m].</param>
internal readonly record struct BodyLoads(double MassKg, Vector Inertia, Vector Force, Vector Moment);
