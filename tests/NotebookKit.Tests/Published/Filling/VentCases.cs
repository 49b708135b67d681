using NotebookKit.Quantities;
using UnitsNet;

namespace NotebookKit.Tests.Published.Filling;

public class VentCases
{
    // 4 L at 30 bar gauge, hole 12 mm with Cd 0.95, 293.15 K.
    private static readonly Vent Fast = new()
    {
        Chamber = new Chamber(4.Litres(), 90.Millimetres(), 40.BarGauge()),
        Restrictor = new Orifice(12.Millimetres(), 0.95),
        From = 30.BarGauge(),
        Temperature = 293.15.Kelvins(),
    };

    [Theory]
    [InlineData(0.05, 21.554033)]
    [InlineData(0.10, 15.251733)]
    [InlineData(0.20, 8.007283)]
    [InlineData(0.457546125, 1.918010)]
    [PublishedCase("P42", "Choked isentropic blow-down in closed form (J. C. Dutton, R. E. Coverdill 1997)")]
    public void Choked_blow_down(double seconds, double barAbsolute)
    {
        var result = (Fast with { SafePressure = barAbsolute.BarAbsolute().ToGauge(AbsolutePressure.StandardSeaLevel), }).Unchecked();
        Tolerance.Relative(seconds, result.Seconds[^1], 1e-6);
    }

    [Fact]
    [PublishedCase("P42", "Gas temperature of the choked blow-down at 0.1 s")]
    public void Gas_cools_while_choked() =>
        Tolerance.Relative(239.345204, (Fast with { SafePressure = 15.251733.BarAbsolute().ToGauge(AbsolutePressure.StandardSeaLevel)
            }).Unchecked().Kelvins[^1], 1e-7);

    [Fact]
    [PublishedCase("P43", "Unchoked tail for γ = 7/5 in closed form (Dutton and Coverdill 1997, equations 3 to 5)")]
    public void Whole_blow_down_to_ambient_takes_a_finite_time() =>
        Tolerance.Relative(0.652577521, (Fast with { SafePressure = GaugePressure.Zero }).Unchecked().Seconds[^1], 1e-6);

    [Theory]
    [InlineData(50, 78.0984)]
    [InlineData(100, 61.5102)]
    [InlineData(150, 48.8284)]
    [InlineData(200, 39.0481)]
    [PublishedCase("P46", "Verification case of a NASA network-flow code: 10 ft³ at 100 psia, 80 °F, orifice 0.1 in")]
    public void Slow_tank_without_heat(double seconds, double psia)
    {
        var result = Tank(psia).Unchecked();
        Tolerance.Relative(seconds, result.Seconds[^1], 2e-5);
    }

    [Theory]
    [InlineData(100, 69.8058)]
    [InlineData(200, 48.7286)]
    [PublishedCase("P46", "The same tank at constant temperature: p/p0 = exp(−t/τ), τ = 278.20 s")]
    public void Slow_tank_at_constant_temperature(double seconds, double psia) =>
        Tolerance.Relative(seconds, Tank(psia).Unchecked(FillHeat.Isothermal).Seconds[^1], 2e-5);

    private static Vent Tank(double psia)
    {
        var ambient = 14.7.PsiAbsolute();
        return new()
        {
            Chamber = new Chamber(Volume.FromCubicFeet(10), 500.Millimetres(), 100.PsiGauge()),
            Restrictor = new Orifice(0.1.Inches(), 1),
            From = 100.PsiAbsolute().ToGauge(ambient),
            SafePressure = psia.PsiAbsolute().ToGauge(ambient),
            Ambient = ambient,
            Temperature = Temperature.FromDegreesFahrenheit(80),
        };
    }
}

internal static class VentAtAnyPressure
{
    /// <summary>The curve to a pressure that nobody would call safe, past the check that refuses it.</summary>
    public static (double[] Pascals, double[] Seconds, double[] Kelvins) Unchecked(this Vent vent, FillHeat heat = FillHeat.Adiabatic)
        => VentSimulation.Sum(vent, heat);
}
