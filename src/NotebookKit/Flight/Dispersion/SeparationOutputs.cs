using NotebookKit.Flight.Motion;

namespace NotebookKit.Flight.Dispersion;

/// <summary>What is kept of separation of two stages and of the booster that comes down alone; follows on the sustainer's
/// columns.</summary>
internal static class SeparationOutputs
{
    public const int Time = FlightOutputs.Count, East = Time + 6, North = Time + 7, Count = 9;

    /// <summary>Names and units of the columns, in order.</summary>
    public static IReadOnlyList<(string Name, string Unit)> Columns { get; } =
    [
        ("Time the stages separate", "s"), (
            "Height of separation", "m"), ("Speed of separation", "m/s"), ("Booster's apogee above pad", "m"),
        ("Booster's speed at the canopy's opening", "m/s"), ("Booster's speed at the ground", "m/s"),
            ("Booster's landing east of pad", "m"),
        ("Booster's landing north of pad", "m"), ("Booster's time to the ground", "s"),
    ];

    /// <summary>Fills what follows on the sustainer's columns; NaN for the booster where its flight failed.</summary>
    public static void Write(in AirStart parting, in FlightMarks booster, Span<double> row)
    {
        row.Fill(double.NaN);
        (row[0], row[1], row[2]) = (parting.Time, -parting.Position.Z, parting.Velocity.Length);
        if (booster.Failed || !booster.IsPastApogee || !booster.HasLanded) return;
        ReadOnlySpan<double> values =
            [booster.ApogeeM, booster.OpeningSpeed, booster.LandingSpeed, booster.LandingAt.Y, booster.LandingAt.X, booster.LandingTime];
        values.CopyTo(row[3..]);
    }
}
