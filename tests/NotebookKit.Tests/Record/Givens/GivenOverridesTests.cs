using NotebookKit.Provenance;
using NotebookKit.Quantities;
using NotebookKit.Record;
using UnitsNet;

namespace NotebookKit.Tests.Record.Givens;

public class GivenOverridesTests
{
    [Theory]
    [InlineData("20", "the unit is missing", "for example \"36 bar gauge\"")]
    [InlineData("20 gauge", "the unit is missing", "the word gauge")]
    [InlineData("20 bar", "whether it is gauge or absolute", "the word gauge")]
    [InlineData("20 bar absolute", "an absolute pressure, and a gauge pressure is wanted", "the word gauge")]
    [InlineData("30 mm", "isn't a pressure", "the word gauge")]
    [InlineData("30 mm gauge", "isn't a pressure", "the word gauge")]
    [InlineData("3,5 bar gauge", "with a point", "the word gauge")]
    [InlineData("plenty", "isn't a pressure", "the word gauge")]
    public void A_gauge_pressure_says_its_unit_and_that_it_is_gauge(string text, string reason, string remedy)
    {
        var refusal = GivenKind.Of(typeof(GaugePressure)).Refusal("fill pressure", text, 36.BarGauge());
        Assert.Contains($"\"fill pressure\" can't be \"{text}\"", refusal, StringComparison.Ordinal);
        Assert.Contains(reason, refusal, StringComparison.Ordinal);
        Assert.Contains(remedy, refusal, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(typeof(Length), "70", "the unit is missing", "a length with its unit, for example \"66 mm\"")]
    [InlineData(typeof(Length), "70 bar", "isn't a length", "a length with its unit")]
    [InlineData(typeof(Length), "70,5 mm", "with a point", "a length")]
    [InlineData(typeof(Ratio), "0.3", "the unit is missing", "\"32 %\"")]
    [InlineData(typeof(double), "1 mm", "isn't a plain number", "Write a plain number")]
    [InlineData(typeof(double), "NaN", "isn't a plain number", "Write a plain number")]
    [InlineData(typeof(int), "1.5", "isn't a whole number", "Write a whole number")]
    [InlineData(typeof(AbsolutePressure), "1 bar gauge", "an absolute one is wanted", "the word absolute")]
    [InlineData(typeof(AbsolutePressure), "-1 bar absolute", "below vacuum", "the word absolute")]
    [InlineData(typeof(DateTime), "2020-01-01", "isn't a date time", "in the notebook itself")]
    public void Every_other_kind_says_what_it_wants(Type type, string text, string reason, string remedy)
    {
        var refusal = GivenKind.Of(type).Refusal("x", text, type == typeof(Length) ? 66.Millimetres() : null);
        Assert.Contains(reason, refusal, StringComparison.Ordinal);
        Assert.Contains(remedy, refusal, StringComparison.Ordinal);
    }

    // NIST Special Publication 811 (2008), appendix B: 1 psi = 6894.757 Pa, 1 in = 25.4 mm.
    [Fact]
    public void A_value_may_be_in_any_unit_of_its_kind()
    {
        Assert.Equal(600 * 6894.757, ((GaugePressure)GivenKind.Of(typeof(GaugePressure)).Read("600 psi gauge")!).Pascals, 600 * 0.0005);
        Assert.Equal(63.5, ((Length)GivenKind.Of(typeof(Length)).Read("2.5 in")!).Millimeters, 1e-9);
        Assert.Equal(30, ((Ratio)GivenKind.Of(typeof(Ratio)).Read("30 %")!).Percent, 1e-9);
        Assert.Equal(-3, GivenKind.Of(typeof(int)).Read("-3"));
        Assert.Equal(0.97, GivenKind.Of(typeof(double)).Read("0.97"));
    }

    [Fact]
    public void A_name_given_two_values_is_refused()
    {
        var error = Assert.Throws<FormatException>(() => GivenOverrides.Parse(["bore=60 mm", "Bore=65 mm"]));
        Assert.Contains("\"60 mm\" and also \"65 mm\"", error.Message, StringComparison.Ordinal);
        Assert.Equal("60 mm", GivenOverrides.Parse(["bore=60 mm", "Bore = 60 mm"]).TextOf("BORE"));
    }

    [Theory]
    [InlineData("  =60 mm")]
    [InlineData("bore=  ")]
    [InlineData("bore=60 mm\nfill pressure=20 bar gauge")]
    public void Text_that_is_no_assignment_is_refused(string text) => Assert.Throws<FormatException>(() => GivenOverrides.Parse([text]));

    [Fact]
    public void An_override_that_no_given_takes_is_not_let_pass()
    {
        var overrides = GivenOverrides.Parse(["bore=60 mm", "throat=12 mm"]);
        var builder = new DesignRecordBuilder("test", overrides);
        builder.Given("Bore", 66.Millimetres(), 50.Millimetres(), 68.Millimetres(), "");
        overrides.RequireTaken("bore", "length");
        var error = Assert.Throws<FormatException>(() => overrides.RequireTaken("bore", "throat"));
        Assert.Contains("\"throat\" was to be \"12 mm\"", error.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_value_that_was_refused_counts_as_not_taken()
    {
        var overrides = GivenOverrides.Parse(["bore=90 mm"]);
        Assert.Throws<OutOfRangeException>(() => new DesignRecordBuilder("test", overrides).Given("bore", 66.Millimetres(),
            50.Millimetres(), 68.Millimetres(), ""));
        Assert.Equal(["bore"], overrides.Untaken);
    }

    [Theory]
    [InlineData(49, false)]
    [InlineData(50, true)]
    [InlineData(68, true)]
    [InlineData(68.1, false)]
    public void A_range_holds_its_ends(double millimetres, bool within) => Assert.Equal(
        within, GivenKind.Of(typeof(Length)).OutOfRange("bore", millimetres.Millimetres(), 5.Centimetres(), 68.Millimetres(), "") is null);
}
