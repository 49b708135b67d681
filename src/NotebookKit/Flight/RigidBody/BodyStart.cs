using NotebookKit.Provenance;
using NotebookKit.Quantities;
using UnitsNet;

namespace NotebookKit.Flight.RigidBody;

/// <summary>Where and how a rigid body starts. Its velocity is over the ground; its attitude turns by yaw, pitch, roll from north, east,
/// down.</summary>
public sealed record BodyStart
{
    internal static readonly ValidRange<Angle> Latitudes = new((-90).Degrees(), 90.Degrees());

    internal static readonly ValidRange<Length> Altitudes = new((-5000).Metres(), 1_000_000.Metres());

    /// <summary>Latitude, geodetic, north positive; −90 to 90°.</summary>
    public Angle Latitude { get; init; } = Angle.Zero;

    /// <summary>Longitude, east positive; −360 to 360°.</summary>
    public Angle Longitude { get; init; } = Angle.Zero;

    /// <summary>Altitude above sphere, ellipsoid or flat ground; −500 m to 20 km.</summary>
    public Length Altitude { get; init; } = Length.Zero;

    /// <summary>Velocity to north; −2000 to 2000 m/s.</summary>
    public Speed North { get; init; } = Speed.Zero;

    /// <summary>Velocity to east; −2000 to 2000 m/s.</summary>
    public Speed East { get; init; } = Speed.Zero;

    /// <summary>Velocity downwards; −2000 to 2000 m/s.</summary>
    public Speed Down { get; init; } = Speed.Zero;

    /// <summary>Yaw, the first turn, about the downward axis; −360 to 360°.</summary>
    public Angle Yaw { get; init; } = Angle.Zero;

    /// <summary>Pitch, the second turn, nose up positive; −90 to 90°.</summary>
    public Angle Pitch { get; init; } = Angle.Zero;

    /// <summary>Roll, the third turn, right side down positive; −360 to 360°.</summary>
    public Angle Roll { get; init; } = Angle.Zero;

    /// <summary>Turning rate about the body's forward axis; −20 000 to 20 000 °/s.</summary>
    public RotationalSpeed RollRate { get; init; } = RotationalSpeed.Zero;

    /// <summary>Turning rate about the body's right-hand axis; −20 000 to 20 000 °/s.</summary>
    public RotationalSpeed PitchRate { get; init; } = RotationalSpeed.Zero;

    /// <summary>Turning rate about the body's downward axis; −20 000 to 20 000 °/s.</summary>
    public RotationalSpeed YawRate { get; init; } = RotationalSpeed.Zero;

    /// <summary>Whether the turning rates are given relative to the turning Earth; in the inertial frame where not.</summary>
    public bool RatesOverGround { get; init; }

    /// <summary>Everything that is wrong with the start.</summary>
    public IReadOnlyList<Finding> Validate()
    {
        var turns = new ValidRange<Angle>((-360).Degrees(), 360.Degrees());
        var speeds = new ValidRange<Speed>((-2000).MetresPerSecond(), 2000.MetresPerSecond());
        var rates = new ValidRange<RotationalSpeed>(RotationalSpeed.FromDegreesPerSecond(-20_000),
            RotationalSpeed.FromDegreesPerSecond(20_000));
        const string Fast = "Check the unit.";
        Finding?[] findings =
        [
            Latitudes.Find(Latitude, "latitude", "Geodetic latitude, north positive."),
            turns.Find(Longitude, "longitude", "East positive."),
            new ValidRange<Length>((-500).Metres(), 20_000.Metres()).Find(Altitude, "starting altitude",
                "The atmosphere is coded for this range."),
            speeds.Find(North, "velocity to north", Fast),
            speeds.Find(East, "velocity to east", Fast),
            speeds.Find(Down, "velocity downwards", Fast),
            turns.Find(Yaw, "yaw", "One turn is enough."),
            Latitudes.Find(Pitch, "pitch", "Beyond straight up or down turn the yaw by 180°."),
            turns.Find(Roll, "roll", "One turn is enough."),
            rates.Find(RollRate, "roll rate", Fast),
            rates.Find(PitchRate, "pitch rate", Fast),
            rates.Find(YawRate, "yaw rate", Fast),
        ];
        return findings.OfType<Finding>().ToArray();
    }
}
