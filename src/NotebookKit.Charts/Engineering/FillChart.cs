using NotebookKit.Charts.Notes;
using NotebookKit.Provenance;
using NotebookKit.Quantities;

namespace NotebookKit.Charts.Engineering;

/// <summary>A fill at the pad: gas pressure at the left, gas temperature at the right, and the pressure that must not be passed.</summary>
public static class FillChart
{
    /// <summary>Draws the fill.</summary>
    /// <param name="time">Time since the valve was opened.</param>
    /// <param name="pressure">Pressure in the vessel, in "bar gauge".</param>
    /// <param name="temperature">Temperature of the gas.</param>
    /// <param name="rated">Rated pressure of the vessel.</param>
    /// <param name="events">Moments to mark: "valve shut".</param>
    /// <exception cref="InvalidDesignException">Columns of different length, without values, or a pressure that isn't in bar
    /// gauge.</exception>
    public static EngineeringChart Draw(Series time, Series pressure, Series temperature, GaugePressure rated,
        params IReadOnlyList<EventLine> events) =>
        PressureAxis.Require(pressure, TwinAxesChart.Draw("Fill", time, pressure, temperature, events))
            .With(new LimitLine(rated.Bar, $"rated {rated}") { Slot = 0 });
}
