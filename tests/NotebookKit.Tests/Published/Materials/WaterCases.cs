using NotebookKit.Quantities;

namespace NotebookKit.Tests.Published.Materials;

public class WaterCases
{
    // Reference properties of water at 1 atm from IAPWS-95 tables (density, thermal expansion) and 4 °C maximum; 1 in the last digit.
    [Theory]
    [InlineData(4, 999.975)]
    [InlineData(10, 999.702)]
    [InlineData(20, 998.207)]
    [InlineData(25, 997.047)]
    [InlineData(40, 992.216)]
    [PublishedCase("V73", "IAPWS-95, density of water at 101.325 kPa (W. Wagner, A. Pruss, J. Phys. Chem. Ref. Data 31 (2002) 387)")]
    public void Density_of_water(double celsius, double kilogramsPerCubicMetre) =>
        Tolerance.Absolute(kilogramsPerCubicMetre, new Water(celsius.Celsius()).Density.KilogramsPerCubicMeter, 0.006);

    [Fact]
    [PublishedCase("V73", "Handbook values at 20 °C: K 2.18 GPa, thermal expansion 2.07e-4 per K")]
    public void Bulk_modulus_and_thermal_expansion_at_room_temperature()
    {
        Tolerance.Relative(2.18, Water.AtRoomTemperature.BulkModulus.Gigapascals, 3e-3);
        Tolerance.Relative(2.07e-4, Water.AtRoomTemperature.VolumetricExpansion.PerKelvin, 3e-3);
    }

    [Theory]
    [InlineData(0.01, 611.657, 1e-4)]
    [InlineData(20, 2339.2, 1e-4)]
    [InlineData(40, 7384.9, 1e-4)]
    [PublishedCase("P55", "IAPWS saturation table, vapour pressure of water")]
    public void Vapour_pressure(double celsius, double pascals, double tolerance) =>
        Tolerance.Relative(pascals, new Water(celsius.Celsius()).VapourPressure.Pascals, tolerance);
}
