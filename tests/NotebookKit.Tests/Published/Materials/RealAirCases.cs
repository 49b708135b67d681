using NotebookKit.Quantities;
using UnitsNet;

namespace NotebookKit.Tests.Published.Materials;

/// <summary>Real air against figures computed afresh from the published coefficients by an independent program, and against
/// tables.</summary>
public class RealAirCases
{
    private const string Lemmon = "E. W. Lemmon, R. T. Jacobsen, S. G. Penoncello, D. G. Friend, J. Phys. Chem. Ref. Data 29 (2000) 331";

    private static readonly Temperature Room = 293.15.Kelvins();
    private static readonly double[] Bars = [1.01325, 10, 30, 50, 60, 100, 150, 200, 232, 250, 300];

    private static RealGasState At(double bar, double kelvins = 293.15) => RealGas.Air.At(bar.BarAbsolute(), kelvins.Kelvins());

    [Theory]
    [InlineData(273.15, new[] { 0.99940, 0.99435, 0.98488, 0.97772, 0.97501, 0.97037, 0.97951, 1.00461, 1.02769, 1.04266, 1.09016 })]
    [InlineData(293.15, new[] { 0.99962, 0.99654, 0.99123, 0.98791, 0.98698, 0.98814, 1.00101, 1.02602, 1.04754, 1.06124, 1.10428 })]
    [InlineData(300.00, new[] { 0.99969, 0.99716, 0.99302, 0.99076, 0.99031, 0.99308, 1.00701, 1.03207, 1.05320, 1.06657, 1.10838 })]
    [PublishedCase("P60", Lemmon + ": compressibility factor of air")]
    public void Compressibility_factor(double kelvins, double[] factors)
    {
        for (var i = 0; i < Bars.Length; i++) Tolerance.Absolute(factors[i], At(Bars[i], kelvins).CompressibilityFactor, 1e-5);
    }

    // The diving table holds other air data; it is met within 0.0006.
    [Theory]
    [InlineData(150, 1.0074)]
    [InlineData(200, 1.0326)]
    [PublishedCase("P60", "Table of the compressibility factor of air at 300 K in an article on diving gases")]
    public void Compressibility_factor_of_another_table(double bar, double factor)
        => Tolerance.Absolute(factor, At(bar, 300).CompressibilityFactor, 7e-4);

    [Fact]
    [PublishedCase("P60", Lemmon + ": 300 K, 1 atm")]
    public void Heat_capacity_and_speed_of_sound_at_room_conditions()
    {
        var state = At(1.01325, 300);
        Tolerance.Relative(29.150, state.Cp.JoulesPerKilogramKelvin * 0.02896546, 2e-5);
        Tolerance.Relative(347.320, state.SpeedOfSound.MetersPerSecond, 2e-6);
    }

    [Theory]
    [InlineData(1.01325, 1.2046)]
    [InlineData(31.01325, 37.1894)]
    [InlineData(61.01325, 73.4685)]
    [InlineData(200, 231.6475)]
    [InlineData(300, 322.8474)]
    [PublishedCase("P61", Lemmon + ": density at 293.15 K")]
    public void Density_at_room_temperature(double bar, double kilogramsPerCubicMetre)
        => Tolerance.Relative(kilogramsPerCubicMetre, At(bar).Density.KilogramsPerCubicMeter, 3e-5);

    [Theory]
    [InlineData(200, 7.1961)]
    [InlineData(300, 11.4754)]
    [PublishedCase("P62", Lemmon + ": fills of 3 L to 60 bar from 10 L down to 65 bar")]
    public void Fills_from_a_cylinder(double bar, double fills)
    {
        double Rho(double b) => At(b).Density.KilogramsPerCubicMeter;
        Tolerance.Relative(fills, (Rho(bar) - Rho(65)) * 10 / ((Rho(60) - Rho(1.01325)) * 3), 2e-5);
    }

    [Theory]
    [InlineData(61.01325, 1.5, 33.4586, 245.515)]
    [InlineData(61.01325, 2.0, 22.0557, double.NaN)]
    [PublishedCase("P63", Lemmon + ": isentropic expansion from 293.15 K")]
    public void Isentropic_expansion(double bar, double ratio, double endBar, double endKelvins)
    {
        var end = RealGas.Air.Expanded(At(bar), ratio);
        Tolerance.Relative(endBar, end.Pressure.Bar, 1e-5);
        if (!double.IsNaN(endKelvins)) Tolerance.Absolute(endKelvins, end.Temperature.Kelvins, 1e-3);
    }

