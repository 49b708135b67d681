using NotebookKit.Charts.Explorers;
using NotebookKit.Charts.Results.Settings;
using NotebookKit.Provenance;
using NotebookKit.Quantities;

namespace NotebookKit.Charts.Results;

/// <summary>Explorers of a fill: <c>fill.Explore()</c>.</summary>
public static class FillExplorers
{
    /// <summary>
    /// Restrictor, supply and water to drag, pressure against time to watch: the restrictor from a quarter to four times that of the fill,
    /// supply from the target to the rating, or to the planned supply where that is higher, water from none to 70 %.
    /// </summary>
    /// <param name="fill">The fill to start from; what isn't dragged is taken from it.</param>
    /// <exception cref="InvalidDesignException">The fill can't be computed.</exception>
    public static Explorer Explore(this PadFill fill)
    {
        ArgumentNullException.ThrowIfNull(fill);
        InvalidDesignException.ThrowIfAny("Fill at the pad", fill.Validate());
        var conductance = fill.Restrictor.Conductance.LitresPerSecondBar;
        var least = Math.Min(fill.Target.Bar * 1.01, fill.Supply.Bar);
        var most = Math.Max(Math.Max(fill.Chamber.RatedPressure.Bar, fill.Supply.Bar), least * 1.05);
        ExplorerParameter[] parameters =
        [
            new("Conductance", "dm³/(s·bar)", conductance / 4, conductance * 4, 9, conductance) { Logarithmic = true },
            new("Supply", "bar gauge", least, most, 6, Math.Clamp(fill.Supply.Bar, least, most)),
            new("Water fraction", "%", 0, 70, 6, Math.Min(fill.WaterFraction.Percent, 70)),
        ];
        ExplorerNumber[] numbers = [new("Fill time", "s"), new("Hottest gas", "°C"), new("Settles at", "bar gauge"), new("Gas taken", "g")];
        return Explorer.Build($"Filling to {fill.Target}", new Axis("Time", "s"), new Axis("Pressure in the vessel", "bar gauge"),
            parameters, numbers, s => FillSetting.Answer(fill, s)) with
        {
            Cautions = Cautions.ForFilling,
            Remark = $"Vessel of {fill.Chamber.Volume.Show()}, rated {fill.Chamber.RatedPressure}; the valve shuts at the target. "
                + "Conductance is the restrictor's sonic conductance; its critical ratio stays "
                + $"{Digits.Round(FillSetting.RatioOf(fill), 2)}.",
        };
    }
}
