using NotebookKit.Charts.Marks;
using NotebookKit.Charts.Results;
using NotebookKit.Filling.ByHand;
using NotebookKit.Filling.Networks;
using NotebookKit.Launching.Heating;
using NotebookKit.Quantities;
using UnitsNet;

namespace NotebookKit.Charts.Tests.Results;

public class PadChartTests
{
    private static readonly Chamber Vessel = new(2.5.Litres(), 66.Millimetres(), 45.BarGauge());

    private static readonly PadNetworkResult Run = new PadNetwork
    {
        Nodes = [new CylinderNode(new("cylinder", 10.Litres(), 200.BarGauge())), new VesselNode("booster", Vessel),
            new VesselNode("sustainer", new(1.2.Litres(), 60.Millimetres(), 44.BarGauge()))],
        Links = [new("cylinder", "booster", [new RegulatorPart("regulator", 40.BarGauge()), new PassagePart("hole",
            new Orifice(0.5.Millimetres(), 0.8))]), new("booster", "sustainer", [new CheckValvePart("check valve",
            new SonicRestrictor(1.LitresPerSecondBar(), 0.3), 0.3.Bar())])],
    }.Fill(30.Seconds());

    [Fact]
    public void A_network_has_pressures_flows_and_temperatures_over_time()
    {
        var chart = Run.Chart();
        Assert.Equal(["booster", "sustainer"], chart.Marks.Cast<Curve>().Select(c => c.Name));
        Assert.Equal(44, Assert.Single(chart.Limits).Value);
        Assert.Equal(["cylinder to booster", "booster to sustainer"], Run.FlowChart().Marks.Cast<Curve>().Select(c => c.Name));
        Assert.Equal("g/s", Run.FlowChart().Y.Unit);
        Assert.Equal(3, Run.TemperatureChart().Marks.Count);
    }

    [Fact]
    public void A_plan_by_hand_shows_what_to_expect_and_what_is_explained()
    {
        PadFill fill = new() { Chamber = Vessel, Supply = 45.BarGauge(), Restrictor = new Orifice(0.5.Millimetres(), 0.8),
            Target = 40.BarGauge(), Heat = FillHeat.Wall };
        var plan = HandFill.ToSettleAt(fill, within: 1.Bar(), cooled: TemperatureDelta.FromKelvins(10)).Plan();
        var chart = plan.Chart();
        Assert.Equal(4, chart.Marks.Count);
        Assert.Equal(45, Assert.Single(chart.Limits).Value);
    }

    [Fact]
    public void A_wait_in_the_sun_shows_gauge_and_wall()
    {
        var wait = new WaitInSun
        {
            Filled = new(44.BarGauge(), 20.Celsius()), Chamber = Vessel, Sun = new(35.Celsius(), Irradiance.FromWattsPerSquareMeter(950),
                0.9, 0.9, HeatTransferCoefficient.FromWattsPerSquareMeterKelvin(5)), ResinLimit = 50.Celsius(),
        }.Run();
        var chart = wait.Chart();
        Assert.Contains("the dump valve has to be opened within", chart.Remark, StringComparison.Ordinal);
        Assert.NotNull(chart.Right);
    }
}
