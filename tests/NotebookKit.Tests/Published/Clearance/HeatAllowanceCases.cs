using NotebookKit.Quantities;
using NotebookKit.Tests.Clearance;

namespace NotebookKit.Tests.Published.Clearance;

public class HeatAllowanceCases
{
    // L43: epoxy of 80 °C glass temperature against 20 °C: dry at 40 °C 0.816496581. The rest by the same equation, summed in Python 3.
    [Theory]
    [PublishedCase("L43", "C. C. Chamis, NASA TM-83320, 1983 (equation unverified): sqrt((Tgw - T)/(Tgd - T0)), computed")]
    [InlineData(80, 0, 40, 0.816496581)]
    [InlineData(80, 2, 40, 0.6110100927)]
    [InlineData(60, 2, 15, 0.8803408431)]
    [InlineData(60, 2, 30, 0.6324555320)]
    [InlineData(60, 2, 45, 0.1581138830)]
    [InlineData(60, 0, 10, 1)]
    public void Heat_and_water_allow_what_the_resin_keeps(double glass, double water, double wall, double kept)
    {
        var resin = CardFixture.CuredWarm with { GlassTemperature = Property.Measured(glass.Celsius(), 0, "case") };
        var vessel = CardFixture.Built with { Resin = resin };
        var rating = vessel.Rate(RuleSets.Club, 34.BarGauge(), NotebookKit.Tests.Vessels.Samples.Twins(vessel));
        var proved = CardFixture.Recorded(rating, "T-1").ToProvedVessel(rating);
        var status = CardFixture.InService(proved).StatusOn(CardFixture.FlightDay, NotebookKit.Clearance.Service.LifeLimits.Club);
        var allowance = FillAllowance.Of(proved, status, wall.Celsius(), Property.Measured(water.Percent(), 0, "case"));
        Tolerance.Relative(kept * proved.Allowed.Pascals, allowance.ByHeat!.Value.Pascals, 1e-8);
        Tolerance.Relative(kept * proved.Allowed.Pascals, allowance.Pressure.Pascals, 1e-8);
        Assert.Equal(kept < 1, allowance.SetBy.EndsWith($"with the resin at {wall} °C", StringComparison.Ordinal));
    }
}
