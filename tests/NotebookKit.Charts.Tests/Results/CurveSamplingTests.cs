using NotebookKit.Charts.Results;
using NotebookKit.Quantities;

namespace NotebookKit.Charts.Tests.Results;

public sealed class CurveSamplingTests
{
    // A spike and a dip between any two of eleven equal shares of 0 to 10.
    private static readonly Series Time = new("Time", "s", [0, 2.4, 2.45, 2.5, 7.3, 7.35, 7.4, 10]);
    private static readonly Series Thrust = new("Thrust", "N", [0, 0, 100, 0, 0, -50, 0, 0]);

    [Fact]
    public void A_peak_and_a_dip_between_two_samples_are_kept_where_they_are()
    {
        var (x, y) = CurveSampling.Between(Time, Thrust, 0, 10, 11);
        Assert.Equal(100, y.Max());
        Assert.Equal(2.45, x[Array.IndexOf(y, y.Max())]);
        Assert.Equal(-50, y.Min());
        Assert.Equal(7.35, x[Array.IndexOf(y, y.Min())]);
        Assert.Equal(x.Order(), x);
        Assert.Equal((0.0, 10.0), (x[0], x[^1]));
    }

    [Fact]
    public void Samples_of_a_straight_line_stay_at_equal_shares()
    {
        var line = new Series("Height", "m", [0, 5]);
        var (x, y) = CurveSampling.Between(line with { Name = "Time", Unit = "s" }, line, 0, 5, 6);
        Assert.Equal([0, 1, 2, 3, 4, 5], x);
        Assert.Equal([0, 1, 2, 3, 4, 5], y);
    }
}
