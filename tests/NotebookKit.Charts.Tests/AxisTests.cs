using NotebookKit.Provenance;

namespace NotebookKit.Charts.Tests;

public sealed class AxisTests
{
    [Theory]
    [InlineData("")]
    [InlineData("   ")]
    [InlineData("\t")]
    public void An_axis_of_numbers_without_a_unit_is_refused(string unit)
    {
        var refusal = Assert.Throws<InvalidDesignException>(() => new Axis("Thrust", unit));
        Assert.Contains("Axis 'Thrust' has no unit", refusal.Message, StringComparison.Ordinal);
        Assert.Contains("for example \"N\"", refusal.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Name_and_unit_are_both_reported_where_both_are_missing() =>
        Assert.Equal(2, Assert.Throws<InvalidDesignException>(() => new Axis("", "")).Findings.Count);

    [Fact]
    public void The_title_carries_the_unit()
    {
        Assert.Equal("Thrust [N]", new Axis("Thrust", "N").Title);
        Assert.Equal("Margin [-]", new Axis("Margin", "-").Title);
        Assert.Equal("Part", Axis.OfNames("Part").Title);
        Assert.Equal("Speed [m/s]", Axis.OfNames("Speed", "m/s").Title);
    }

    [Theory]
    [InlineData(1, 1)]
    [InlineData(double.NaN, 1)]
    [InlineData(0, double.PositiveInfinity)]
    public void A_range_that_is_none_is_refused(double from, double to) =>
        Assert.Contains("both ends must be finite and differ",
            Assert.Throws<InvalidDesignException>(() => new Axis("Time", "s").Over(from, to)).Message, StringComparison.Ordinal);

    [Fact]
    public void A_logarithmic_axis_can_not_start_at_zero() =>
        Assert.Contains("above 0", Assert.Throws<InvalidDesignException>(() => new Axis("Time", "s").Logarithmic().Over(0, 10)).Message,
            StringComparison.Ordinal);
}
