using NotebookKit.Charts.Engineering;
using NotebookKit.Provenance;
using NotebookKit.Quantities;

namespace NotebookKit.Charts.Results;

/// <summary>Charts of a flight: <c>flight.Chart()</c>.</summary>
public static class FlightCharts
{
    /// <summary>Height and speed against time, with the end of the jet and the top; what happens while it runs is on the chart of
    /// thrust.</summary>
    /// <param name="flight">The flight.</param>
    /// <exception cref="InvalidDesignException">The flight did not reach its end.</exception>
    public static EngineeringChart Chart(this VerticalFlightResult flight) =>
        HeightSpeedChart.Draw(Reached(flight).Time, flight.Height, flight.Speed,
            EventLines.From(flight.Events.Where(e => e.Name is "end of jet" or "apogee")))
            with { Title = $"Height and speed, {flight.Flight.Name}" };

    /// <summary>Thrust against time while the jet runs.</summary>
    /// <param name="flight">The flight.</param>
    /// <exception cref="InvalidDesignException">The flight did not reach its end.</exception>
    public static EngineeringChart ChartThrust(this VerticalFlightResult flight)
        => Reached(flight).Curve.Chart() with { Title = $"Thrust, {flight.Flight.Name}" };

    /// <summary>Acceleration against time while the jet runs and a little after; what a logger should see.</summary>
    /// <param name="flight">The flight.</param>
    /// <exception cref="InvalidDesignException">The flight did not reach its end.</exception>
    public static EngineeringChart ChartAcceleration(this VerticalFlightResult flight)
    {
        var last = 2 * Reached(flight).EndOfJet.Time.Seconds;
        var shown = Enumerable.Range(0, flight.Time.Count).Where(i => flight.Time[i] <= last).ToList();
        Series Early(Series column) => column with { Values = [.. shown.Select(i => column[i])] };
        return LineChart.Draw($"Acceleration, {flight.Flight.Name}", Early(flight.Time), Early(flight.Acceleration)) with
        {
            Events = EventLines.From(flight.Events.Where(e => e.Time.Seconds <= last)),
        };
    }

    // A curve that stops half-way would look like a flight.
    private static VerticalFlightResult Reached(VerticalFlightResult flight)
    {
        ArgumentNullException.ThrowIfNull(flight);
        if (flight.Status == ResultStatus.Failed) throw new InvalidDesignException(flight.Title, flight.Findings);
        return flight;
    }
}
