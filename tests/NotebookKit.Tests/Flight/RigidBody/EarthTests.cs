using CsCheck;
using NotebookKit.Flight.RigidBody;
using NotebookKit.Provenance;
using UnitsNet;

namespace NotebookKit.Tests.Flight.RigidBody;

public class EarthTests
{
    private static readonly EllipsoidEarth Ellipsoid = new(6_378_137, 1 / 298.257223563, 3.986004418e14, 0.00108262982, 7.292115e-5);

    private static readonly RoundEarth Sphere = new(6_371_007.1809, 3.986004418e14, 7.292115e-5);

    [Fact]
    public void A_position_on_the_ellipsoid_gives_back_its_latitude_longitude_and_altitude() =>
        Gen.Select(Gen.Double[-1.57, 1.57], Gen.Double[-3.1, 3.1], Gen.Double[-500, 30_000]).Sample((latitude, longitude, altitude) =>
        {
            var place = Ellipsoid.At(Ellipsoid.Position(latitude, longitude, altitude));
            Tolerance.Absolute(altitude, place.AltitudeM, 5e-9);
            Tolerance.Absolute(latitude, place.Angles.Latitude, 1e-12);
            Tolerance.Absolute(longitude, place.Angles.CelestialLongitude, 1e-12);
        });

    [Fact]
    public void The_local_directions_are_at_right_angles_and_right_handed() =>
        Gen.Select(Gen.Double[-1.57, 1.57], Gen.Double[-3.1, 3.1]).Sample((latitude, longitude) =>
        {
            foreach (var place in new[] { Ellipsoid.At(Ellipsoid.Position(latitude, longitude, 100)),
                Sphere.At(Sphere.Position(latitude, longitude, 100)) })
                Tolerance.Absolute(0, (Vector.Cross(place.North, place.East) - place.Down).Length, 1e-12);
        });

    [Fact]
    public void Gravitation_less_the_centrifugal_part_is_the_normal_gravity_of_the_equator()
    {
        // Moritz, Geodetic Reference System 1980 (unverified): 9.7803267715 m/s2 at the equator. J2 alone leaves 1e-5 of it out.
        var gravity = Earth.Ellipsoid.Gravitation(Angle.Zero, Length.Zero).MetersPerSecondSquared - (7.292115e-5 * 7.292115e-5 * 6_378_137);
        Tolerance.Relative(9.7803267715, gravity, 1e-5);
    }

    [Fact]
    public void The_ellipsoid_without_flattening_and_J2_is_the_sphere()
    {
        var round = new EllipsoidEarth(6_371_007.1809, 0, 3.986004418e14, 0, 0);
        var at = Sphere.Position(0.7, 0.3, 1234);
        Tolerance.Absolute(0, (round.Gravitation(at) - Sphere.Gravitation(at)).Length, 1e-14);
        Tolerance.Absolute(1234, round.At(at).AltitudeM, 5e-9);
    }

    [Fact]
    public void Flat_ground_pulls_down_the_same_everywhere()
    {
        var earth = new FlatEarth(9.80665);
        Assert.Equal(new Vector(0, 0, 9.80665), earth.Gravitation(new(1, 2, -3000)));
        Assert.Equal(3000, earth.At(new(1, 2, -3000)).AltitudeM);
    }

    [Fact]
    public void A_gravity_no_planet_of_ours_has_is_refused() =>
        Assert.Contains("gravity is 31 m/s²", Assert.Throws<OutOfRangeException>(() =>
            Earth.FlatWith(Acceleration.FromMetersPerSecondSquared(31))).Message, StringComparison.Ordinal);

    [Fact]
    public void At_the_pole_the_ground_doesnt_break_down()
    {
        var place = Ellipsoid.At(Ellipsoid.Position(Math.PI / 2, 0, 50));
        Tolerance.Absolute(50, place.AltitudeM, 1e-8);
        Tolerance.Absolute(0, (Vector.Cross(place.North, place.East) - place.Down).Length, 1e-12);
    }
}
