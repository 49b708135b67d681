using NotebookKit.Quantities;

namespace NotebookKit.Tests.Published.Filling;

public class WaterContactCases
{
    // The gas that drove the water out without heat: 0.0974455611 kg at 249.260462 K in 3 L.
    private static readonly GasThroughWater Cold = new()
    {
        Pressure = (0.0974455611 * 287.05287 * 249.260462 / 0.003 / 1e5).BarAbsolute(), Temperature = 249.260462.Kelvins(),
            GasSpace = 3.Litres(), Water = 1.Kilograms(),
        WaterTemperature = 293.15.Kelvins(),
    };

    [Fact]
    [PublishedCase("L32", "First law of an ideal gas at constant volume against a bath of water, computed")]
    public void The_water_gives_the_gas_its_heat_back()
    {
        var result = Cold.Run();
        Tolerance.Relative(0.0974455611, result.GasMass.Kilograms, 1e-6);
        Tolerance.Relative(3069.061, result.Heat.Joules, 1e-4);
        Tolerance.Relative(0.733874, result.WaterCools.Kelvins, 1e-4);
        // As warm as the water, 0.0974455611 kg hold p = m R T/V, and the vapour of 20 °C comes to it (23.393 mbar, steam tables).
        Tolerance.Relative((0.0974455611 * 287.05287 * 293.15 / 0.003 / 1e5) + 0.023393, result.FullContact.Bar, 1e-6);
    }
}
