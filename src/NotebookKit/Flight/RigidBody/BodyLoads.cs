using NotebookKit.Numerics.Space;

namespace NotebookKit.Flight.RigidBody;

/// <summary>Mass, principal moments of inertia about the body axes, and what acts on the body apart from gravitation, along and about them.</summary>
/// <param name="MassKg">Mass [kg].</param>
/// <param name="Inertia">Principal moments of inertia about the centre of gravity [kg m²].</param>
/// <param name="Force">Force [N].</param>
/// <param name="Moment">Moment about the centre of gravity [N m].</param>
internal readonly record struct BodyLoads(double MassKg, Vector Inertia, Vector Force, Vector Moment);
