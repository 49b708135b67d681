using NotebookKit.Charts.Engineering;
using NotebookKit.Charts.Notes;
using NotebookKit.Provenance;
using NotebookKit.Quantities;
using NotebookKit.Recovery;
using UnitsNet;

namespace NotebookKit.Charts.Results;

/// <summary>Charts of coming down: <c>opening.Chart()</c>, <c>wind.Chart(300.Metres())</c>.</summary>
public static class RecoveryCharts
{
    private const int Steps = 120;

    /// <summary>Opening load against how early or late the canopy comes out.</summary>
    /// <param name="opening">The opening by a timer.</param>
    public static EngineeringChart Chart(this TimedOpeningResult opening)
    {
        ArgumentNullException.ThrowIfNull(opening);
        var timer = (opening.Timer - opening.Apogee).Seconds;
        IReadOnlyList<EventLine> events = Math.Abs(timer) < 1e-6
            ? [new EventLine(0, "apogee, and timer")]
            : [new EventLine(0, "apogee"), new EventLine(timer, "timer")];
        return LineChart.Draw(opening.Title, opening.Offset, opening.Load) with
        {
            Events = events,
            Limits = opening.Allowed is { } allowed ? [new LimitLine(allowed.Newtons, $"strength of the gear, {allowed.Show()}")] : [],
            Remark = $"95 % of openings stay below {opening.LoadAt95Percent.Show()}",
        };
    }

    /// <summary>Wind speed against height.</summary>
    /// <param name="wind">The wind.</param>
    /// <param name="upTo">Height to draw to, above ground; 1 m to 20 km.</param>
    /// <exception cref="OutOfRangeException">The height is outside.</exception>
    public static EngineeringChart Chart(this WindProfile wind, Length upTo)
    {
        ArgumentNullException.ThrowIfNull(wind);
        new ValidRange<Length>(1.Metres(), 20_000.Metres()).Check(upTo, "height to draw the wind to", "Give the height of the flight.");
        Length[] heights = [.. Enumerable.Range(0, Steps + 1).Select(i => upTo * ((double)i / Steps))];
        return LineChart.Draw(
            $"Wind, {wind.Name}", new Series("Wind speed", "m/s", [.. heights.Select(h => wind.At(h).MetersPerSecond)]),
            new Series("Height above ground", "m", [.. heights.Select(h => h.Meters)]));
    }
}
