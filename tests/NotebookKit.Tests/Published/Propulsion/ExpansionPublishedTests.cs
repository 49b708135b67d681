using NotebookKit.Quantities;

namespace NotebookKit.Tests.Published.Propulsion;

public class ExpansionPublishedTests
{
    private const string MoistSource = "Closed saturated air with droplets carried, no ice, vapour pressure of Bolton 1980: independent "
        + "integration, 2025; 0.005 because property fits differ";
    private const string RealSource = "Lemmon, Jacobsen, Penoncello, Friend, J. Phys. Chem. Ref. Data 29 (2000) 331, coded "
        + "independently, 2025";

    [Theory]
    [PublishedCase("P55", MoistSource)]
    [InlineData(2, 293, 1.276, 1.297, 1.323)]
    [InlineData(3, 293, 1.298, 1.319, 1.341)]
    [InlineData(5, 293, 1.325, 1.343, 1.360)]
    [InlineData(10, 293, 1.355, 1.368, 1.378)]
    [InlineData(30, 293, 1.383, 1.388, 1.392)]
    [InlineData(60, 293, 1.391, 1.394, 1.396)]
    [InlineData(2, 303, 1.236, 1.251, 1.276)]
    [InlineData(3, 303, 1.259, 1.277, 1.303)]
    [InlineData(5, 303, 1.290, 1.310, 1.333)]
    [InlineData(10, 303, 1.330, 1.347, 1.362)]
    [InlineData(30, 303, 1.372, 1.380, 1.386)]
    [InlineData(60, 303, 1.385, 1.390, 1.393)]
    public void Moist_air_expands_with_a_lower_exponent(double gaugeBar, double kelvin, params double[] exponents)
    {
        var start = gaugeBar * 1e5 + 101_325;
        var law = new ClosedGasLaw(MoistExpansion.Table(start, kelvin), 1);
        double[] ratios = [1.2, 1.5, 2];
        for (var i = 0; i < 3; i++) Tolerance.Absolute(exponents[i], Math.Log(start / law.Pressure(ratios[i])) / Math.Log(ratios[i]),
            0.005);
    }

    // The same numbers out of a firing: gas from V/ratio to V while the water leaves.
    [Theory]
    [PublishedCase("P55", MoistSource)]
    [InlineData(2, 1.2, 1.276)]
    [InlineData(5, 1.5, 1.343)]
    [InlineData(10, 2, 1.378)]
    [InlineData(60, 1.5, 1.394)]
    public void A_firing_with_moist_air_ends_its_water_phase_with_that_exponent(double gaugeBar, double ratio, double exponent)
    {
        var curve = new StaticFiring(
            new Charge(new Chamber(1.Litres(), 70.Millimetres(), 60.BarGauge()), (100 - 100 / ratio).Percent(), gaugeBar.BarGauge(),
                293.Kelvins()),
            new Nozzle(12.Millimetres()), AbsolutePressure.StandardSeaLevel) { Flow = FlowModel.Moist }.Fire().Curve;
        var end = curve.Pressure[curve.Time.Values.ToList().IndexOf(curve.WaterPhase!.End.Seconds)];
        Tolerance.Absolute(exponent, Math.Log(curve.Pressure[0] / end) / Math.Log(ratio), 0.005);
    }

    [Theory]
    [PublishedCase("P63", RealSource)]
    [InlineData(61.01325, 1.5, 33.4586, 1.4817)]
    [InlineData(61.01325, 2, 22.0557, 1.468)]
    [InlineData(31.01325, 1.5, double.NaN, 1.4371)]
    [InlineData(31.01325, 2, double.NaN, 1.4311)]
    public void Real_air_is_stiffer_than_an_ideal_gas(double startBar, double ratio, double endBar, double exponent)
    {
        var table = RealExpansion.Table(RealGas.Air, startBar * 1e5, 293.15, 5e4);
        var end = new ClosedGasLaw(table, 1).Pressure(ratio);
        if (!double.IsNaN(endBar)) Tolerance.Relative(endBar * 1e5, end, 1e-5);
        Tolerance.Absolute(exponent, Math.Log(startBar * 1e5 / end) / Math.Log(ratio), exponent == 1.468 ? 5e-4 : 5e-5);
    }

    [Fact]
    [PublishedCase("P63", RealSource)]
    public void Real_air_at_60_bar_ends_its_water_phase_5_percent_below_an_ideal_gas()
    {
        // Gas from 2/3 L to 1 L: 33.4586 bar against 34.5857 bar.
        var firing = new StaticFiring(
            new Charge(new Chamber(1.Litres(), 70.Millimetres(), 60.BarGauge()), (100.0 / 3).Percent(), 60.BarGauge(), 293.15.Kelvins()),
            new Nozzle(12.Millimetres()), AbsolutePressure.StandardSeaLevel);
        Tolerance.Relative(33.4586, PressureAtWaterOut(firing), 1e-5);
        Tolerance.Relative(34.5857, PressureAtWaterOut(firing with { Flow = FlowModel.Plain }), 1e-5);
    }

    [Theory]
    [PublishedCase("P64", RealSource + "; C* = ṁ √(R T0)/(A p0), 2e-4")]
    [InlineData(1.01325, 0.68513)]
    [InlineData(10, 0.68770)]
    [InlineData(30, 0.69338)]
    [InlineData(60, 0.70173)]
    [InlineData(100, 0.71226)]
    [InlineData(200, 0.73259)]
    public void Critical_flow_of_real_air(double bar, double factor)
    {
        var scale = Math.Sqrt(RealGas.Air.GasConstant.JoulesPerKilogramKelvin * 293.15) / (bar * 1e5);
        var jet = new IsentropeJet(RealExpansion.Table(RealGas.Air, bar * 1e5, 293.15, 5e4), 5e4);
        Tolerance.Relative(factor, jet.MassFlow(0, bar * 1e5, 1, 0, out _) * scale, 2e-4);
        var direct = RealThroat.Sonic(RealGas.Air, RealGas.Air.PointAtPressure(bar * 1e5, 293.15));
        Tolerance.Relative(factor, direct.Flux * scale, 2e-4);
    }

    private static double PressureAtWaterOut(StaticFiring firing)
    {
        var curve = firing.Fire().Curve;
        return curve.Pressure[curve.Time.Values.ToList().IndexOf(curve.WaterPhase!.End.Seconds)];
    }
}
