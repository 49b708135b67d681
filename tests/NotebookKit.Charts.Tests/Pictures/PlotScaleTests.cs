using CsCheck;
using NotebookKit.Charts.Pictures;

namespace NotebookKit.Charts.Tests.Pictures;

public sealed class PlotScaleTests
{
    [Fact]
    public void Values_and_marks_lie_inside_and_in_order() =>
        Gen.Select(Gen.Double[-1e6, 1e6], Gen.Double[1e-3, 1e6]).Sample((low, span) =>
        {
            var scale = new PlotScale(new Axis("x", "m"), [low, low + span], 100, 900, exact: false);
            Assert.InRange(scale.At(low), 99.999, 900.001);
            Assert.InRange(scale.At(low + span), 99.999, 900.001);
            var ticks = scale.Ticks();
            Assert.InRange(ticks.Count, 3, 15);
            Assert.Equal(ticks.Order(), ticks);
            Assert.All(ticks, t => Assert.InRange(scale.At(t), 99.9, 900.1));
        });

    [Fact]
    public void A_logarithmic_axis_gives_each_decade_the_same_room()
    {
        var scale = new PlotScale(new Axis("x", "m").Logarithmic(), [1, 1000], 0, 300, exact: true);
        Assert.Equal([0.0, 100, 200, 300], new[] { 1.0, 10, 100, 1000 }.Select(v => Math.Round(scale.At(v), 9)));
    }

    [Fact]
    public void One_value_still_gets_an_axis() => Assert.True(new PlotScale(new Axis("x", "m"), [5], 0, 100,
        exact: true).Ticks().Count > 1);

    [Theory]
    [InlineData(0.30000000000000004, "0.3")]
    [InlineData(-1500, "−1\u202F500")]
    [InlineData(0, "0")]
    public void A_mark_is_written_without_noise(double value, string expected) => Assert.Equal(expected, PlotScale.Label(value));
}
