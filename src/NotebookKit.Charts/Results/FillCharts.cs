using NotebookKit.Charts.Engineering;
using NotebookKit.Charts.Marks;
using NotebookKit.Charts.Notes;
using NotebookKit.Quantities;

namespace NotebookKit.Charts.Results;

/// <summary>Charts of filling and venting: <c>fill.Chart()</c>.</summary>
public static class FillCharts
{
    /// <summary>Pressure and gas temperature against time, with the rated pressure and where it settles after cooling.</summary>
    /// <param name="fill">The fill.</param>
    public static EngineeringChart Chart(this FillResult fill)
    {
        ArgumentNullException.ThrowIfNull(fill);
        return FillChart.Draw(fill.Time, fill.Pressure, fill.Temperature, fill.Fill.Chamber.RatedPressure) with
        {
            Title = fill.Title,
            Remark = $"valve shuts at {fill.ShutPressure} after {Digits.Round(fill.Duration.Seconds)} s; settles at "
                + $"{fill.SettledPressure} once cool",
        };
    }

    /// <summary>Pressure against time at the two limits of heat, and the pressure that is safe.</summary>
    /// <param name="vent">The vent.</param>
    public static EngineeringChart Chart(this VentResult vent)
    {
        ArgumentNullException.ThrowIfNull(vent);
        return new EngineeringChart(vent.Title, Axis.For(vent.Adiabatic.Time), Axis.For(vent.Adiabatic.Pressure))
        {
            Remark = (vent.WaterFirst is null ? "" : "gas alone: ")
                + (vent.WithWall is null ? "the two limits of heat: none, and constant temperature"
                : "the two limits of heat, and the fall with the wall's heat")
                + (vent.WaterFirst is { } wet ? $"; water first, then gas: {Digits.Round(wet.Total.Seconds)} s" : ""),
            Marks = [.. vent.Curves.Select(c => new Curve(c.Time, c.Pressure) { Name = NameOf(c.Heat) }),
                .. vent.WaterFirst is { } w ? [new Curve(w.Curve.Time, w.Curve.Pressure) { Name = "water first, then gas" }]
                : Array.Empty<Curve>()],
            Limits = [new LimitLine(vent.Vent.SafePressure.Bar, $"safe {vent.Vent.SafePressure}")],
        }.Checked();
    }

    private static string NameOf(FillHeat heat) => heat switch
    {
        FillHeat.Adiabatic => "no heat from the wall",
        FillHeat.Isothermal => "gas at constant temperature",
        _ => "with the wall's heat",
    };
}
