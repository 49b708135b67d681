using NotebookKit.Numerics.Space;

namespace NotebookKit.Flight.RigidBody;

/// <summary>The ground and its gravitation, seen from an inertial frame.</summary>
internal interface IEarth
{
    /// <summary>How the ground, and the air with it, spins in the inertial frame [rad/s].</summary>
    Vector Spin { get; }

    /// <summary>Attraction by mass alone, without the centrifugal part [m/s²].</summary>
    Vector Gravitation(in Vector position);

    /// <summary>Altitude and local directions at a position.</summary>
    LocalFrame At(in Vector position);

    /// <summary>The position of a latitude, a longitude [rad] and an altitude at time 0 [m].</summary>
    Vector Position(double latitude, double longitude, double altitudeM);
}
