using NotebookKit.Charts.Engineering;
using NotebookKit.Charts.Marks;
using NotebookKit.Charts.Notes;
using NotebookKit.Flight.Dispersion;
using NotebookKit.Provenance;
using NotebookKit.Quantities;

namespace NotebookKit.Charts.Results;

/// <summary>Charts of many flights: <c>dispersion.Chart()</c>, <c>dispersion.ChartApogee()</c>,
/// <c>dispersion.ChartSensitivity()</c>.</summary>
public static class DispersionCharts
{
    private static readonly double[] Shares = [50, 90, 99];

    // Below these a bar says only that many flights were few.
    private const int MostBars = 12;

    // More points than these are a blot, and a page that no browser opens.
    private const int MostPoints = 5000;

    /// <summary>
    /// Where the flights land, the ellipses that hold 50, 90 and 99 % of them, and the edge of the field; of two stages the landings of
    /// both, each with the ellipse that holds 90 %. Ellipses and shares are of all flights; of more than 5000 only every so many is drawn.
    /// </summary>
    /// <param name="dispersion">The flights.</param>
    /// <exception cref="InvalidDesignException">Fewer than two flights landed.</exception>
    public static EngineeringChart Chart(this DispersionResult dispersion)
    {
        var landings = Landings(dispersion);
        var field = dispersion.Plan.Field is { } edge ? FieldOutline.Of(edge) : null;
        var booster = dispersion.Booster?.Landings;
        var every = (dispersion.East.Count + MostPoints - 1) / MostPoints;
        var chart = LandingChart.Draw(Thinned(dispersion.East, every), Thinned(dispersion.North, every),
            [.. (booster is null ? Shares : [90]).Select(share => Ellipse(landings, share))], field) with
        {
            Title = $"Where {dispersion.Plan.Vehicle} comes down",
            Remark = $"{WholeNumber.Show(landings.Count)} "
                + $"flights{(dispersion.OffField is { } off ? $"; off the field {off}" : "")}{(every > 1 ? $"; one in {every} drawn" :
                    "")}",
        };
        return booster is null ? chart : WithBooster(chart, dispersion.Booster!, booster, every);
    }

    /// <summary>How high the flights go, with the ceiling where there is one.</summary>
    /// <param name="dispersion">The flights.</param>
    /// <exception cref="InvalidDesignException">Fewer than two flights landed.</exception>
    public static EngineeringChart ChartApogee(this DispersionResult dispersion)
    {
        var landings = Landings(dispersion);
        var chart = new EngineeringChart($"Apogee of {dispersion.Plan.Vehicle}", Axis.For(dispersion.Apogee),
            new Axis("Share of flights", "%"))
        {
            Remark = $"{WholeNumber.Show(landings.Count)} "
                + $"flights{(dispersion.AboveCeiling is { } above ? $"; above the ceiling {above}" : "")}",
            Marks = [new Histogram(dispersion.Apogee) { Name = "" }],
            Limits =
            [
                new LimitLine(dispersion.LowApogee.Meters, "5 % below") { IsVertical = true },
                new LimitLine(dispersion.MiddleApogee.Meters, "half below") { IsVertical = true },
                new LimitLine(dispersion.HighApogee.Meters, "5 % above") { IsVertical = true },
            ],
        };
        // A ceiling far above the flights would squeeze them into a corner; the remark tells of it all the same.
        var near = dispersion.HighApogee + (3 * (dispersion.HighApogee - dispersion.LowApogee));
        return (dispersion.Plan.Ceiling is { } ceiling && ceiling < near
            ? chart.With(new LimitLine(ceiling.Meters, $"ceiling {ceiling.Show()}") { IsVertical = true, Slot = 1 }) : chart).Checked();
    }

    /// <summary>What sways the height most.</summary>
    /// <param name="dispersion">The flights.</param>
    /// <exception cref="InvalidDesignException">Nothing varied.</exception>
    public static EngineeringChart ChartSensitivity(this DispersionResult dispersion)
    {
        ArgumentNullException.ThrowIfNull(dispersion);
        return ShareBars.Draw($"Sensitivity of the apogee of {dispersion.Plan.Vehicle}", "Share of the scatter",
            [.. dispersion.OnApogee.Take(MostBars).Select(s => (s.Input, s.Share))]);
    }

    // Flights are drawn independently: every so many of them is as good a sample as any.
    private static Series Thinned(Series series, int every) => every == 1 ? series
        : series with { Values = [.. series.Values.Where((_, i) => i % every == 0)] };

    private static ScatterEllipse Ellipse(LandingScatter landings, double share)
    {
        var (major, minor) = landings.Axes(share.Percent());
        return new ScatterEllipse($"{Digits.Round(share)} %", landings.MeanEast.Meters, landings.MeanNorth.Meters, major.Meters,
            minor.Meters, landings.Bearing.Degrees);
    }

    private static EngineeringChart WithBooster(EngineeringChart chart, StageScatter booster, LandingScatter landings, int every)
    {
        var (x, y) = Ellipse(landings, 90).Outline();
        string Of(string name) => name switch
        {
            "landings" => "sustainer's landings",
            "90 % of landings" => "90 % of the sustainer's",
            _ => name,
        };
        return (chart with { Marks = [.. chart.Marks.Select(m => m with { Name = Of(m.Name) })] }).With(
            new Points(Thinned(booster.East, every), Thinned(booster.North, every)) { Name = "booster's landings",
                Size = booster.East.Count > 500 ? 2.5 : 5, Slot = 2 },
            new Curve(booster.East with { Values = x }, booster.North with { Values = y }) { Name = "90 % of the booster's",
                Slot = 1 }).Checked();
    }

    private static LandingScatter Landings(DispersionResult dispersion)
    {
        ArgumentNullException.ThrowIfNull(dispersion);
        return dispersion.Landings ?? throw new InvalidDesignException(dispersion.Title, dispersion.Findings);
    }
}
