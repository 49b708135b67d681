using NotebookKit.Quantities;

namespace NotebookKit.Tests.Published.Flight;

[PublishedCase("F01", "NOAA, NASA, USAF, U.S. Standard Atmosphere, 1976, NOAA-S/T 76-1562, Table I and eqs 18-51")]
public class StandardAtmospherePublishedTests
{
    [Theory]
    [InlineData(0, 0, 288.1500, 101325, 1.22500, 340.294, 1.78938e-5)]
    [InlineData(500, 499.961, 284.9003, 95461.3, 1.16727, 338.370, 1.77366e-5)]
    [InlineData(1000, 999.843, 281.6510, 89876.3, 1.11166, 336.435, 1.75785e-5)]
    [InlineData(2000, 1999.371, 275.1541, 79501.4, 1.00655, 332.532, 1.72598e-5)]
    [InlineData(5000, 4996.070, 255.6755, 54048.3, 0.736428, 320.546, 1.62825e-5)]
    [InlineData(11000, 10980.998, 216.7735, 22700.0, 0.364802, 295.154, 1.42229e-5)]
    [InlineData(15000, 14964.688, 216.6500, 12111.8, 0.194755, 295.070, 1.42161e-5)]
    public void Table(double z, double h, double temperature, double pressure, double density, double sound, double viscosity)
    {
        var air = StandardAtmosphere.At(z.Metres());
        Tolerance.Absolute(h, StandardAtmosphere.Geopotential(z.Metres()).Meters, 5.1e-4);
        Tolerance.Absolute(temperature, air.Temperature.Kelvins, 1e-3);
        Tolerance.Relative(pressure, air.Pressure.Pascals, 1e-5);
        Tolerance.Relative(density, air.Density.KilogramsPerCubicMeter, 1e-5);
        Tolerance.Relative(sound, air.SpeedOfSound.MetersPerSecond, 1e-5);
        Tolerance.Relative(viscosity, air.Viscosity.PascalSeconds, 1e-5);
    }

    [Fact]
    public void Base_of_the_second_layer_is_at_11_km_geopotential()
    {
        var geometric = 11_000 / (1 - 11_000 / 6_356_766.0);
        Tolerance.Relative(22_632.0640, StandardAtmosphere.At(geometric.Metres()).Pressure.Pascals, 1e-8);
    }

    [Theory]
    [InlineData(20_000, 216.650, 5529.3, 0.088910)]
    [InlineData(25_000, 221.552, 2549.2, 0.040084)]
    [InlineData(30_000, 226.509, 1197.0, 0.018410)]
    public void Upper_rows_of_the_printed_table(double z, double temperature, double pressure, double density)
    {
        // Table I of the report, five printed digits.
        var air = StandardAtmosphere.At(z.Metres());
        Tolerance.Absolute(temperature, air.Temperature.Kelvins, 1e-3);
        Tolerance.Relative(pressure, air.Pressure.Pascals, 5e-5);
        Tolerance.Relative(density, air.Density.KilogramsPerCubicMeter, 5e-5);
    }
}
