using NotebookKit.Charts.Engineering;
using NotebookKit.Charts.Marks;
using NotebookKit.Charts.Notes;
using NotebookKit.Provenance;
using NotebookKit.Quantities;
using UnitsNet;

namespace NotebookKit.Charts.Results;

/// <summary>Charts of a flight from pad to ground: <c>flight.Chart()</c>, <c>flight.ChartPath()</c>, <c>flight.ChartTrack()</c>.</summary>
public static class FlightResultCharts
{
    /// <summary>Height and speed against time, with what happens on the way.</summary>
    /// <param name="flight">The flight.</param>
    /// <exception cref="InvalidDesignException">The flight did not reach its end.</exception>
    public static EngineeringChart Chart(this FlightResult flight)
    {
        var figures = Reached(flight).Figures;
        List<EventLine> events = [new(figures.EndOfJet.Seconds, "end of the jet"), new(figures.ApogeeTime.Seconds, "apogee")];
        if (figures.OpeningTime is { } opening) events.Add(new(opening.Seconds, "canopy out"));
        return HeightSpeedChart.Draw(flight.Time, flight.Height, flight.Speed, events)
            with { Title = $"Height and speed, {flight.Vehicle.Name}" };
    }

    /// <summary>The path in space with its shadow on the ground.</summary>
    /// <param name="flight">The flight.</param>
    /// <exception cref="InvalidDesignException">The flight did not reach its end.</exception>
    public static EngineeringChart ChartPath(this FlightResult flight) =>
        FlightPathChart.Draw(Reached(flight).East, flight.North, flight.Height) with { Title = $"Path in space, {flight.Vehicle.Name}" };

    /// <summary>The flight seen from above, with the edge of the field where there is one.</summary>
    /// <param name="flight">The flight.</param>
    /// <exception cref="InvalidDesignException">The flight did not reach its end.</exception>
    public static EngineeringChart ChartTrack(this FlightResult flight)
    {
        var chart = TrackChart.Draw(Reached(flight).East, flight.North)
            with { Title = $"Seen from above, {flight.Vehicle.Name}", Remark = flight.Site.Wind.Name };
        return flight.Site.Field is { } field ? chart.With(EdgeOf(field, flight.East, flight.North)) : chart;
    }

    /// <summary>Static margin against time while the jet runs and as long again: afterwards neither water nor gas leaves, and it hardly
    /// changes.</summary>
    /// <param name="flight">The flight.</param>
    /// <param name="limits">Margin it is held to; 1 to 4 calibres where none is given.</param>
    /// <exception cref="InvalidDesignException">The flight did not reach its end.</exception>
    public static EngineeringChart ChartMargin(this FlightResult flight, StabilityLimits? limits = null)
    {
        var stability = Reached(flight).Stability(limits);
        var figures = flight.Figures;
        List<EventLine> events = [new(figures.RailExitTime.Seconds, "off the rail"), new(figures.EndOfJet.Seconds, "end of the jet")];
        if (figures.WaterOut is { } water) events.Insert(1, new(water.Seconds, "water out"));
        var shown = Math.Max(2, stability.Abscissa.Values.Count(t => t <= 2 * figures.EndOfJet.Seconds));
        Series Early(Series column) => column with { Values = [.. column.Values.Take(shown)] };
        return MarginChart.Draw(Early(stability.Abscissa), Early(stability.Margin), stability.Limits.Minimum, events)
            with { Title = stability.Title };
    }

    /// <summary>Dynamic pressure at the left and felt acceleration at the right up to the top: what fins and gear must stand.</summary>
    /// <param name="flight">The flight.</param>
    /// <exception cref="InvalidDesignException">The flight did not reach its end.</exception>
    public static EngineeringChart ChartLoads(this FlightResult flight)
    {
        var top = Reached(flight).ApogeeTime.Seconds;
        var count = Math.Max(2, flight.Time.Values.Count(t => t <= top));
        Series Cut(Series series) => series with { Values = [.. series.Values.Take(count)] };
        return TwinAxesChart.Draw($"Loads on {flight.Vehicle.Name}", Cut(flight.Time), Cut(flight.DynamicPressure), Cut(flight.Load),
            [new(flight.Figures.RailExitTime.Seconds, "off the rail"), new(flight.Figures.EndOfJet.Seconds, "end of the jet")]);
    }

    /// <summary>Angle of attack at the left and, where it rolls, roll rate at the right against time, of six degrees of freedom.</summary>
    /// <param name="flight">The flight.</param>
    /// <param name="upTo">Time from release to draw to; above 0; the canopy's opening where none is given.</param>
    /// <exception cref="InvalidDesignException">The flight did not reach its end, or has no attitude.</exception>
    public static EngineeringChart ChartAttitude(this FlightResult flight, Duration? upTo = null)
    {
        if (Reached(flight).Attitude is not { } attitude)
            throw new InvalidDesignException(flight.Title, [Finding.Error("a flight in three degrees of freedom has no attitude; fly it "
                + "with FlySixDegrees.")]);
        var last = new ValidRange<Duration>(1.Milliseconds(), 3600.Seconds()).Check(upTo ?? 3600.Seconds(), "time to draw the attitude to",
            "It is counted from release.").Seconds;
        var shown = Math.Max(2, attitude.Time.Values.Count(t => t <= last));
        Series Early(Series column) => column with { Values = [.. column.Values.Take(shown)] };
        EventLine[] events = [new(flight.Figures.RailExitTime.Seconds, "off the rail"),
            new(flight.Figures.EndOfJet.Seconds, "end of the jet"), new(flight.ApogeeTime.Seconds, "apogee")];
        EventLine[] seen = [.. events.Where(e => e.At >= attitude.Time[0] && e.At <= last)];
        var title = $"Attitude, {flight.Vehicle.Name}";
        // Straight fins don't roll it: a line of zeros at the right says nothing.
        return attitude.RollRate.Values.All(r => Math.Abs(r) < 1e-9)
            ? LineChart.Draw(title, Early(attitude.Time), Early(attitude.AngleOfAttack))
                with { Events = seen, Remark = "it doesn't roll: its fins are straight" }
            : TwinAxesChart.Draw(title, Early(attitude.Time), Early(attitude.AngleOfAttack), Early(attitude.RollRate), seen);
    }

    private static Curve EdgeOf(FlyingField field, Series east, Series north)
    {
        var corners = FieldOutline.Of(field);
        return new Curve(east with { Values = [.. corners.Select(c => c.East), corners[0].East] },
            north with { Values = [.. corners.Select(c => c.North), corners[0].North] })
        {
            Name = "edge of the field",
            Slot = 4,
        };
    }

    // A curve that stops half-way would look like a flight.
    private static FlightResult Reached(FlightResult flight)
    {
        ArgumentNullException.ThrowIfNull(flight);
        if (flight.Status == ResultStatus.Failed) throw new InvalidDesignException(flight.Title, flight.Findings);
        return flight;
    }
}
