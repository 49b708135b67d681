using NotebookKit.Numerics;

namespace NotebookKit.Flight.Dispersion;

/// <summary>What one vehicle, or one stage, of one flight differs by, drawn from the seed and the flight's number alone.</summary>
/// <param name="Pressure">Factor on the fill pressure [-].</param>
/// <param name="Water">Water fraction on top of the nominal one [-].</param>
/// <param name="Thrust">Factor on the thrust [-].</param>
/// <param name="Drag">Factor on the drag [-].</param>
/// <param name="Mass">Factor on the dry mass [-].</param>
/// <param name="CentreM">Shift of the centre of gravity aft [m].</param>
/// <param name="Cant">Cant of every fin [rad].</param>
/// <param name="TimerS">Time on top of the timer's [s].</param>
/// <param name="Canopy">Factor on the canopy's drag [-].</param>
internal readonly record struct StageDraw(
    double Pressure, double Water, double Thrust, double Drag, double Mass, double CentreM, double Cant, double TimerS, double Canopy)
{
    public const int Count = 9;

    /// <summary>Variables that a stage takes of a flight's random numbers; the day's are among the first stage's.</summary>
    public const int Variables = 13;

    /// <summary>Names and units of the columns, in order.</summary>
    public static IReadOnlyList<(string Name, string Unit)> Columns { get; } =
    [
        ("Fill pressure", "factor"), ("Water fraction", "points"), ("Thrust", "factor"), ("Drag", "factor"), ("Dry mass", "factor"),
        ("Centre of gravity", "mm"), ("Fin cant", "°"), ("Timer", "s"), ("Canopy drag", "factor"),
    ];

    /// <summary>Draws a stage of one flight.</summary>
    /// <param name="spread">How far it varies.</param>
    /// <param name="samples">Samples of the seed.</param>
    /// <param name="flight">Number of the flight.</param>
    /// <param name="stage">Number of the stage; the first is 0.</param>
    public static StageDraw Of(in StageSpread spread, SeededSamples samples, long flight, int stage)
    {
        var variables = new FlightVariables(samples, flight, stage * Variables);
        return new(
            variables.Factor(0, spread.Pressure), variables.Normal(1, spread.Water), variables.Factor(2, spread.Thrust),
            spread.DragLow < spread.DragHigh ? variables.Even(3, spread.DragLow, spread.DragHigh) : variables.Factor(3, spread.Drag),
            variables.Factor(4, spread.Mass), variables.Normal(5, spread.CentreM), variables.Normal(10, spread.Cant),
                variables.Normal(11, spread.TimerS),
            variables.Even(12, spread.CanopyLow, spread.CanopyHigh));
    }

    public void CopyTo(Span<double> row)
    {
        ReadOnlySpan<double> values = [Pressure, Water * 100, Thrust, Drag, Mass, CentreM * 1000, Cant * 180 / Math.PI, TimerS, Canopy];
        values.CopyTo(row);
    }
}
