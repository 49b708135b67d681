using NotebookKit.Quantities;

namespace NotebookKit.Tests.Quantities;

public class GaugePressureTests
{
    [Fact]
    public void Gauge_and_absolute_differ_by_ambient()
    {
        var absolute = 60.BarGauge().ToAbsolute(AbsolutePressure.StandardSeaLevel);
        Assert.Equal(61.01325, absolute.Bar, 12);
        Assert.Equal(60, absolute.ToGauge(AbsolutePressure.StandardSeaLevel).Bar, 12);
    }

    // NIST SP 811 (2008), Appendix B.8: 1 psi = 6.894 757 E+03 Pa, seven digits.
    [Fact]
    public void Psi_converts_as_NIST_prints_it() =>
        Assert.Equal(6894.757, 1.PsiGauge().Pascals, 3);

    [Theory]
    [InlineData(double.NaN)]
    [InlineData(double.PositiveInfinity)]
    public void Refuses_what_is_not_a_number(double value)
    {
        var error = Assert.Throws<ArgumentOutOfRangeException>(() => value.BarGauge());
        Assert.Contains("must be a finite number", error.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Refuses_an_absolute_pressure_below_vacuum()
    {
        var error = Assert.Throws<ArgumentOutOfRangeException>(() => (-2).BarAbsolute());
        Assert.Contains("below vacuum", error.Message, StringComparison.Ordinal);
    }
}
