using NotebookKit.Numerics.Space;

namespace NotebookKit.Flight.RigidBody;

/// <summary>A sphere with the attraction of a point mass; the inertial z axis points north, x to longitude zero at time 0.</summary>
internal readonly struct RoundEarth(double radiusM, double attraction, double spin) : IEarth
{
    public Vector Spin => new(0, 0, spin);

    public Vector Gravitation(in Vector position)
    {
        var square = position.Square;
        return -attraction / (square * Math.Sqrt(square)) * position;
    }

    public LocalFrame At(in Vector position)
    {
        var distance = position.Length;
        return Directions(position, position.Z / distance, distance - radiusM);
    }

    public Vector Position(double latitude, double longitude, double altitudeM)
    {
        var (sinLatitude, cosLatitude) = Math.SinCos(latitude);
        var (sinLongitude, cosLongitude) = Math.SinCos(longitude);
        return (radiusM + altitudeM) * new Vector(cosLatitude * cosLongitude, cosLatitude * sinLongitude, sinLatitude);
    }

    /// <summary>Local directions where the upward one has a given part to the north pole.</summary>
    internal static LocalFrame Directions(in Vector position, double sinLatitude, double altitudeM)
    {
        var fromAxis = Math.Sqrt((position.X * position.X) + (position.Y * position.Y));
        var cosLatitude = Math.Sqrt(Math.Max(0, 1 - (sinLatitude * sinLatitude)));
        // At a pole every direction is south or north: take longitude zero.
        var (sinLongitude, cosLongitude) = fromAxis > 0 ? (position.Y / fromAxis, position.X / fromAxis) : (0, 1);
        return new(
            altitudeM,
            new(-sinLatitude * cosLongitude, -sinLatitude * sinLongitude, cosLatitude),
            new(-sinLongitude, cosLongitude, 0),
            new(-cosLatitude * cosLongitude, -cosLatitude * sinLongitude, -sinLatitude));
    }
}
