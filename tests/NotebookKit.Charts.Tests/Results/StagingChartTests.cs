using NotebookKit.Charts.Marks;
using NotebookKit.Charts.Results;
using NotebookKit.Flight.Dispersion;
using NotebookKit.Flight.Staging;
using NotebookKit.Provenance;
using NotebookKit.Quantities;
using NotebookKit.Recovery;

namespace NotebookKit.Charts.Tests.Results;

public sealed class StagingChartTests
{
    private static readonly TwoStageVehicle Pair = new("Pair", new Vehicle(
        "Lifter",
        new FinnedBody(
            [Nose.Cone(90.Millimetres(), 90.Millimetres()), new BodyTube(1150.Millimetres(), 90.Millimetres())],
            [FinSet.Trapezoidal(4, 180.Millimetres(), 100.Millimetres(), 120.Millimetres(), 80.Millimetres(), 3.Millimetres(),
                1050.Millimetres())]),
        new MassBudget([new("vessel", 900.Grams(), 700.Millimetres()) { Extent = 1.Metres(), Diameter = 90.Millimetres() },
            new("fins", 300.Grams(), 1140.Millimetres())]),
        new Charge(new Chamber(5.Litres(), 86.Millimetres(), 60.BarGauge()), 33.Percent(), 40.BarGauge(), 15.Celsius()),
        new Nozzle(15.Millimetres()), 1220.Millimetres()) { Canopy = new Canopy(CanopyType.FlatCircular, 0.8.Metres()) }, Curlew.Vehicle);

    private static readonly LaunchSite Site = LaunchSite.SeaLevel with { Rail = new(4.Metres()) };

    private static readonly TwoStageResult Flight = Pair.Fly(Site);

    [Fact]
    public void The_curves_meet_where_the_stages_part()
    {
        foreach (var chart in new[] { Flight.Chart(), Flight.ChartSpeed() })
        {
            var curves = chart.Marks.Cast<Curve>().ToList();
            Assert.Equal(["both together", "sustainer", "booster"], curves.Select(c => c.Name));
            Assert.Equal(curves[0].X[^1], curves[1].X[0], 1e-9);
            Assert.Equal(curves[0].Y[^1], curves[1].Y[0], 1e-6);
            Assert.Equal(curves[0].Y[^1], curves[2].Y[0], 1e-6);
            Assert.Equal(Flight.SeparationTime.Seconds, chart.Events[0].At, 1e-9);
            Assert.NotEmpty(chart.ToFigureJson());
        }
    }

    [Fact]
    public void Speeds_are_drawn_up_to_the_top_only() =>
        Assert.All(Flight.ChartSpeed().Marks.Cast<Curve>(), c => Assert.True(c.X.Values[^1] <= Flight.Sustainer.ApogeeTime.Seconds));

    [Fact]
    public void Waiting_is_drawn_from_none_to_the_longest()
    {
        var chart = Pair.CostOfDelay(Site, 1.Seconds()).Chart();
        var curve = Assert.IsType<Curve>(chart.Marks.Single());
        Assert.Equal([0.0, 1.0], [curve.X[0], curve.X.Values[^1]]);
        Assert.Equal("m", chart.Y.Unit);
    }

    [Fact]
    public void A_flight_that_failed_has_no_chart()
    {
        var failed = (Pair with { Separation = Separation.ByTimer(0.1.Seconds()) }).Fly(Site);
        Assert.Equal(ResultStatus.Failed, failed.Status);
        Assert.Throws<InvalidDesignException>(() => failed.Chart());
        Assert.Throws<InvalidDesignException>(() => failed.ChartSpeed());
    }

    [Fact]
    public void Landings_of_both_stages_are_drawn_and_only_the_inputs_that_matter()
    {
        var many = Pair.Disperse(Site with { Wind = WindProfile.PowerLaw(4.MetresPerSecond(), 10.Metres()),
            Field = FlyingField.Circle(250.Metres()) }, new(), 80, 7);
        var chart = many.Chart();
        Assert.Equal(
            ["sustainer's landings", "90 % of the sustainer's", "edge of the field", "pad", "booster's landings", "90 % of the booster's"],
            chart.Marks.Select(m => m.Name));
        Assert.Equal(many.Booster!.East.Values, ((Points)chart.Marks[4]).X.Values);
        var (east, _) = many.Booster.Landings!.Ellipse(90.Percent());
        Assert.Equal(east.Values.Max(), ((Curve)chart.Marks[5]).X.Values.Max(),
            0.01 * many.Booster.Landings.Axes(90.Percent()).Major.Meters);
        Assert.NotEmpty(chart.ToFigureJson());
        _ = System.Xml.Linq.XElement.Parse(chart.ToSvg());
        var bars = (Bars)many.ChartSensitivity().Marks[0];
        Assert.Equal(12, bars.Values.Count);
    }
}
