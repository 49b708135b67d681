using NotebookKit.Flight.Site;
using NotebookKit.Numerics.Ode;

namespace NotebookKit.Flight.RigidBody;

/// <summary>Watches for a body coming down to zero altitude.</summary>
internal struct GroundEvent<TEarth, TAir, TBody>(RigidBodySystem<TEarth, TAir, TBody> system) : IOdeEvents
    where TEarth : struct, IEarth
    where TAir : struct, IAir
    where TBody : struct, IBody
{
    public int Count => 1;

    public OdeEventRule Rule(int index) => new(OdeEventDirection.Falling, IsTerminal: true);

    public double Value(int index, double t, ReadOnlySpan<double> y, ReadOnlySpan<double> dydt)
        => system.Earth.At(system.Position(y)).AltitudeM;

    public void Located(int index, double t, ReadOnlySpan<double> y)
    {
    }
}
