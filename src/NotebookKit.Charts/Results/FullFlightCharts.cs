using NotebookKit.Charts.Engineering;
using NotebookKit.Charts.Marks;
using NotebookKit.Charts.Notes;
using NotebookKit.Flight;
using NotebookKit.Provenance;
using NotebookKit.Quantities;

namespace NotebookKit.Charts.Results;

/// <summary>Charts of a flight from pad to ground: <c>flight.Chart()</c>, <c>flight.ChartTrack()</c>, <c>flight.ChartPath()</c>.</summary>
public static class FullFlightCharts
{
    /// <summary>Height and speed over ground against time.</summary>
    /// <param name="flight">The flight.</param>
    /// <exception cref="InvalidDesignException">The flight failed.</exception>
    public static EngineeringChart Chart(this FlightResult flight) =>
        HeightSpeedChart.Draw(Reached(flight).Time, flight.Height, flight.Speed, Events(flight)) with { Title = $"Height and speed, {flight.Vehicle.Name}" };

    /// <summary>The track seen from above, with the edge of the site's field where it has one.</summary>
    /// <param name="flight">The flight.</param>
    /// <exception cref="InvalidDesignException">The flight failed.</exception>
    public static EngineeringChart ChartTrack(this FlightResult flight)
    {
        var chart = TrackChart.Draw(Reached(flight).East, flight.North) with { Title = $"{flight.Vehicle.Name} seen from above", Remark = $"lands {flight.Drift.Show()} from the pad" };
        return flight.Site.Field is { } field ? chart.With(Edge(field, flight)).Checked() : chart;
    }

    /// <summary>The path in space with its shadow on the ground.</summary>
    /// <param name="flight">The flight.</param>
    /// <exception cref="InvalidDesignException">The flight failed.</exception>
    public static EngineeringChart ChartPath(this FlightResult flight) =>
        FlightPathChart.Draw(Reached(flight).East, flight.North, flight.Height) with { Title = $"Path of {flight.Vehicle.Name}" };

    /// <summary>Static margin against time up to the top.</summary>
    /// <param name="flight">The flight.</param>
    /// <param name="limits">Margin it is held to; 1 to 4 calibres where none is given.</param>
    /// <exception cref="InvalidDesignException">The flight failed.</exception>
    public static EngineeringChart ChartMargin(this FlightResult flight, StabilityLimits? limits = null)
    {
        var stability = Reached(flight).Stability(limits);
        return stability.Chart() with { Events = [.. Events(flight).Where(e => e.At <= stability.Along.Values[^1])] };
    }

    /// <summary>Dynamic pressure at the left and felt acceleration at the right up to the top: what fins and gear must stand.</summary>
    /// <param name="flight">The flight.</param>
    /// <exception cref="InvalidDesignException">The flight failed.</exception>
    public static EngineeringChart ChartLoads(this FlightResult flight)
    {
        var top = Reached(flight).ApogeeTime.Seconds;
        var count = Math.Max(2, flight.Time.Values.Count(t => t <= top));
        Series Cut(Series series) => series with { Values = [.. series.Values.Take(count)] };
        return TwinAxesChart.Draw($"Loads on {flight.Vehicle.Name}", Cut(flight.Time), Cut(flight.DynamicPressure), Cut(flight.Load), [.. Events(flight).Where(e => e.At <= top)]);
    }

    /// <summary>Angle of attack at the left and roll rate at the right against time; of a flight in six degrees of freedom.</summary>
    /// <param name="flight">The flight.</param>
    /// <exception cref="InvalidDesignException">The flight failed, or was one of three degrees of freedom.</exception>
    public static EngineeringChart ChartAttitude(this FlightResult flight)
    {
        if (Reached(flight).Attitude is not { } attitude)
            throw new InvalidDesignException(flight.Title, [Finding.Error("A flight in three degrees of freedom has no attitude; fly it with FlySixDegrees.")]);
        return TwinAxesChart.Draw($"Attitude of {flight.Vehicle.Name}", attitude.Time, attitude.AngleOfAttack, attitude.RollRate, [.. Events(flight).Where(e => e.At <= attitude.Time.Values[^1])]);
    }

    private static List<EventLine> Events(FlightResult flight)
    {
        var figures = flight.Figures;
        List<EventLine> events = [new(figures.RailExitTime.Seconds, "off the rail"), new(figures.ApogeeTime.Seconds, "apogee")];
        if (figures.OpeningTime is { } opening) events.Add(new(opening.Seconds, "canopy out"));
        return events;
    }

    private static Curve Edge(FlyingField field, FlightResult flight)
    {
        var (east, north) = field.Radius is { } radius
            ? new ScatterEllipse("", 0, 0, radius.Meters, radius.Meters, 0).Outline()
            : ([.. field.Corners.Append(field.Corners[0]).Select(c => c.East.Meters)], [.. field.Corners.Append(field.Corners[0]).Select(c => c.North.Meters)]);
        return new Curve(flight.East with { Values = east }, flight.North with { Values = north }) { Name = "edge of the field", Slot = 4, Stroke = Stroke.Solid };
    }

    // A curve that stops half-way would look like a flight.
    private static FlightResult Reached(FlightResult flight)
    {
        ArgumentNullException.ThrowIfNull(flight);
        if (flight.Status == ResultStatus.Failed) throw new InvalidDesignException(flight.Title, flight.Findings);
        return flight;
    }
}
