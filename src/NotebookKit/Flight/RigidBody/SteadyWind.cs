using NotebookKit.Numerics.Space;
using NotebookKit.Provenance;
using NotebookKit.Quantities;
using UnitsNet;

namespace NotebookKit.Flight.RigidBody;

/// <summary>A wind that grows in proportion to altitude: at zero altitude so much, and so much more with every kilometre.</summary>
/// <param name="Speed">Wind speed at zero altitude, negative where it blows the other way there; −100 to 100 m/s.</param>
/// <param name="From">Where it blows from, clockwise from north; −360 to 360°.</param>
public sealed record SteadyWind(Speed Speed, Angle From)
{
    /// <summary>No wind.</summary>
    public static SteadyWind Calm { get; } = new(Speed.Zero, Angle.Zero);

    /// <summary>More wind with every kilometre of altitude; −50 to 50 m/s.</summary>
    public Speed PerKilometre { get; init; } = Speed.Zero;

    /// <summary>Everything that is wrong with the wind.</summary>
    public IReadOnlyList<Finding> Validate()
    {
        Finding?[] findings =
        [
            new ValidRange<Speed>((-100).MetresPerSecond(), 100.MetresPerSecond()).Find(Speed, "wind speed", "Check the unit."),
            new ValidRange<Speed>((-50).MetresPerSecond(), 50.MetresPerSecond()).Find(PerKilometre, "growth of the wind",
                "Check the unit."),
            new ValidRange<Angle>((-360).Degrees(), 360.Degrees()).Find(From, "wind direction", "Clockwise from north."),
        ];
        return findings.OfType<Finding>().ToArray();
    }

    /// <summary>Velocity of the air to north, east and down at zero altitude [m/s], and its growth with altitude [1/s].</summary>
    internal (Vector AtZeroMps, Vector PerMetre) Compile()
    {
        var (sin, cos) = Math.SinCos(From.Radians);
        var towards = new Vector(-cos, -sin, 0);
        return (Speed.MetersPerSecond * towards, PerKilometre.MetersPerSecond / 1000 * towards);
    }
}
