using NotebookKit.Interactive.Formatters;

namespace NotebookKit.Interactive.Tests;

public sealed class ThreeDigitsTests
{
    [Theory]
    [InlineData("175.9 m", "176 m")]
    [InlineData("1.069 m", "1.07 m")]
    [InlineData("0.1340°", "0.134°")]
    [InlineData("32.10 m/s", "32.1 m/s")]
    [InlineData("1.200 m", "1.20 m")]
    [InlineData("9.996 m", "10.0 m")]
    [InlineData("0.09996 m", "0.100 m")]
    [InlineData("−12.34 m", "−12.3 m")]
    public void A_number_is_cut_to_three_digits(string text, string shown) => Assert.Equal(shown, ThreeDigits.Of(text));

    // 51.25 may have been 51.246 or 51.254: the table says 51.2 of one and 51.3 of the other.
    [Theory]
    [InlineData("51.25 s")]
    [InlineData("2.9 calibres left")]
    [InlineData("1203 flights")]
    [InlineData("16.03.2026")]
    [InlineData("16 March")]
    [InlineData("none of 1000: below 0.3012 %")]
    [InlineData("")]
    public void A_text_that_holds_no_such_number_stays(string text) => Assert.Equal(text, ThreeDigits.Of(text));
}
