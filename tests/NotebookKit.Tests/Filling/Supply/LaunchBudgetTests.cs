using NotebookKit.Provenance;
using NotebookKit.Quantities;

namespace NotebookKit.Tests.Filling.Supply;

public class LaunchBudgetTests
{
    private static readonly LaunchBudget Boot = new()
    {
        Cylinders = [new("A", 10.Litres(), 200.BarGauge()), new("B", 7.Litres(), 120.BarGauge()), new("C", 12.Litres(), 35.BarGauge())],
        Chamber = new Chamber(2.5.Litres(), 66.Millimetres(), 45.BarGauge()),
        Target = 40.BarGauge(),
        WaterFraction = 32.Percent(),
    };

    [Fact]
    public void Cascade_gives_more_than_one_cylinder_at_a_time()
    {
        var result = Boot.Run();
        Assert.True(result.Launches > result.LaunchesOtherwise);
        Assert.Equal(result.Launches + 1, result.Launch.Count);
        Assert.All(result.CylinderPressures, s => Assert.Equal(result.Launches + 1, s.Count));
        // C, below the target, does nothing alone and helps in cascade.
        Assert.True(result.CylinderPressures[2].Values[^1] < 34);
        Assert.Contains((Boot with { Order = CylinderOrder.OneAtATime }).Run().Findings,
            f => f.Message.Contains("In the other order", StringComparison.Ordinal));
    }

    [Fact]
    public void Mass_is_neither_made_nor_lost()
    {
        var result = Boot.Run();
        var law = new GasLaw(Boot.Gas, Boot.Properties);
        double Density(double gauge) => law.AtPressure((gauge + 1.01325) * 1e5, 293.15).Density;
        var first = Boot.Cylinders.Sum(c => Density(c.Pressure.Bar) * c.Volume.CubicMeters);
        var last = Boot.Cylinders.Select((c, i) => Density(result.CylinderPressures[i].Values[^1]) * c.Volume.CubicMeters).Sum();
        Tolerance.Relative(result.Launches * (Density(40) - Density(0)) * Boot.GasVolume.CubicMeters, first - last, 1e-6);
    }

    [Fact]
    public void Says_when_not_one_launch_is_in_it()
    {
        var empty = Boot with { Cylinders = [new("C", 12.Litres(), 35.BarGauge())] };
        var result = empty.Run();
        Assert.Equal(0, result.Launches);
        Assert.Contains(result.Findings, f => f.Message.Contains("No launch is possible", StringComparison.Ordinal));
    }

    [Fact]
    public void Says_where_counting_stops_and_refuses_an_order_that_does_not_exist()
    {
        var tiny = new LaunchBudget { Cylinders = [new("A", 10.Litres(), 200.BarGauge())],
            Chamber = new Chamber(10.Millilitres(), 20.Millimetres(), 60.BarGauge()), Target = 40.BarGauge() };
        Assert.Contains(tiny.Run().Findings, f => f.Message.Contains("Counting stopped at 500 launches", StringComparison.Ordinal));
        Assert.Contains("order of the cylinders is 5", Assert.Throws<InvalidDesignException>(() => (tiny
            with { Order = (CylinderOrder)5 }).Run()).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Refuses_a_target_above_the_rating_and_no_cylinder()
    {
        var message = Assert.Throws<InvalidDesignException>(() => (Boot with { Target = 50.BarGauge(), Cylinders = [] }).Run()).Message;
        Assert.Contains("no more than the vessel's rated pressure", message, StringComparison.Ordinal);
        Assert.Contains("no cylinder", message, StringComparison.Ordinal);
    }
}
