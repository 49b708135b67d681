using NotebookKit.Quantities;

namespace NotebookKit.Tests.Filling.Restrictors;

public class WetGasTests
{
    // Highest flux over the pressure in the throat of a mixture without slip and of one temperature, kg/(m²·s), 293.15 K, in SciPy: p v^n
    // of the gas with n = (x cp + y cw)/(x cv + y cw).
    [Theory]
    [InlineData(40, 1.01325, 0.5, 11960.112842)]
    [InlineData(40, 1.01325, 0.99, 52395.897646)]
    [InlineData(40, 1.01325, 0.9999, 84048.436902)]
    [InlineData(10, 1.01325, 0.9, 6486.033666)]
    [InlineData(10, 1.01325, 0.999, 31288.844203)]
    [InlineData(3, 1.01325, 0.99, 5865.571829)]
    [InlineData(60, 30, 0.95, 45702.861325)]
    [InlineData(60, 50, 0.6, 15910.399424)]
    public void A_mixture_passes_its_nozzle_flow_less_23_to_plus_2_percent(double ahead, double behind, double share, double flux)
    {
        double areaM2 = Math.PI / 4 * 1e-4, gas = new Orifice(10.Millimetres(), 1).Flow(ahead.BarAbsolute(), 293.15.Kelvins(),
            behind.BarAbsolute(), Gas.Air).KilogramsPerSecond, water = areaM2 * Math.Sqrt(2 * 1000 * (ahead - behind) * 1e5);
        Assert.InRange(WetGas.KilogramsPerSecond(share, gas, water, Gas.Air) / (areaM2 * flux), 0.77, 1.02);
    }

    [Fact]
    public void With_no_gas_it_is_water_and_with_next_to_no_water_gas()
    {
        Assert.Equal(3, WetGas.KilogramsPerSecond(1, 0, 3, Gas.Air));
        Tolerance.Relative(3, WetGas.KilogramsPerSecond(1 - 1e-12, 0.1, 3, Gas.Air), 1e-8);
        Tolerance.Relative(0.1, WetGas.KilogramsPerSecond(1e-9, 0.1, 3, Gas.Air), 1e-8);
        Assert.Equal(0, WetGas.KilogramsPerSecond(0.5, 0, 3, Gas.Air));
    }
}
