using NotebookKit.Provenance;
using NotebookKit.Quantities;
using UnitsNet;

namespace NotebookKit.Tests.Filling.Supply;

public class SupplyTraceTests
{
    private static PadFill Fill => new()
    {
        Chamber = new Chamber(2.Litres(), 66.Millimetres(), 60.BarGauge()), Supply = 50.BarGauge(), Target = 40.BarGauge(),
        Restrictor = new Orifice(0.5.Millimetres(), 0.8),
    };

    private static SupplyTrace Trace(double[] seconds, double[] bar, string unit = "bar gauge") =>
        new(new("Time", "s", seconds), new("Supply", unit, bar));

    // The regulator wound up by hand and the log of that same hand are two ways to the same fill.
    [Fact]
    public void A_measured_ramp_fills_as_a_regulator_wound_up_so_does()
    {
        var wound = (Fill with { SupplyRise = PressureChangeRate.FromPascalsPerSecond(2e5) }).Run();
        var measured = (Fill with { MeasuredSupply = Trace([0, 25], [0, 50]) }).Run();
        Tolerance.Relative(wound.Duration.Seconds, measured.Duration.Seconds, 1e-5);
        Tolerance.Relative(wound.ShutTemperature.Kelvins, measured.ShutTemperature.Kelvins, 1e-5);
    }

    [Fact]
    public void A_supply_that_never_moved_fills_as_an_endless_one()
    {
        var plain = Fill.Run();
        var measured = (Fill with { MeasuredSupply = Trace([0, 600], [50, 50]) }).Run();
        Tolerance.Relative(plain.Duration.Seconds, measured.Duration.Seconds, 1e-4);
    }

    [Fact]
    public void A_supply_that_sags_for_a_while_fills_more_slowly()
    {
        var plain = Fill.Run();
        var sagging = (Fill with { MeasuredSupply = Trace([0, 5, 10, 15], [50, 20, 20, 50]) }).Run();
        Assert.True(sagging.Duration > plain.Duration);
    }

    [Theory]
    [InlineData(new[] { 0.0, 1 }, new[] { 50.0, 60 }, "bar gauge", "must stay at or below the supply pressure of 50 bar gauge")]
    [InlineData(new[] { 1.0, 2 }, new[] { 50.0, 50 }, "bar gauge", "it must begin at 0 s")]
    [InlineData(new[] { 0.0 }, new[] { 50.0 }, "bar gauge", "two at the least")]
    [InlineData(new[] { 0.0, 1 }, new[] { 50.0, 50 }, "psi", "it must be in s and bar gauge")]
    [InlineData(new[] { 0.0, 1 }, new[] { 50.0, double.NaN }, "bar gauge", "measured supply pressure is")]
    [InlineData(new[] { 0.0, 100 }, new[] { 30.0, 30 }, "bar gauge", "isn't reached")]
    public void A_trace_that_can_not_be_followed_is_refused(double[] seconds, double[] bar, string unit, string says) =>
        Assert.Contains(says, Assert.Throws<InvalidDesignException>(() => (Fill with { MeasuredSupply = Trace(seconds, bar, unit) }).Run())
            .Message, StringComparison.Ordinal);
}
