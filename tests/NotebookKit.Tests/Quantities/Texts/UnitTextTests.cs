using NotebookKit.Quantities.Texts;
using UnitsNet;

namespace NotebookKit.Tests.Quantities.Texts;

public class UnitTextTests
{
    // Factors: NIST Special Publication 811, 2008, appendix B.8.
    [Theory]
    [InlineData(typeof(Pressure), "psi", "Pa", 6.894757e3)]
    [InlineData(typeof(Pressure), "ksi", "Pa", 6.894757e6)]
    [InlineData(typeof(Pressure), "Msi", "Pa", 6.894757e9)]
    [InlineData(typeof(Pressure), "N/mm2", "Pa", 1e6)]
    [InlineData(typeof(Density), "lb/in3", "kg/m³", 2.767990e4)]
    [InlineData(typeof(AreaDensity), "oz/yd²", "kg/m²", 3.390575e-2)]
    [InlineData(typeof(AreaDensity), "gsm", "kg/m²", 1e-3)]
    [InlineData(typeof(LinearDensity), "tex", "kg/m", 1e-6)]
    [InlineData(typeof(Length), "um", "m", 1e-6)]
    [InlineData(typeof(Mass), "oz", "kg", 2.834952e-2)]
    [InlineData(typeof(CoefficientOfThermalExpansion), "ppm/K", "1/K", 1e-6)]
    public void A_unit_of_the_trade_is_what_the_handbook_says(Type quantity, string unit, string si, double factor) =>
        Tolerance.Relative(3 * factor, UnitText.Converter(quantity, unit, si)(3), 1e-6);

    [Theory]
    [InlineData(typeof(Duration), "ms", "s", 4100, 4.1)]
    [InlineData(typeof(Length), "mm", "m", 66, 0.066)]
    [InlineData(typeof(Pressure), "kPa", "bar", 3610, 36.1)]
    [InlineData(typeof(Temperature), "K", "°C", 293.15, 20)]
    public void A_power_of_ten_leaves_no_rounding_behind(Type quantity, string from, string to, double number, double wanted) =>
        Assert.Equal(wanted, UnitText.Converter(quantity, from, to)(number));

    [Theory]
    [InlineData("36 bar gauge", "gauge", "36 bar")]
    [InlineData("36 bar GAUGE", "gauge", "36 bar")]
    [InlineData("36 bar absolute", "gauge", null)]
    [InlineData("36 bargauge", "gauge", null)]
    public void What_a_pressure_is_read_against_is_a_word_of_its_own(string text, string word, string? bare)
        => Assert.Equal(bare, UnitText.Without(text, word));

    [Fact]
    public void A_number_alone_is_no_quantity()
    {
        Assert.Null(UnitText.Read(typeof(Ratio), "32"));
        Assert.Null(UnitText.Of(typeof(Length), 1, "bar"));
        Assert.Null(UnitText.Number("1,5"));
        Assert.Null(UnitText.Number("NaN"));
    }
}
