using NotebookKit.Flight.Design;
using NotebookKit.Flight.Flights;
using NotebookKit.Flight.Motion;
using NotebookKit.Flight.Site;
using NotebookKit.Flight.Staging;
using NotebookKit.Flight.Vertical;
using NotebookKit.Numerics;
using NotebookKit.Propulsion.Flow;
using NotebookKit.Provenance;
using NotebookKit.Quantities;
using UnitsNet;

namespace NotebookKit.Flight.Search;

/// <summary>Flies many variants of a flight to find or to compare.</summary>
public static class SearchVerbs
{
    /// <summary>The water fraction that takes it highest, or makes it fastest, with its own nozzle. Source: see
    /// <see cref="Search.BestFill"/>.</summary>
    /// <param name="flight">The flight.</param>
    /// <param name="goal">What for.</param>
    /// <exception cref="InvalidDesignException">Something is out of range, or no fill lifts the vehicle.</exception>
    public static BestFillResult BestFill(this VerticalFlight flight, FlightGoal goal = FlightGoal.Apogee)
        => new BestFill(flight, goal).Find();

    /// <summary>The water fraction and the throat that take it highest, or make it fastest. Source: see
    /// <see cref="Search.BestFill"/>.</summary>
    /// <param name="flight">The flight.</param>
    /// <param name="narrowest">Narrowest throat searched; above 0.5 mm.</param>
    /// <param name="widest">Widest throat searched; above the narrowest, below the vessel's bore.</param>
    /// <param name="goal">What for.</param>
    /// <exception cref="InvalidDesignException">Something is out of range, or no fill lifts the vehicle.</exception>
    public static BestFillResult BestFill(this VerticalFlight flight, Length narrowest, Length widest,
        FlightGoal goal = FlightGoal.Apogee) =>
        new BestFill(flight, goal) { Throats = new(narrowest, widest) }.Find();

    /// <summary>Flies it with every way of describing water and gas, to see what each assumption is worth. Source: each flight's own
    /// model.</summary>
    /// <param name="flight">The flight.</param>
    /// <exception cref="InvalidDesignException">The vehicle can't be flown with any of them.</exception>
    public static FlowComparison CompareFlows(this VerticalFlight flight)
    {
        ArgumentNullException.ThrowIfNull(flight);
        var findings = (flight with { Flow = FlowModel.Plain }).Validate();
        InvalidDesignException.ThrowIfAny(flight.Name, findings);
        return new(flight);
    }

    /// <summary>Height against the delay between the end of the booster's jet and separation, by a latch. Source: see
    /// <see cref="StagingVerbs.Fly(TwoStageVehicle, LaunchSite)"/>.</summary>
    /// <param name="vehicle">The vehicle.</param>
    /// <param name="site">Where it starts.</param>
    /// <param name="longest">Longest delay; 0.1 to 30 s.</param>
    /// <exception cref="InvalidDesignException">Something can't be computed; carries all findings.</exception>
    /// <exception cref="OutOfRangeException">The delay is outside.</exception>
    public static DelayCost CostOfDelay(this TwoStageVehicle vehicle, LaunchSite site, Duration longest)
    {
        ArgumentNullException.ThrowIfNull(vehicle);
        const int Points = 21;
        new ValidRange<Duration>(0.1.Seconds(), 30.Seconds()).Check(longest, "longest delay", "A second already costs much.");
        InvalidDesignException.ThrowIfAny(vehicle.Name, vehicle.Validate(site));
        var stack = vehicle.Stack(site).Numbers(site);
        var sustainer = vehicle.Sustainer.Numbers(site);
        var (delays, heights) = (new double[Points], new double[Points]);
        var run = WorkRun.Current;
        Parallel.For(0, Points, run.Parallel(), i =>
        {
            run.ThrowIfStopped();
            delays[i] = longest.Seconds * i / (Points - 1);
            var waiting = vehicle with { Separation = Separation.ByPressureLatch(delays[i].Seconds()) };
            var marks = FlightRun.FlyStack(stack, null, waiting.Numbers(site), FlightAccuracy.Fast, null, out var end);
            heights[i] = marks.Failed || marks.HasLanded || marks.IsPastApogee
                ? double.NaN
                : Top(FlightRun.Continue(sustainer, null, FlightAccuracy.Fast, end, true, StageSeparation.Marks(marks)));
        });
        return new(new("Delay between the stages", "s", delays), new("Apogee above pad", "m", heights));
    }

    private static double Top(in FlightMarks marks) => marks.Failed ? double.NaN : marks.ApogeeM;
}

/// <summary>What waiting between the stages costs. In a vacuum every second costs the sustainer's own gain in speed, in metres.</summary>
/// <param name="Delay">Time from the end of the booster's jet to separation [s].</param>
/// <param name="Apogee">Height of the sustainer's top [m]; NaN where the flight fails.</param>
public sealed record DelayCost(Series Delay, Series Apogee);
