using System.Globalization;
using NotebookKit.Quantities;
using UnitsNet.Units;

namespace NotebookKit.Tests.Quantities;

public class QuantityDisplayTests
{
    [Fact]
    public void Shows_the_unit_it_was_written_in()
    {
        Assert.Equal("63 mm", 63.Millimetres().Show());
        Assert.Equal("2.5 in", 2.5.Inches().Show());
        Assert.Equal("63.5 mm", 2.5.Inches().Show(LengthUnit.Millimeter));
    }

    [Fact]
    public void Does_not_depend_on_the_culture()
    {
        var before = CultureInfo.CurrentCulture;
        try
        {
            CultureInfo.CurrentCulture = new CultureInfo("") { NumberFormat = { NumberDecimalSeparator = "," } };
            Assert.Equal("1.5 kg", 1.5.Kilograms().Show());
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
        }
    }

    [Fact]
    public void Litres_do_not_read_as_ones()
    {
        Assert.Equal("20 mL", 20.Millilitres().Show());
        Assert.Equal("2.5 L", 2.5.Litres().Show());
    }

    // NIST SP 811 (2008), Appendix B.8: 1 in = 25.4 mm and 1 lb = 0.453 592 37 kg, both exact.
    [Fact]
    public void Inches_and_pounds_are_exact()
    {
        Assert.Equal(25.4, 1.Inches().Millimeters, 12);
        Assert.Equal(0.45359237, 1.Pounds().Kilograms, 12);
    }

    // ISO 1144:2016 defines tex as one gram in a kilometre of yarn.
    [Fact]
    public void Tex_is_grams_in_a_kilometre() => Assert.Equal(400e-6, 400.Tex().KilogramsPerMeter, 15);
}
