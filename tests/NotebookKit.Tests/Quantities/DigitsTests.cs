using NotebookKit.Quantities;

namespace NotebookKit.Tests.Quantities;

public class DigitsTests
{
    [Theory]
    [InlineData(0, "0")]
    [InlineData(63, "63")]
    [InlineData(63.01, "63.0")]
    [InlineData(148.6047, "149")]
    [InlineData(1.629195, "1.63")]
    [InlineData(0.08644023, "0.0864")]
    [InlineData(9.996, "10.0")]
    [InlineData(-12.34, "−12.3")]
    [InlineData(31597, "31 600")]
    [InlineData(1.78938e-5, "1.79×10⁻⁵")]
    [InlineData(6371007.18, "6 370 000")]
    [InlineData(3.986004418e14, "3.99×10¹⁴")]
    public void Three_digits_as_an_engineer_writes_them(double value, string expected) =>
        Assert.Equal(expected, Digits.Round(value));

    [Theory]
    [InlineData(1234.5, 5, "1234.5")]
    [InlineData(31597, 5, "31 597")]
    public void More_where_asked(double value, int significant, string expected) =>
        Assert.Equal(expected, Digits.Round(value, significant));

    [Fact]
    public void Says_so_when_it_is_no_number() => Assert.Equal("not a number", Digits.Round(double.NaN));
}
