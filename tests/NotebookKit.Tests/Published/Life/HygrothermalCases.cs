using NotebookKit.Quantities;
using NotebookKit.Tests.Published.Vessels;
using NotebookKit.Vessels.Laminates;
using UnitsNet;

namespace NotebookKit.Tests.Published.Life;

public class HygrothermalCases
{
    private static Temperature Fahrenheit(double degrees) => Temperature.FromDegreesFahrenheit(degrees);

    [Theory]
    [PublishedCase("L41", "Chamis, NASA TM-83320, 1983, wet glass temperature (equation unverified); values exact")]
    [InlineData(0, 1)]
    [InlineData(0.5, 0.95125)]
    [InlineData(1, 0.905)]
    [InlineData(2, 0.82)]
    [InlineData(3, 0.745)]
    [InlineData(5, 0.625)]
    [InlineData(10, 0.5)]
    public void Wet_glass_temperature_over_dry(double percent, double ratio) =>
        Tolerance.Absolute(ratio, HygrothermalRetention.WetGlassRatio(percent.Percent()), 1e-14);

    [Theory]
    [PublishedCase("L43", "Chamis, NASA TM-83320, 1983 (equation unverified): cold-cured epoxy, computed")]
    [InlineData(20, 0, 1)]
    [InlineData(40, 0, 0.816496581)]
    [InlineData(60, 0, 0.577350269)]
    [InlineData(75, 0, 0.288675135)]
    [InlineData(60, 2, 0.2)]
    public void Cold_cured_epoxy(double celsius, double percent, double retention) =>
        Tolerance.Relative(retention, new HygrothermalRetention(80.Celsius(), percent.Percent(), celsius.Celsius()).Evaluate().Retention,
            1e-8);

    [Fact]
    [PublishedCase("L43", "Chamis, NASA TM-83320, 1983 (equation unverified): wet glass temperature of cold-cured epoxy")]
    public void Wet_glass_temperature_of_cold_cured_epoxy() =>
        Tolerance.Absolute(62.4, new HygrothermalRetention(80.Celsius(), 2.Percent(), 20.Celsius()).WetGlass.DegreesCelsius, 1e-9);

    // 420 °F dry, measured at 70 °F, 1 % of water, at 200 °F: √((380.1 − 200)/350).
    [Fact]
    [PublishedCase("L44", "Chamis, NASA TM-83320, 1983, with the ply of case V06: computed")]
    public void Ply_with_a_weakened_matrix()
    {
        var result = new HygrothermalRetention(Fahrenheit(420), 1.Percent(), Fahrenheit(200)) { Reference = Fahrenheit(70) }.Evaluate();
        Tolerance.Relative(0.717336343, result.Retention, 1e-8);
        var dry = Cases.WetCarbon(60.Percent());
        Tolerance.Relative(7.88803897, dry.Lamina().Transverse.Gigapascals, 1e-7);
        Tolerance.Relative(3.92923023, dry.Lamina().Shear.Gigapascals, 1e-7);
        var wet = result.Reduce(dry).Lamina(MatrixRule.Chamis);
        Tolerance.Relative(6.39465251, wet.Transverse.Gigapascals, 1e-7);
        Tolerance.Relative(2.99007145, wet.Shear.Gigapascals, 1e-7);
    }
}
