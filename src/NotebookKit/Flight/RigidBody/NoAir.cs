using NotebookKit.Flight.Site;

namespace NotebookKit.Flight.RigidBody;

/// <summary>Empty space. The speed of sound is kept finite, so that a Mach number stays one.</summary>
internal readonly struct NoAir : IAir
{
    public AirSample At(double t, double altitudeM) => new(0, 340, 0, default);
}
