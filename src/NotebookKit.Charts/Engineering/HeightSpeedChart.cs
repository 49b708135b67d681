using NotebookKit.Charts.Notes;
using NotebookKit.Provenance;
using NotebookKit.Quantities;

namespace NotebookKit.Charts.Engineering;

/// <summary>Height at the left and speed at the right against time.</summary>
public static class HeightSpeedChart
{
    /// <summary>Draws both curves.</summary>
    /// <param name="time">Time since release.</param>
    /// <param name="height">Height above the pad.</param>
    /// <param name="speed">Speed.</param>
    /// <param name="events">Moments to mark: "water out", "apogee".</param>
    /// <exception cref="InvalidDesignException">Columns of different length or without values.</exception>
    public static EngineeringChart Draw(Series time, Series height, Series speed, params IReadOnlyList<EventLine> events) =>
        TwinAxesChart.Draw("Height and speed", time, height, speed, events);
}
