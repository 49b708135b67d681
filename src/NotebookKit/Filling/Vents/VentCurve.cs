using NotebookKit.Filling.Balances;
using NotebookKit.Quantities;

namespace NotebookKit.Filling.Vents;

/// <summary>One way a vent may go: pressure and gas temperature against time.</summary>
/// <param name="Heat">What the wall does.</param>
/// <param name="Time">Times, s.</param>
/// <param name="Pressure">Pressure at those times, bar gauge.</param>
/// <param name="Temperature">Temperature of the gas at those times, °C.</param>
public sealed record VentCurve(FillHeat Heat, Series Time, Series Pressure, Series Temperature)
{
    /// <summary>Temperature of the water that stays at those times, °C; none where it isn't followed
    /// (<see cref="FillWall.WaterSurface"/>).</summary>
    public Series? WaterTemperature { get; init; }

    internal static VentCurve From(FillHeat heat, double ambientPa, double[] seconds, double[] pascals, double[] kelvins) => new(
        heat,
        new("Time", "s", seconds),
        new("Pressure", "bar gauge", Array.ConvertAll(pascals, p => (p - ambientPa) / 1e5)),
        new("Gas temperature", "°C", Array.ConvertAll(kelvins, k => k - 273.15)));
}
