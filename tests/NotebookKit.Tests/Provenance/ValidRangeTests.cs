using NotebookKit.Provenance;
using NotebookKit.Quantities;
using UnitsNet;

namespace NotebookKit.Tests.Provenance;

public class ValidRangeTests
{
    private static readonly ValidRange<Length> Bore = new(20.Millimetres(), 300.Millimetres());

    [Fact]
    public void Lets_through_what_is_inside_ends_included()
    {
        Assert.Equal(20.Millimetres(), Bore.Check(20.Millimetres(), "bore", ""));
        Assert.Equal(30.Centimetres(), Bore.Check(30.Centimetres(), "bore", ""));
    }

    [Fact]
    public void Says_name_value_range_and_remedy_in_one_sentence()
    {
        var error = Assert.Throws<OutOfRangeException>(() => Bore.Check(1.Feet(), "bore", "The braid tables end there."));
        Assert.Equal("bore is 1 ft; it must be 20 mm to 300 mm. The braid tables end there.", error.Message);
        Assert.Equal("1 ft", error.Value);
    }

    [Fact]
    public void Refuses_a_number_that_is_not_one() =>
        Assert.Throws<OutOfRangeException>(() => new ValidRange<double>(0, 1).Check(double.NaN, "discharge coefficient", ""));

    [Fact]
    public void Compares_gauge_pressures_too()
    {
        var range = new ValidRange<GaugePressure>(0.BarGauge(), 90.BarGauge());
        Assert.Null(range.Find(800.PsiGauge(), "fill pressure", ""));
        Assert.Equal(
            "fill pressure is 100 bar gauge; it must be 0 bar gauge to 90 bar gauge. Use a lower pressure.",
            range.Find(100.BarGauge(), "fill pressure", "Use a lower pressure.")!.Message);
    }
}
