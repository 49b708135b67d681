using NotebookKit.Provenance;
using NotebookKit.Quantities;
using NotebookKit.Tests.Propulsion;

namespace NotebookKit.Tests.Flight.Search;

public class FlightMapTests
{
    private static readonly VerticalFlight Curlew = new(
        FiringExamples.Charge, FiringExamples.Nozzle, 800.Grams(), DragCurve.Constant(0.4, 74.Millimetres()), LaunchSite.SeaLevel);

    [Fact]
    public void Every_cell_is_the_flight_it_stands_for()
    {
        var map = new FlightMap(Curlew, MapAxis.WaterFraction(10.Percent(), 60.Percent(), 6),
            MapAxis.Throat(8.Millimetres(), 16.Millimetres(), 5)).Compute();
        Assert.Equal(30, map.Apogee.Count);
        var own = Curlew with { Charge = Curlew.Charge with { WaterFraction = 30.Percent() }, Nozzle = new Nozzle(14.Millimetres()) };
        Assert.Equal(own.Peak().ApogeeMetres, map.Apogee[3 * 6 + 2], 9);
        Assert.Equal(own.Peak().MaximumSpeedMetresPerSecond, map.MaximumSpeed[3 * 6 + 2], 9);
        Tolerance.Relative(map.Apogee.Values.Max(), map.Best.Peak().ApogeeMetres, 1e-12);
    }

    [Fact]
    public void Twice_the_same_map_is_the_same_map()
    {
        var map = new FlightMap(Curlew, MapAxis.WaterFraction(10.Percent(), 60.Percent(), 20),
            MapAxis.DryMass(400.Grams(), 2.Kilograms(), 20));
        Assert.Equal(map.Compute().Apogee.Values, map.Compute().Apogee.Values);
    }

    [Fact]
    public void Nothing_is_computed_above_the_rating()
    {
        var map = new FlightMap(Curlew, MapAxis.Pressure(35.BarGauge(), 75.BarGauge(), 5),
            MapAxis.WaterFraction(20.Percent(), 40.Percent(), 3)).Compute();
        Assert.Equal(55, map.RatedPressure.Bar, 9);
        for (var row = 0; row < 3; row++)
        {
            Assert.True(double.IsFinite(map.Apogee[row * 5 + 2]));
            Assert.True(double.IsNaN(map.Apogee[row * 5 + 3]) && double.IsNaN(map.Apogee[row * 5 + 4]));
        }

        Assert.Equal(6, map.Refused);
        Assert.Contains(map.Findings, f => f.Message.Contains("6 of 15 cells are empty", StringComparison.Ordinal));
        Assert.Equal(Cautions.ForFlight, map.Cautions);
        Assert.NotEmpty(map.Working.Steps);
    }

    [Fact]
    public void Pressure_along_either_axis_gives_the_same_numbers()
    {
        var pressure = MapAxis.Pressure(20.BarGauge(), 50.BarGauge(), 4);
        var water = MapAxis.WaterFraction(20.Percent(), 40.Percent(), 3);
        var wide = new FlightMap(Curlew, pressure, water).Compute();
        var tall = new FlightMap(Curlew, water, pressure).Compute();
        for (var p = 0; p < 4; p++)
            for (var w = 0; w < 3; w++) Assert.Equal(wide.Apogee[w * 4 + p], tall.Apogee[p * 3 + w], 9);
    }

    [Fact]
    public void Refuses_equal_axes_ends_in_the_wrong_order_and_hopeless_maps()
    {
        var water = MapAxis.WaterFraction(20.Percent(), 40.Percent(), 3);
        Assert.Throws<InvalidDesignException>(() => new FlightMap(Curlew, water, water).Compute());
        Assert.Throws<OutOfRangeException>(() => MapAxis.Throat(12.Millimetres(), 8.Millimetres()));
        Assert.Throws<OutOfRangeException>(() => MapAxis.Throat(8.Millimetres(), 12.Millimetres(), 1));
        var hopeless = new FlightMap(Curlew, water, MapAxis.Pressure(60.BarGauge(), 80.BarGauge(), 3));
        Assert.Contains("rated for", Assert.Throws<InvalidDesignException>(hopeless.Compute).Message, StringComparison.Ordinal);
    }
}
