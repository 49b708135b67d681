using NotebookKit.Numerics.Space;

namespace NotebookKit.Flight.RigidBody;

/// <summary>
/// An ellipsoid with the attraction of its mass and its flattening (J2); the inertial z axis points north, x to longitude zero at time 0.
/// Source: B. L. Stevens, F. L. Lewis, Aircraft Control and Simulation, 2nd ed. 2003, 1.4 (gravitation, unverified);
/// B. R. Bowring, Survey Review 23 (1976) 323 (altitude, unverified).
/// </summary>
internal readonly struct EllipsoidEarth : IEarth
{
    private readonly double _equatorM, _flattening, _attraction, _j2, _spin;

    public EllipsoidEarth(double equatorM, double flattening, double attraction, double j2, double spin)
    {
        _equatorM = equatorM;
        _flattening = flattening;
        _attraction = attraction;
        _j2 = j2;
        _spin = spin;
    }

    public Vector Spin => new(0, 0, _spin);

    private double EccentricitySquare => _flattening * (2 - _flattening);

    public Vector Gravitation(in Vector position)
    {
        var square = position.Square;
        var ratio = 1.5 * _j2 * _equatorM * _equatorM / square;
        var polar = 5 * position.Z * position.Z / square;
        var factor = -_attraction / (square * Math.Sqrt(square));
        var across = factor * (1 + (ratio * (1 - polar)));
        return new(across * position.X, across * position.Y, factor * (1 + (ratio * (3 - polar))) * position.Z);
    }

    public LocalFrame At(in Vector position)
    {
        var e2 = EccentricitySquare;
        var poleM = _equatorM * (1 - _flattening);
        var fromAxis = Math.Sqrt((position.X * position.X) + (position.Y * position.Y));

        // Bowring's step on the reduced latitude; two of them reach rounding anywhere a vehicle flies.
        var (sinReduced, cosReduced) = Unit(_equatorM * position.Z, poleM * fromAxis);
        double sin = 0, cos = 1;
        for (var i = 0; i < 3; i++)
        {
            (sin, cos) = Unit(
                position.Z + (e2 / (1 - e2) * poleM * sinReduced * sinReduced * sinReduced),
                fromAxis - (e2 * _equatorM * cosReduced * cosReduced * cosReduced));
            (sinReduced, cosReduced) = Unit((1 - _flattening) * sin, cos);
        }

        var altitude = (fromAxis * cos) + (position.Z * sin) - (_equatorM * Math.Sqrt(1 - (e2 * sin * sin)));
        return RoundEarth.Directions(position, sin, altitude);
    }

    public Vector Position(double latitude, double longitude, double altitudeM)
    {
        var (sinLatitude, cosLatitude) = Math.SinCos(latitude);
        var (sinLongitude, cosLongitude) = Math.SinCos(longitude);
        var normal = _equatorM / Math.Sqrt(1 - (EccentricitySquare * sinLatitude * sinLatitude));
        var across = (normal + altitudeM) * cosLatitude;
        return new(across * cosLongitude, across * sinLongitude, ((normal * (1 - EccentricitySquare)) + altitudeM) * sinLatitude);
    }

    private static (double Sin, double Cos) Unit(double sin, double cos)
    {
        var length = Math.Sqrt((sin * sin) + (cos * cos));
        return length > 0 ? (sin / length, cos / length) : (0, 1);
    }
}