    [Theory]
    [InlineData(61.01325, 1.5, 1.4817)]
    [InlineData(61.01325, 2.0, 1.468)]
    [InlineData(31.01325, 1.5, 1.4371)]
    [InlineData(31.01325, 2.0, 1.4311)]
    [PublishedCase("P63", Lemmon + ": effective exponent of the expansion")]
    public void Effective_exponent(double bar, double ratio, double exponent)
    {
        var end = RealGas.Air.Expanded(At(bar), ratio);
        Tolerance.Absolute(exponent, Math.Log(bar / end.Pressure.Bar) / Math.Log(ratio), 4e-4);
    }

    [Theory]
    [InlineData(30, 1.4555)]
    [InlineData(60, 1.5113)]
    [PublishedCase("P63", Lemmon + ": ratio of heat capacities at 293.15 K")]
    public void Ratio_of_heat_capacities(double bar, double ratio) => Tolerance.Absolute(ratio, At(bar).HeatCapacityRatio, 1e-4);

    [Theory]
    [InlineData(1.01325, 0.68513)]
    [InlineData(10, 0.68770)]
    [InlineData(30, 0.69338)]
    [InlineData(60, 0.70173)]
    [InlineData(100, 0.71226)]
    [InlineData(200, 0.73259)]
    [PublishedCase("P64", Lemmon + ": critical flow factor at 293.15 K")]
    public void Critical_flow_factor(double bar, double factor)
        => Tolerance.Absolute(factor, RealGas.Air.CriticalFlowFactor(At(bar)), 1e-5);

    [Theory]
    [InlineData(200, 272.479)]
    [InlineData(300, 265.327)]
    [PublishedCase("P65", Lemmon + ": regulator from 293.15 K to 60 bar")]
    public void Regulator_cools_the_air(double bar, double kelvins)
        => Tolerance.Absolute(kelvins, RealGas.Air.Throttled(At(bar), 60.BarAbsolute()).Temperature.Kelvins, 1e-3);

    [Theory]
    [InlineData(60, 402.036, 42.601)]
    [InlineData(200, 371.450, 46.284)]
    [PublishedCase("P66", Lemmon + ": adiabatic fill of an evacuated vessel to 60 bar")]
    public void Adiabatic_fill(double supplyBar, double kelvins, double settledBar)
    {
        var line = supplyBar == 60 ? At(60) : RealGas.Air.Throttled(At(supplyBar), 60.BarAbsolute());
        var hot = RealGas.Air.Charged(RealGas.Air.At(AbsolutePressure.FromPascals(1), Room), line, 60.BarAbsolute());
        Tolerance.Absolute(kelvins, hot.Temperature.Kelvins, 0.02);
        Tolerance.Absolute(settledBar, RealGas.Air.Settled(hot, Room).Pressure.Bar, 2e-3);
    }

    // Tables of the equations' authors, unverified: zero density, five digits and more.
    [Theory]
    [InlineData("air", 18.5230, 26.3529)]
    [InlineData("nitrogen", 17.8771, 25.9361)]
    [PublishedCase("P61", "E. W. Lemmon, R. T. Jacobsen, Int. J. Thermophys. 25 (2004) 21, Table V: dilute gas at 300 K")]
    public void Viscosity_and_conductivity_of_the_dilute_gas(string name, double microPascalSeconds, double milliwatts)
    {
        var gas = name == "air" ? RealGas.Air : RealGas.Nitrogen;
        var state = gas.AtDensity(Density.FromKilogramsPerCubicMeter(1e-5), 300.Kelvins());
        Tolerance.Relative(microPascalSeconds, state.Viscosity.MicropascalSeconds, 1e-5);
        Tolerance.Relative(milliwatts, 1e3 * state.Conductivity.WattsPerMeterKelvin, 1e-5);
    }

    [Fact]
    [PublishedCase("P61", "M. J. Assael et al., J. Phys. Chem. Ref. Data 40 (2011) 033101: normal hydrogen at 298.15 K, 185.67 mW/(m·K); "
        + "C. D. Muzny et al. 2013: 8.90 µPa·s")]
    public void Transport_of_hydrogen()
    {
        var state = RealGas.Hydrogen.AtDensity(Density.FromKilogramsPerCubicMeter(1e-4), 298.15.Kelvins());
        Tolerance.Relative(185.67, 1e3 * state.Conductivity.WattsPerMeterKelvin, 1e-3);
        Tolerance.Relative(8.90, state.Viscosity.MicropascalSeconds, 3e-3);
    }
}
