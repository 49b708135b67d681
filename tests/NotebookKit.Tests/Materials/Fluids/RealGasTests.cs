using CsCheck;
using NotebookKit.Provenance;
using NotebookKit.Quantities;
using UnitsNet;

namespace NotebookKit.Tests.Materials.Fluids;

public class RealGasTests
{
    public static TheoryData<string> Names => ["air", "nitrogen", "hydrogen"];

    private static RealGas Gas(string name) => name switch { "air" => RealGas.Air, "nitrogen" => RealGas.Nitrogen, _ => RealGas.Hydrogen };

    // Maxwell relations tie derivatives that are coded apart: a slip in any of them shows.
    [Theory]
    [MemberData(nameof(Names))]
    public void Derivatives_agree_with_differences(string name)
    {
        var gas = Gas(name);
        Gen.Select(Gen.Double[200, 450], Gen.Double[0.05, 1.2]).Sample((kelvins, share) =>
        {
            var density = share * (name == "hydrogen" ? 20 : 300);
            var point = gas.Point(kelvins, density);
            double dt = 1e-3 * kelvins, dr = 1e-4 * density;
            GasPoint hot = gas.Point(kelvins + dt, density), cold = gas.Point(kelvins - dt, density);
            GasPoint dense = gas.Point(kelvins, density + dr), thin = gas.Point(kelvins, density - dr);
            double Close(double expected, double actual, double scale) => Math.Abs(expected - actual) / scale;
            return Close((hot.Pascals - cold.Pascals) / (2 * dt), point.PressureByTemperature, point.PressureByTemperature) < 1e-4
                && Close((dense.Pascals - thin.Pascals) / (2 * dr), point.PressureByDensity, point.PressureByDensity) < 1e-5
                && Close((hot.Energy - cold.Energy) / (2 * dt), point.Cv, point.Cv) < 1e-4
                && Close((hot.Entropy - cold.Entropy) / (2 * dt), point.Cv / kelvins, point.Cv / kelvins) < 1e-4
                && Close((dense.Energy - thin.Energy) / (2 * dr), point.EnergyByDensity, point.Pascals / (density * density)) < 1e-4
                && Close((dense.Entropy - thin.Entropy) / (2 * dr), -point.PressureByTemperature / (density * density),
                    point.Cv / density) < 1e-4;
        });
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void Turns_into_the_ideal_gas_as_pressure_falls(string name)
    {
        var state = Gas(name).At(AbsolutePressure.FromPascals(100), 300.Kelvins());
        Tolerance.Absolute(1, state.CompressibilityFactor, 1e-5);
        Tolerance.Relative(Gas(name).GasConstant.JoulesPerKilogramKelvin,
            state.Cp.JoulesPerKilogramKelvin - state.Cv.JoulesPerKilogramKelvin, 1e-4);
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void Pressure_is_met_again_at_the_density_found(string name) =>
        Gen.Select(Gen.Double[1e3, 9e7], Gen.Double[200, 800]).Sample((pascals, kelvins) =>
            Math.Abs(Gas(name).At(AbsolutePressure.FromPascals(pascals), kelvins.Kelvins()).Pressure.Pascals / pascals - 1) < 1e-9);

    [Fact]
    public void Expanding_and_compressing_again_comes_back()
    {
        var start = RealGas.Air.At(60.BarAbsolute(), 293.15.Kelvins());
        var back = RealGas.Air.Expanded(RealGas.Air.Expanded(start, 1.8), 1 / 1.8);
        Tolerance.Relative(60, back.Pressure.Bar, 1e-9);
        Tolerance.Relative(60, RealGas.Air.ExpandedTo(RealGas.Air.ExpandedTo(start, 20.BarAbsolute()), 60.BarAbsolute()).Pressure.Bar,
            1e-9);
    }

    [Fact]
    public void Refuses_cold_and_too_much_pressure_and_says_the_range()
    {
        Assert.Contains("135 K to 900 K", Assert.Throws<OutOfRangeException>(() => RealGas.Air.At(1.BarAbsolute(), 100.Kelvins())).Message,
            StringComparison.Ordinal);
        Assert.Contains("1000 bar absolute", Assert.Throws<OutOfRangeException>(() => RealGas.Air.At(2000.BarAbsolute(),
            300.Kelvins())).Message, StringComparison.Ordinal);
        Assert.Throws<OutOfRangeException>(() => RealGas.Air.AtDensity(Density.FromKilogramsPerCubicMeter(2000), 300.Kelvins()));
    }

    [Fact]
    public void Refuses_an_expansion_that_ends_as_liquid() =>
        Assert.Contains("isentropic expansion", Assert.Throws<OutOfRangeException>(() =>
            RealGas.Air.Expanded(RealGas.Air.At(60.BarAbsolute(), 293.15.Kelvins()), 50)).Message, StringComparison.Ordinal);

    [Fact]
    public void Water_refuses_ice_and_steam()
    {
        Assert.Contains("0 °C to 60 °C", Assert.Throws<OutOfRangeException>(() => new Water((-1).Celsius())).Message,
            StringComparison.Ordinal);
        Assert.Throws<OutOfRangeException>(() => new Water(80.Celsius()));
    }

    [Fact]
    public void Humid_air_refuses_less_than_the_vapour_pressure() =>
        Assert.Throws<InvalidDesignException>(() => new HumidAir(0.1.BarAbsolute(), 20.Celsius()).HumidityRatio);
}
