using NotebookKit.Charts.Marks;
using NotebookKit.Charts.Results;
using NotebookKit.Flight.Dispersion;
using NotebookKit.Quantities;

namespace NotebookKit.Charts.Tests.Results;

public sealed class UncertaintyChartTests
{
    public static TheoryData<string> Names => [.. Charts.Keys];

    private static Dictionary<string, Func<EngineeringChart>> Charts { get; } = new(StringComparer.Ordinal)
    {
        ["landings"] = CurlewUncertain.Dispersion.Chart,
        ["apogees"] = CurlewUncertain.Dispersion.ChartApogee,
        ["sensitivity of the apogee"] = CurlewUncertain.Dispersion.ChartSensitivity,
        ["burst distribution"] = () => CurlewUncertain.Distribution.Chart(Curlew.Rating),
        ["burst distribution, no rating"] = () => CurlewUncertain.Distribution.Chart(),
        ["burst drivers"] = CurlewUncertain.Distribution.ChartDrivers,
        ["efficiency"] = CurlewUncertain.Update.Chart,
        ["fill fit"] = CurlewUncertain.FillFit.Chart,
        ["launch budget"] = CurlewUncertain.Budget.Chart,
    };

    [Theory]
    [MemberData(nameof(Names))]
    public void Every_result_has_a_chart_with_units(string name)
    {
        var chart = Charts[name]();
        Assert.Empty(chart.Validate());
        foreach (var axis in new[] { chart.X, chart.Y }.Where(a => a.Scale != AxisScale.Categories)) Assert.Matches(@" \[[^\]]+\]$",
            axis.Title);
        Assert.NotEmpty(chart.ToFigureJson());
        _ = System.Xml.Linq.XElement.Parse(chart.ToSvg());
    }

    [Fact]
    public void Landings_are_drawn_with_the_ellipses_of_their_own_result()
    {
        var chart = CurlewUncertain.Dispersion.Chart();
        Assert.Equal(["landings", "50 % of landings", "90 % of landings", "99 % of landings", "edge of the field", "pad"],
            chart.Marks.Select(m => m.Name));
        // The library's own outline of the 90 % ellipse: ours has the same extent on both axes, turned by the same angle.
        var (east, north) = CurlewUncertain.Dispersion.Landings!.Ellipse(90.Percent());
        var drawn = (Curve)chart.Marks[2];
        var reach = CurlewUncertain.Dispersion.Landings!.Axes(90.Percent()).Major.Meters;
        foreach (var extreme in new Func<IEnumerable<double>, double>[] { Enumerable.Max, Enumerable.Min })
        {
            Assert.Equal(extreme(east.Values), extreme(drawn.X.Values), 0.005 * reach);
            Assert.Equal(extreme(north.Values), extreme(drawn.Y.Values), 0.005 * reach);
        }
        Assert.Equal(north[IndexOfMax(east)], drawn.Y[IndexOfMax(drawn.X)], 0.08 * reach);

        static int IndexOfMax(Series series) => Enumerable.Range(0, series.Count).MaxBy(i => series[i]);
    }

    [Fact]
    public void Of_very_many_flights_every_so_many_is_drawn_and_said()
    {
        var many = Curlew.Vehicle.Disperse(Curlew.Windy, new Spread(), 5001, 7);
        var chart = many.Chart();
        var points = (Points)chart.Marks[0];
        Assert.Equal(2501, points.X.Count);
        Assert.Equal(many.East[2], points.X[1]);
        Assert.Equal(many.North[5000], points.Y[^1]);
        Assert.Contains("one in 2 drawn", chart.Remark, StringComparison.Ordinal);
        Assert.DoesNotContain("drawn", CurlewUncertain.Dispersion.Chart().Remark, StringComparison.Ordinal);
    }

    [Fact]
    public void The_ceiling_is_marked_among_the_apogees() =>
        Assert.Contains(CurlewUncertain.Dispersion.ChartApogee().Limits, l => l.Label == "ceiling 30 m" && l.Value == 30);

    [Fact]
    public void Basis_values_and_ratings_stand_where_they_are()
    {
        var limits = CurlewUncertain.Distribution.Chart(Curlew.Rating).Limits;
        Assert.Equal(CurlewUncertain.Distribution.BBasis.Bar,
            limits.Single(l => l.Label.StartsWith("B-basis", StringComparison.Ordinal)).Value);
        Assert.Equal(Curlew.Rating.ProofPressure.Bar, limits.Single(l => l.Label.StartsWith("proof", StringComparison.Ordinal)).Value);
    }
}
