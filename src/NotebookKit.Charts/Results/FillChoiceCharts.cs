using NotebookKit.Charts.Engineering;
using NotebookKit.Charts.Notes;
using NotebookKit.Quantities;

namespace NotebookKit.Charts.Results;

/// <summary>Charts of the choice of water, nozzle and pressure: <c>map.Chart()</c>, <c>best.Chart()</c>.</summary>
public static class FillChoiceCharts
{
    /// <summary>Apogee over the map's two variables, its highest cell, and the vessel's rated pressure where pressure is one of
    /// them.</summary>
    /// <param name="map">The map.</param>
    public static EngineeringChart Chart(this FlightMapResult map)
    {
        ArgumentNullException.ThrowIfNull(map);
        var chart = ContourChart.Draw($"Apogee: {char.ToLowerInvariant(map.Title[0])}{map.Title[1..]}", map.X, map.Y, map.Apogee);
        var rated = map.RatedPressure;
        if (Spans(map.Map.X)) chart = chart.With(new LimitLine(rated.Bar, $"rated {rated}") { IsVertical = true });
        if (Spans(map.Map.Y)) chart = chart.With(new LimitLine(rated.Bar, $"rated {rated}"));
        return chart with { Remark = map.Refused == 0 ? $"no cell exceeds the rated {rated}"
            : $"blank: above the rated {rated}, too heavy to lift, or beyond the drag model" };

        bool Spans(MapAxis axis) => axis.Variable == MapVariable.Pressure && axis.Values[0] <= rated.Bar && rated.Bar <= axis.Values[^1];
    }

    /// <summary>Height or speed against water fraction, with the span of water that loses no more than 1 %.</summary>
    /// <param name="best">The search.</param>
    public static EngineeringChart Chart(this BestFillResult best)
    {
        ArgumentNullException.ThrowIfNull(best);
        var known = Enumerable.Range(0, best.GoalValue.Count).Where(i => double.IsFinite(best.GoalValue[i])).ToList();
        var top = best.Search.Goal == FlightGoal.Apogee ? best.Flight.Apogee.Meters : best.Flight.MaximumSpeed.MetersPerSecond;
        return LineChart.Draw(best.Title, best.Water with { Values = [.. known.Select(i => best.Water[i])] },
            best.GoalValue with { Values = [.. known.Select(i => best.GoalValue[i])] })
            .With(new ShadedSpan(best.FlatFrom.Percent, best.FlatTo.Percent, "within 1 %"))
            .With(new Callout(best.WaterFraction.Percent, top,
                $"{Digits.Round(top)} {best.GoalValue.Unit} with {best.WaterFraction.Show(2)}"))
            with { Remark = $"nozzle throat {best.Throat.Show()}" };
    }
}
