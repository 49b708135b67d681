using NotebookKit.Charts.Engineering;
using NotebookKit.Charts.Marks;
using NotebookKit.Charts.Notes;
using NotebookKit.Provenance;
using NotebookKit.Quantities;
using UnitsNet;

namespace NotebookKit.Charts.Results;

/// <summary>Charts of fins: <c>fins.ChartFlutter(...)</c>, <c>cant.Chart()</c>, <c>alignment.Chart()</c>.</summary>
public static class FinCharts
{
    private const int Steps = 40;

    /// <summary>Flutter margin over thickness and span, each from half to one and a half times that of the fins; chords and sweep distance
    /// stay.</summary>
    /// <param name="fins">The fins; the mark in the middle of the map.</param>
    /// <param name="shearModulus">Shear modulus that twisting sees; 0.1 to 100 GPa.</param>
    /// <param name="fastest">Fastest flight speed; 1 m/s to Mach 0.8, above which nothing passes.</param>
    /// <param name="air">Air where that speed is reached; sea level on a standard day where none is given.</param>
    /// <exception cref="InvalidDesignException">The fins can't be computed; carries all findings.</exception>
    /// <exception cref="OutOfRangeException">An input is outside its range.</exception>
    public static EngineeringChart ChartFlutter(this FinSet fins, Pressure shearModulus, Speed fastest, AirConditions? air = null)
    {
        ArgumentNullException.ThrowIfNull(fins);
        var own = fins.Flutter(shearModulus, fastest, air);
        if (own.Mach > FlutterResult.MaximumMach)
            throw new InvalidDesignException($"Flutter map, {fins.Name}", own.Findings);
        double[] factors = [.. Enumerable.Range(0, Steps + 1).Select(i => 0.5 + ((double)i / Steps))];
        var margins = from longer in factors
                      let stretched = fins.WithSpanTimes(longer)
                      from thicker in factors
                      select (stretched with { Thickness = fins.Thickness * thicker }).Flutter(shearModulus, fastest, air).Margin;
        var thicknesses = new Series("Fin thickness", "mm", [.. factors.Select(f => f * fins.Thickness.Millimeters)]);
        var spans = new Series("Fin span", "mm", [.. factors.Select(f => f * fins.Planform.Reach.Millimeters)]);
        var chart = FlutterChart.Draw(thicknesses, spans, new Series("Flutter margin", "-", [.. margins]), FlutterResult.RequiredMargin);
        var (thickness, span) = (fins.Thickness.Millimeters, fins.Planform.Reach.Millimeters);
        var here = new Points(thicknesses with { Values = [thickness] }, spans with { Values = [span] }) { Name = "these fins",
            Shape = PointShape.Diamond, Slot = 7, Size = 12 };
        return chart.With(here).With(new Callout(thickness, span, $"margin {Digits.Round(own.Margin)}")) with
        {
            Title = $"Flutter margin at {fastest.Show()}, G = {Digits.Round(shearModulus.Gigapascals)} GPa",
        };
    }

    /// <summary>How often the jig leaves which mean cant.</summary>
    /// <param name="cant">The distribution.</param>
    public static EngineeringChart Chart(this CantResult cant)
    {
        ArgumentNullException.ThrowIfNull(cant);
        var nine = cant.Within(90.Percent()).Degrees;
        return new EngineeringChart(cant.Title, Axis.For(cant.Samples), new Axis("Share of the fin sets", "%"))
        {
            Marks = [new Histogram(cant.Samples) { Name = "" }],
            Limits = [Upright(-nine), Upright(nine)],
            Remark = $"90 % lie within ±{Digits.Round(nine, 2)}°",
        }.Checked();
    }

    /// <summary>How often the jig leaves which mean cant, with the cants whose roll lies near the pitch frequency.</summary>
    /// <param name="alignment">The alignment.</param>
    public static EngineeringChart Chart(this AlignmentResult alignment)
    {
        ArgumentNullException.ThrowIfNull(alignment);
        var critical = alignment.AtNineInTen.CriticalCant.Degrees;
        var (from, to) = (critical * PitchRollResult.BandFrom, critical * PitchRollResult.BandTo);
        var reach = 1.05 * Math.Max(to, alignment.Cant.Samples.Values.Max(Math.Abs));
        var chart = alignment.Cant.Chart();
        return (chart with
        {
            Title = alignment.Title,
            X = chart.X.Over(-reach, reach),
            Spans = [new ShadedSpan(-to, -from, "") { Forbidden = true }, new ShadedSpan(from, to, "") { Forbidden = true }],
            Remark =
                $"shaded: roll near the pitch frequency, {alignment.InResonanceBand.Show(2)} of the fin sets; critical cant "
                + $"{Digits.Round(critical, 2)}°",
        }).Checked();
    }

    private static LimitLine Upright(double at) => new(at, "nine in ten") { IsVertical = true };
}
