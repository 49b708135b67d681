using NotebookKit.Charts.Engineering;
using NotebookKit.Charts.Marks;
using NotebookKit.Charts.Notes;
using NotebookKit.Filling.ByHand;
using NotebookKit.Filling.Networks;
using NotebookKit.Launching.Heating;
using NotebookKit.Provenance;
using NotebookKit.Quantities;

namespace NotebookKit.Charts.Results;

/// <summary>Charts of a pad: a network over time, a plan by hand, a vessel that waits in the sun.</summary>
public static class PadCharts
{
    /// <summary>Pressure of every vessel and junction against time, with the lowest rating of a vessel.</summary>
    /// <param name="run">The run.</param>
    /// <exception cref="InvalidDesignException">No vessel is in the network.</exception>
    public static EngineeringChart Chart(this PadNetworkResult run)
    {
        ArgumentNullException.ThrowIfNull(run);
        var places = run.Pad.Nodes.Where(n => n is VesselNode or JunctionNode).Select(n => n.Name).ToList();
        var curves = Curves(run, places, run.Pressure);
        var rated = run.Pad.Nodes.OfType<VesselNode>().Select(v => v.Chamber.RatedPressure).Order().Take(1);
        return Over(run, "pressures", "Pressure", curves) with
        {
            Limits = [.. rated.Select(r => new LimitLine(r.Bar, $"lowest rating {r}"))],
        };
    }

    /// <summary>Flow of gas through every line against time; below 0 where gas runs back.</summary>
    /// <param name="run">The run.</param>
    /// <exception cref="InvalidDesignException">No line is in the network.</exception>
    public static EngineeringChart FlowChart(this PadNetworkResult run)
    {
        ArgumentNullException.ThrowIfNull(run);
        return Over(run, "flows", "Flow", [.. run.Pad.Links.Select(l => (l.Name, run.Flow(l.From, l.To)))]);
    }

    /// <summary>Temperature of the gas in every cylinder and vessel against time.</summary>
    /// <param name="run">The run.</param>
    /// <exception cref="InvalidDesignException">No cylinder or vessel is in the network.</exception>
    public static EngineeringChart TemperatureChart(this PadNetworkResult run)
    {
        ArgumentNullException.ThrowIfNull(run);
        return Over(run, "gas temperatures", "Gas temperature", Curves(run, [.. run.Pad.Nodes.Where(n => n is VesselNode or CylinderNode)
            .Select(n => n.Name)], run.Temperature));
    }

    /// <summary>Gauge against time of a fill by hand, with the reading to expect after every step and the band that is explained.</summary>
    /// <param name="plan">The plan.</param>
    public static EngineeringChart Chart(this HandFillPlan plan)
    {
        ArgumentNullException.ThrowIfNull(plan);
        Series after = new("Time", "s", [.. plan.Steps.Select(s => s.After.Seconds)]);
        Series Read(string name, Func<HandStep, double> of) => new(name, "bar gauge", [.. plan.Steps.Select(of)]);
        var rated = plan.Fill.Fill.Chamber.RatedPressure;
        return new EngineeringChart(plan.Title, Axis.For(plan.Time), Axis.For(plan.Pressure))
        {
            Remark = "a reading below the lowest or above the highest that is explained: shut the valve and find out why",
            Marks = [new Curve(plan.Time, plan.Pressure) { Name = "gauge" },
                new Points(after, Read("To expect", s => s.Gauge.Bar)) { Name = "to expect after the step" },
                new Points(after, Read("Lowest", s => s.Low.Bar)) { Name = "lowest that is explained" },
                new Points(after, Read("Highest", s => s.High.Bar)) { Name = "highest that is explained" }],
            Limits = [new LimitLine(rated.Bar, $"rated {rated}")],
        }.Checked();
    }

    /// <summary>Gauge of a vessel that waits in the sun, at the left, and its wall where the sun meets it, at the right, against
    /// time.</summary>
    /// <param name="wait">The wait.</param>
    public static EngineeringChart Chart(this WaitInSunResult wait)
    {
        ArgumentNullException.ThrowIfNull(wait);
        var most = wait.Wait.Chamber.MaximumExpectedPressure;
        return FillChart.Draw(wait.Time, wait.Pressure, wait.SunnySide, most) with
        {
            Title = wait.Title,
            Limits = [new LimitLine(most.Bar, $"highest expected {most}") { Slot = 0 }],
            Remark = wait.VentBy is { } by ? $"the dump valve has to be opened within {Digits.Round(by.Minutes)} min"
                : "no limit is passed while it is watched",
        };
    }

    private static List<(string, Series)> Curves(PadNetworkResult run, List<string> places, Func<string, Series> of) =>
        places.Count == 0 ? throw new InvalidDesignException(run.Title, [Finding.Error(
            "Nothing in this network has a curve of that kind: add a vessel to the network.")])
        : [.. places.Select(p => (p, of(p)))];

    private static EngineeringChart Over(PadNetworkResult run, string what, string axis,
        List<(string Name, Series Values)> curves) =>
        new EngineeringChart($"{run.Title}, {what}", Axis.For(run.Time), new(axis, curves[0].Values.Unit))
        {
            Marks = [.. curves.Select(c => new Curve(run.Time, c.Values) { Name = c.Name })],
        }.Checked();
}
