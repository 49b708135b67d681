using NotebookKit.Numerics;

namespace NotebookKit.Flight.Dispersion;

/// <summary>What one flight of a dispersion differs by, drawn from its seed and its number alone.</summary>
internal readonly struct FlightInputs
{
    public const int Count = 13;

    private const double Cut = 4;

    private FlightInputs(double pressure, double water, double thrust, double drag, double mass, double centreM, double windSpeed, double windTurn,
        double tiltNorth, double tiltEast, double cant, double timerS, double canopy) =>
        (Pressure, Water, Thrust, Drag, Mass, CentreM, WindSpeed, WindTurn, TiltNorth, TiltEast, Cant, TimerS, Canopy) =
        (pressure, water, thrust, drag, mass, centreM, windSpeed, windTurn, tiltNorth, tiltEast, cant, timerS, canopy);

    /// <summary>Names and units of the columns, in order.</summary>
    public static IReadOnlyList<(string Name, string Unit)> Columns { get; } =
    [
        ("Charge pressure", "factor"), ("Water fraction", "points"), ("Thrust", "factor"), ("Drag", "factor"), ("Dry mass", "factor"),
        ("Centre of gravity", "mm"), ("Wind speed", "factor"), ("Wind direction", "°"), ("Rail tilt to north", "°"), ("Rail tilt to east", "°"),
        ("Fin cant", "°"), ("Timer", "s"), ("Canopy drag", "factor"),
    ];

    public double Pressure { get; }

    public double Water { get; }

    public double Thrust { get; }

    public double Drag { get; }

    public double Mass { get; }

    public double CentreM { get; }

    public double WindSpeed { get; }

    public double WindTurn { get; }

    public double TiltNorth { get; }

    public double TiltEast { get; }

    public double Cant { get; }

    public double TimerS { get; }

    public double Canopy { get; }

    /// <summary>Draws the inputs of one flight.</summary>
    public static FlightInputs Draw(in SpreadNumbers spread, SeededSamples samples, long flight)
    {
        double Normal(int variable, double deviation) =>
            deviation == 0 ? 0 : deviation * Math.Clamp(samples.Normal(flight, variable), -Cut, Cut);
        double Even(int variable, double low, double high) => low == high ? low : low + ((high - low) * samples.Uniform(flight, variable));

        // A factor may not reach zero, however wide its spread: a hundredth is far outside anything that flies.
        double Factor(int variable, double deviation) => Math.Max(0.01, 1 + Normal(variable, deviation));
        return new(
            Factor(0, spread.Pressure), Normal(1, spread.Water), Factor(2, spread.Thrust),
            spread.DragLow < spread.DragHigh ? Even(3, spread.DragLow, spread.DragHigh) : Factor(3, spread.Drag),
            Factor(4, spread.Mass), Normal(5, spread.CentreM), Math.Max(0, 1 + Normal(6, spread.WindSpeed)), Normal(7, spread.WindTurn),
            Normal(8, spread.Tilt), Normal(9, spread.Tilt), Normal(10, spread.Cant), Normal(11, spread.TimerS),
            Even(12, spread.CanopyLow, spread.CanopyHigh));
    }

    public void CopyTo(Span<double> row)
    {
        const double Degrees = 180 / Math.PI;
        ReadOnlySpan<double> values =
        [
            Pressure, Water * 100, Thrust, Drag, Mass, CentreM * 1000, WindSpeed, WindTurn * Degrees, TiltNorth * Degrees, TiltEast * Degrees,
            Cant * Degrees, TimerS, Canopy,
        ];
        values.CopyTo(row);
    }
}
