using NotebookKit.Numerics;

namespace NotebookKit.Flight.Dispersion;

/// <summary>The day of one flight of a dispersion, drawn from its seed and its number alone.</summary>
/// <param name="WindSpeed">Factor on the wind's speed [-].</param>
/// <param name="WindTurn">Turn of the wind, clockwise [rad].</param>
/// <param name="TiltNorth">Tilt of the rail to the north [rad].</param>
/// <param name="TiltEast">Tilt of the rail to the east [rad].</param>
internal readonly record struct DayDraw(double WindSpeed, double WindTurn, double TiltNorth, double TiltEast)
{
    public const int Count = 4;

    /// <summary>Names and units of the columns, in order.</summary>
    public static IReadOnlyList<(string Name, string Unit)> Columns { get; } =
        [("Wind speed", "factor"), ("Wind direction", "°"), ("Rail tilt to north", "°"), ("Rail tilt to east", "°")];

    /// <summary>Draws the day of one flight; variables 6 to 9 of it.</summary>
    public static DayDraw Of(in DaySpread spread, SeededSamples samples, long flight)
    {
        var variables = new FlightVariables(samples, flight, 0);
        return new(
            Math.Max(0, 1 + variables.Normal(6, spread.WindSpeed)), variables.Normal(7, spread.WindTurn),
            variables.Normal(8, spread.Tilt), variables.Normal(9, spread.Tilt));
    }

    public void CopyTo(Span<double> row)
    {
        const double Degrees = 180 / Math.PI;
        (row[0], row[1], row[2], row[3]) = (WindSpeed, WindTurn * Degrees, TiltNorth * Degrees, TiltEast * Degrees);
    }
}
