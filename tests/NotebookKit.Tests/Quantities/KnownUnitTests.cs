using System.Globalization;
using NotebookKit.DesignFiles.Shapes;
using NotebookKit.Quantities;
using NotebookKit.Quantities.Texts;
using UnitsNet;

namespace NotebookKit.Tests.Quantities;

/// <summary>Units that are read and shown without UnitsNet's own names mean what UnitsNet means by them.</summary>
public sealed class KnownUnitTests
{
    // Names that UnitsNet doesn't read, or reads as something else; each has its own test.
    private static readonly string[] OurOwn = ["gsm", "oz/yd²", "oz/yd2", "tex", "-", "Msi", "degC", "C", "ppm/K", "1/K", "µm/(m·K)", "um",
        "N/mm2", "N/mm²", "g/km", "kg/m3", "g/cm3", "lb/in3", "g/m2", "mL", "L"];

    [Fact]
    public void A_unit_that_is_known_here_is_the_one_that_UnitsNet_reads()
    {
        var held = 0;
        foreach (var (type, unit) in UnitText.Known.Where(k => !OurOwn.Contains(k.Unit)))
        {
            var units = Quantity.Infos.First(i => i.ValueType == type).UnitType;
            Assert.True(UnitParser.Default.TryParse(unit, units, CultureInfo.InvariantCulture, out var meant), $"{type.Name} {unit}");
            var own = UnitText.Of(type, 3.25, unit)!;
            Assert.Equal((3.25, meant), ((double)own.Value, own.Unit));
            held++;
        }

        Assert.True(held > 50);
    }

    // To ask UnitsNet for one name makes it set up every quantity that it knows: half a second in a browser.
    [Fact]
    public void A_design_is_read_and_its_ranges_are_written_without_UnitsNets_own_names()
    {
        foreach (var kind in UnitKind.All.Where(k => k.Type != typeof(SonicConductance)))
        {
            var type = kind.Type == typeof(GaugePressure) || kind.Type == typeof(AbsolutePressure) ? typeof(Pressure) : kind.Type;
            Assert.All(kind.Units, u => Assert.Contains((type, u), UnitText.Known));
            if (kind.Read(kind.Example) is IQuantity quantity) Assert.NotNull(QuantityDisplay.Usual(quantity));
        }
    }

    [Fact]
    public void A_symbol_that_is_known_here_is_the_one_that_UnitsNet_shows()
    {
        foreach (var info in Quantity.Infos)
        {
            foreach (var unit in info.UnitInfos)
            {
                var quantity = Quantity.From(1, unit.Value);
                var symbol = UnitAbbreviationsCache.Default.GetDefaultAbbreviation(unit.Value.GetType(), Convert.ToInt32(unit.Value,
                    CultureInfo.InvariantCulture), CultureInfo.InvariantCulture);
                if (quantity is Volume && symbol.EndsWith('l')) symbol = symbol[..^1] + "L";
                Assert.Equal(symbol, quantity.UnitSymbol());
            }
        }
    }
}
