using NotebookKit.Flight.RigidBody;
using NotebookKit.Quantities;
using UnitsNet;

namespace NotebookKit.Tests.Published.Flight;

/// <summary>
/// The ten atmospheric check cases of NASA/TM-2015-218675 without thrust, set up as its volume II prints them. Cases 2 and 3 start at
/// 30 000 ft as the text and the published time histories have it; their tables print 0.
/// </summary>
internal static class CheckCases
{
    private static readonly Length High = Length.FromFeet(30_000);

    private static FreeBody Ball { get; } = new("ball", Mass.FromSlugs(1), Slug(3.6), Slug(3.6), Slug(3.6))
    {
        ReferenceArea = Area.FromSquareFeet(0.1963495),
        Drag = 0.1,
    };

    private static FreeBody Brick { get; } = new("brick", Mass.FromSlugs(0.155404754), Slug(0.001894220), Slug(0.006211019),
        Slug(0.007194665))
    {
        ReferenceArea = Area.FromSquareFeet(0.22222),
        Span = Length.FromFeet(0.33333),
        Chord = Length.FromFeet(0.66667),
    };

    private static BodyStart Tumbling { get; } = new()
    {
        Altitude = High,
        RollRate = RotationalSpeed.FromDegreesPerSecond(10),
        PitchRate = RotationalSpeed.FromDegreesPerSecond(20),
        YawRate = RotationalSpeed.FromDegreesPerSecond(30),
    };

    public static FreeBodyFlight Case(int number) => number switch
    {
        1 => On(Earth.Ellipsoid, Ball with { Drag = 0 }, new() { Altitude = High }),
        2 => On(Earth.Ellipsoid, Brick, Tumbling),
        3 => On(Earth.Ellipsoid, Brick with { RollDamping = -1, PitchDamping = -1, YawDamping = -1 }, Tumbling),
        4 => On(Earth.Round with { Turns = false }, Ball, Tumbling),
        5 => On(Earth.Round, Ball, Tumbling),
        6 => On(Earth.Ellipsoid, Ball, new() { Altitude = High }),
        7 => Case(6) with { Wind = new(Speed.FromFeetPerSecond(20), 270.Degrees()) },
        8 => Case(6) with { Wind = new(Speed.FromFeetPerSecond(-20),
            270.Degrees()) { PerKilometre = Speed.FromFeetPerSecond(0.003 / 0.3048 * 1000) } },
        9 => On(Earth.Ellipsoid, Ball, new() { East = 304.8.MetresPerSecond(), Down = (-304.8).MetresPerSecond(), Yaw = 90.Degrees(),
            RatesOverGround = true }),
        10 => On(Earth.Ellipsoid, Ball, new() { North = 304.8.MetresPerSecond(), Down = (-304.8).MetresPerSecond(),
            RatesOverGround = true }),
        _ => throw new ArgumentOutOfRangeException(nameof(number), number, "there are ten cases."),
    };

    private static FreeBodyFlight On(Earth earth, FreeBody body, BodyStart start) => new(body, start) { Earth = earth };

    private static MassMomentOfInertia Slug(double slugFeet2) => MassMomentOfInertia.FromSlugSquareFeet(slugFeet2);
}
