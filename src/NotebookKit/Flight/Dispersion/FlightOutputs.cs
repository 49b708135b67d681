using NotebookKit.Flight.Motion;

namespace NotebookKit.Flight.Dispersion;

/// <summary>What is kept of one flight of a dispersion.</summary>
internal static class FlightOutputs
{
    public const int Apogee = 0, ApogeeTime = 1, MaximumSpeed = 2, MaximumMach = 3, DynamicPressure = 4, ExitSpeed = 5, ExitAngle = 6,
        OpeningSpeed = 7, LandingSpeed = 8, East = 9, North = 10, LandingTime = 11, Count = 12;

    /// <summary>Names and units of the columns, in order.</summary>
    public static IReadOnlyList<(string Name, string Unit)> Columns { get; } =
    [
        ("Apogee above pad", "m"), ("Time of apogee", "s"), ("Maximum speed", "m/s"), ("Maximum Mach number", "-"),
            ("Maximum dynamic pressure", "kPa"),
        ("Speed off the rail", "m/s"), ("Angle of attack off the rail", "°"), ("Speed at the canopy's opening", "m/s"),
            ("Speed at the ground", "m/s"),
        ("Landing east of pad", "m"), ("Landing north of pad", "m"), ("Time to the ground", "s"),
    ];

    /// <summary>Fills a row; NaN throughout where the flight failed, NaN for an opening that didn't happen.</summary>
    public static void Write(in FlightMarks marks, Span<double> row)
    {
        if (marks.Failed || !marks.IsPastApogee || !marks.HasLanded)
        {
            row.Fill(double.NaN);
            return;
        }

        ReadOnlySpan<double> values =
        [
            marks.ApogeeM, marks.ApogeeTime, marks.FastestSpeed, marks.MaximumMach, marks.HardestPa / 1000, marks.ExitSpeed,
                marks.ExitAngle * 180 / Math.PI,
            marks.OpeningSpeed, marks.LandingSpeed, marks.LandingAt.Y, marks.LandingAt.X, marks.LandingTime,
        ];
        values.CopyTo(row);
    }
}
