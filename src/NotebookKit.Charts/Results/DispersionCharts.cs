using NotebookKit.Charts.Engineering;
using NotebookKit.Charts.Marks;
using NotebookKit.Charts.Notes;
using NotebookKit.Flight.Dispersion;
using NotebookKit.Provenance;
using NotebookKit.Quantities;

namespace NotebookKit.Charts.Results;

/// <summary>Charts of many flights: <c>dispersion.Chart()</c>, <c>dispersion.ChartApogee()</c>, <c>dispersion.ChartSensitivity()</c>.</summary>
public static class DispersionCharts
{
    private static readonly double[] Shares = [50, 90, 99];

    /// <summary>Where the flights land, the ellipses that hold 50, 90 and 99 % of them, and the edge of the field.</summary>
    /// <param name="dispersion">The flights.</param>
    /// <exception cref="InvalidDesignException">Fewer than two flights landed.</exception>
    public static EngineeringChart Chart(this DispersionResult dispersion)
    {
        var landings = Landings(dispersion);
        var ellipses = Shares.Select(share =>
        {
            var (major, minor) = landings.Axes(share.Percent());
            return new ScatterEllipse($"{Digits.Round(share)} %", landings.MeanEast.Meters, landings.MeanNorth.Meters, major.Meters, minor.Meters, landings.Bearing.Degrees);
        });
        var field = dispersion.Plan.Field is { } edge ? FieldOutline.Of(edge) : null;
        return LandingChart.Draw(dispersion.East, dispersion.North, [.. ellipses], field) with
        {
            Title = $"Where {dispersion.Plan.Vehicle} comes down",
            Remark = $"{WholeNumber.Show(landings.Count)} flights{(dispersion.OffField is { } off ? $"; off the field {off}" : "")}",
        };
    }

    /// <summary>How high the flights go, with the ceiling where there is one.</summary>
    /// <param name="dispersion">The flights.</param>
    /// <exception cref="InvalidDesignException">Fewer than two flights landed.</exception>
    public static EngineeringChart ChartApogee(this DispersionResult dispersion)
    {
        var landings = Landings(dispersion);
        var chart = new EngineeringChart($"Apogee of {dispersion.Plan.Vehicle}", Axis.For(dispersion.Apogee), new Axis("Share of flights", "%"))
        {
            Remark = $"{WholeNumber.Show(landings.Count)} flights{(dispersion.AboveCeiling is { } above ? $"; above the ceiling {above}" : "")}",
            Marks = [new Histogram(dispersion.Apogee) { Name = "" }],
            Limits =
            [
                new LimitLine(dispersion.LowApogee.Meters, "one in twenty below") { Upright = true },
                new LimitLine(dispersion.MiddleApogee.Meters, "half below") { Upright = true },
                new LimitLine(dispersion.HighApogee.Meters, "one in twenty above") { Upright = true },
            ],
        };
        // A ceiling far above the flights would squeeze them into a corner; the remark tells of it all the same.
        var near = dispersion.HighApogee + (3 * (dispersion.HighApogee - dispersion.LowApogee));
        return (dispersion.Plan.Ceiling is { } ceiling && ceiling < near ? chart.With(new LimitLine(ceiling.Meters, $"ceiling {ceiling.Show()}") { Upright = true, Slot = 1 }) : chart).Checked();
    }

    /// <summary>What sways the height most.</summary>
    /// <param name="dispersion">The flights.</param>
    /// <exception cref="InvalidDesignException">Nothing varied.</exception>
    public static EngineeringChart ChartSensitivity(this DispersionResult dispersion)
    {
        ArgumentNullException.ThrowIfNull(dispersion);
        return ShareBars.Draw($"What sways the apogee of {dispersion.Plan.Vehicle}", "Share of the scatter", [.. dispersion.OnApogee.Select(s => (s.Input, s.Share))]);
    }

    private static LandingScatter Landings(DispersionResult dispersion)
    {
        ArgumentNullException.ThrowIfNull(dispersion);
        return dispersion.Landings ?? throw new InvalidDesignException(dispersion.Title, dispersion.Findings);
    }
}
