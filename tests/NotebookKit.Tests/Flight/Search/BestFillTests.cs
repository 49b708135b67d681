using NotebookKit.Provenance;
using NotebookKit.Quantities;
using NotebookKit.Tests.Propulsion;

namespace NotebookKit.Tests.Flight.Search;

public class BestFillTests
{
    private static readonly VerticalFlight Curlew = new(
        FiringExamples.Charge, FiringExamples.Nozzle, 800.Grams(), DragCurve.Constant(0.4, 74.Millimetres()),
            LaunchSite.SeaLevel) { Name = "Curlew" };

    [Fact]
    public void No_other_fill_is_better_and_the_flat_range_loses_one_percent()
    {
        var best = Curlew.BestFill();
        var top = best.Flight.Apogee.Meters;
        for (var percent = 0; percent <= 80; percent += 4) Assert.True(At(percent) <= top * (1 + 1e-4));
        Tolerance.Relative(0.99 * top, At(best.FlatFrom.Percent), 1e-3);
        Tolerance.Relative(0.99 * top, At(best.FlatTo.Percent), 1e-3);

        static double At(double percent) =>
            (Curlew with { Charge = Curlew.Charge with { WaterFraction = percent.Percent() } }).Peak().ApogeeMetres;
    }

    [Fact]
    public void A_throat_at_the_end_of_the_model_is_a_warning()
    {
        var best = new VerticalFlight(
            FiringExamples.Charge, FiringExamples.Nozzle, 800.Grams(), DragCurve.Constant(0.4, 74.Millimetres()),
                LaunchSite.SeaLevel).BestFill(5.Millimetres(), 65.Millimetres());
        Assert.Contains(best.Findings, f => f.Severity == FindingSeverity.Warning
            && f.Message.Contains("the maximum that the model covers", StringComparison.Ordinal));
    }

    [Fact]
    public void A_flat_optimum_is_a_warning()
    {
        var best = Curlew.BestFill();
        Assert.True(best.IsFlat);
        Assert.Contains(best.Findings, f => f.Severity == FindingSeverity.Warning
            && f.Message.Contains("optimum is flat", StringComparison.Ordinal));
    }

    [Fact]
    public void A_free_nozzle_does_at_least_as_well_as_a_given_one()
    {
        var best = Curlew.BestFill(6.Millimetres(), 24.Millimetres());
        Assert.True(best.Flight.Apogee >= Curlew.BestFill().Flight.Apogee);
        Assert.InRange(best.Throat.Millimeters, 6, 24);
        Assert.True(best.Flights > 300);
    }

    [Fact]
    public void The_fastest_fill_is_another_than_the_highest()
    {
        var fast = Curlew.BestFill(FlightGoal.MaximumSpeed);
        Assert.True(fast.Flight.MaximumSpeed >= Curlew.BestFill().Flight.MaximumSpeed);
        Assert.NotEqual(fast.WaterFraction.Percent, Curlew.BestFill().WaterFraction.Percent, 1);
    }

    [Fact]
    public void An_optimum_at_the_end_of_the_search_is_a_warning()
    {
        var search = new BestFill(Curlew) { WaterFractions = new(0.Percent(), 20.Percent()) };
        Assert.Contains(search.Find().Findings, f => f.Message.Contains("end of the search", StringComparison.Ordinal));
    }

    [Fact]
    public void Refuses_ranges_that_are_none_and_vehicles_that_never_lift()
    {
        Assert.Throws<InvalidDesignException>(() => new BestFill(Curlew) { WaterFractions = new(50.Percent(), 50.Percent()) }.Find());
        Assert.Throws<InvalidDesignException>(() => new BestFill(Curlew) { WaterFractions = new(0.Percent(), 99.Percent()) }.Find());
        Assert.Throws<InvalidDesignException>(() => Curlew.BestFill(10.Millimetres(), 90.Millimetres()));
        var error = Assert.Throws<InvalidDesignException>(() => (Curlew with { DryMass = 150.Kilograms() }).BestFill());
        Assert.Contains("no water fraction", error.Message, StringComparison.Ordinal);
    }
}
