using NotebookKit.Provenance;
using NotebookKit.Quantities.Numbers;
using UnitsNet;

namespace NotebookKit.Flight.RigidBody;

/// <summary>
/// The ground under a flight and its gravitation. Flat ground serves a club's field; the other two are there because published check cases
/// use them.
/// Source of the numbers: World Geodetic System 1984, as NASA/TM-2015-218675, vol. II, table 73, prints them.
/// </summary>
public sealed record Earth
{
    private const double EquatorM = 6_378_137.0;
    private const double Flattening = 1 / 298.257223563;
    private const double Attraction = 3.986004418e14;
    private const double J2 = 0.00108262982;
    private const double SpinRadPerS = 7.292115e-5;
    private const double MeanRadiusM = 6_371_007.1809;

    private static readonly Source CheckCases = new("D. G. Murri, E. B. Jackson, R. O. Shelton",
        "Check-cases for verification of 6-degree-of-freedom flight vehicle simulations, NASA/TM-2015-218675, vol. II", 2015, "table 73");

    private readonly Shape _shape;
    private readonly double _gravity;

    private Earth(string name, Shape shape, double gravity, Source source)
    {
        Name = name;
        _shape = shape;
        _gravity = gravity;
        Source = source;
    }

    private enum Shape
    {
        Flat,
        Round,
        Ellipsoid,
    }

    /// <summary>Flat ground at rest under the standard gravity: what a flight to a kilometre needs.</summary>
    public static Earth Flat { get; } = FlatWith(Acceleration.FromMetersPerSecondSquared(StandardConstants.Gravity));

    /// <summary>A sphere of 6371.007 km that attracts like a point mass.</summary>
    public static Earth Round { get; } = new("round Earth", Shape.Round, 0, CheckCases);

    /// <summary>The ellipsoid of WGS 84 with the attraction of its flattening, J2.</summary>
    public static Earth Ellipsoid { get; } = new("WGS 84 ellipsoid with J2", Shape.Ellipsoid, 0, CheckCases);

    /// <summary>What it is called.</summary>
    public string Name { get; }

    /// <summary>Where its numbers come from.</summary>
    public Source Source { get; }

    /// <summary>Whether ground and air turn once in a sidereal day; flat ground never does.</summary>
    public bool Turns { get; init; } = true;

    /// <summary>How fast ground and air turn in the inertial frame.</summary>
    public RotationalSpeed Spin => RotationalSpeed.FromRadiansPerSecond(SpinValue);

    internal bool IsFlat => _shape == Shape.Flat;

    private double SpinValue => Turns && !IsFlat ? SpinRadPerS : 0;

    /// <summary>Flat ground with a gravity of one's own.</summary>
    /// <param name="gravity">Gravity; 0 to 30 m/s².</param>
    /// <exception cref="OutOfRangeException">The gravity is outside.</exception>
    public static Earth FlatWith(Acceleration gravity) => new("flat ground", Shape.Flat,
        new ValidRange<Acceleration>(Acceleration.Zero, Acceleration.FromMetersPerSecondSquared(30))
            .Check(gravity, "gravity", "It is 9.78 to 9.83 m/s² on the ground.").MetersPerSecondSquared,
        Source.CommonPractice("flat ground under constant gravity for a flight of a kilometre"));

    /// <summary>The attraction of its mass alone, without what its turning takes away. Source: see <see cref="Source"/>.</summary>
    /// <param name="latitude">Latitude, geodetic; −90 to 90°.</param>
    /// <param name="altitude">Altitude; −5 km to 1000 km.</param>
    /// <exception cref="OutOfRangeException">An input is outside.</exception>
    public Acceleration Gravitation(Angle latitude, Length altitude)
    {
        BodyStart.Latitudes.Check(latitude, "latitude", "Geodetic latitude, north positive.");
        BodyStart.Altitudes.Check(altitude, "altitude", "The model is for the neighbourhood of the ground.");
        var task = new AttractionAt(latitude.Radians, altitude.Meters);
        With(ref task);
        return Acceleration.FromMetersPerSecondSquared(task.Result);
    }

    /// <summary>For example "WGS 84 ellipsoid with J2, turning".</summary>
    public override string ToString() => IsFlat ? Name : $"{Name}, {(Turns ? "turning" : "at rest")}";

    /// <summary>Hands the Earth's equations to a task, bound at compile time.</summary>
    internal void With<TTask>(ref TTask task)
        where TTask : IEarthTask
    {
        switch (_shape)
        {
            case Shape.Flat:
                task.Run(new FlatEarth(_gravity));
                break;
            case Shape.Round:
                task.Run(new RoundEarth(MeanRadiusM, Attraction, SpinValue));
                break;
            default:
                task.Run(new EllipsoidEarth(EquatorM, Flattening, Attraction, J2, SpinValue));
                break;
        }
    }

    private struct AttractionAt(double latitude, double altitudeM) : IEarthTask
    {
        public double Result { get; private set; }

        public void Run<TEarth>(TEarth earth)
            where TEarth : struct, IEarth =>
            Result = earth.Gravitation(earth.Position(latitude, 0, altitudeM)).Length;
    }
}
