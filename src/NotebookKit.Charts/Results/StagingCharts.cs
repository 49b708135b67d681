using NotebookKit.Charts.Engineering;
using NotebookKit.Charts.Marks;
using NotebookKit.Charts.Notes;
using NotebookKit.Flight.Staging;
using NotebookKit.Provenance;
using NotebookKit.Quantities;

namespace NotebookKit.Charts.Results;

/// <summary>Charts of two stages: <c>flight.Chart()</c>, <c>flight.ChartSpeed()</c>, <c>cost.Chart()</c>.</summary>
public static class StagingCharts
{
    /// <summary>Height of both together, of the sustainer and of the booster against time, from pad to ground.</summary>
    /// <param name="flight">The flight.</param>
    /// <exception cref="InvalidDesignException">The flight did not reach its end.</exception>
    public static EngineeringChart Chart(this TwoStageResult flight)
    {
        var (up, down) = (Reached(flight).Sustainer, flight.Booster);
        return Draw(flight, new Curve(flight.Ascent.Time, flight.Ascent.Height), new Curve(up.Time, up.Height),
            new Curve(down.Time, down.Height)) with
        {
            Events = [new EventLine(flight.SeparationTime.Seconds, "stages separate"), new EventLine(up.ApogeeTime.Seconds, "apogee")],
        };
    }

    /// <summary>Speed of both together, of the sustainer and of the booster against time up to the sustainer's top.</summary>
    /// <param name="flight">The flight.</param>
    /// <exception cref="InvalidDesignException">The flight did not reach its end.</exception>
    public static EngineeringChart ChartSpeed(this TwoStageResult flight)
    {
        var (up, down) = (Reached(flight).Sustainer, flight.Booster);
        var top = up.ApogeeTime.Seconds;
        return Draw(flight, new Curve(flight.Ascent.Time, flight.Ascent.Speed), UpTo(top, up.Time, up.Speed),
            UpTo(top, down.Time, down.Speed)) with
        {
            Events = [new EventLine(flight.SeparationTime.Seconds, "stages separate"),
                new EventLine(up.Figures.EndOfJet.Seconds, "end of the sustainer's jet")],
        };
    }

    /// <summary>Height of the sustainer's top against the delay between the stages; a gap where the flight fails.</summary>
    /// <param name="cost">What waiting costs.</param>
    /// <exception cref="InvalidDesignException">No delay has an answer.</exception>
    public static EngineeringChart Chart(this DelayCost cost)
    {
        ArgumentNullException.ThrowIfNull(cost);
        return LineChart.Draw("Apogee against delay between the stages", cost.Delay, cost.Apogee);
    }

    private static EngineeringChart Draw(TwoStageResult flight, Curve together, Curve sustainer, Curve booster) =>
        new EngineeringChart(flight.Title, Axis.For(together.X), Axis.For(together.Y))
        {
            Marks = [together with { Name = "both together", Slot = 7 }, sustainer with { Name = "sustainer", Slot = 0 },
                booster with { Name = "booster", Slot = 1 }],
        }.Checked();

    private static Curve UpTo(double last, Series time, Series values)
    {
        var shown = Math.Max(2, time.Values.Count(t => t <= last));
        return new Curve(time with { Values = [.. time.Values.Take(shown)] }, values with { Values = [.. values.Values.Take(shown)] });
    }

    // A curve that stops half-way would look like a flight.
    private static TwoStageResult Reached(TwoStageResult flight)
    {
        ArgumentNullException.ThrowIfNull(flight);
        if (flight.Status == ResultStatus.Failed) throw new InvalidDesignException(flight.Title, flight.Findings);
        return flight;
    }
}
