using NotebookKit.Charts.Engineering;
using NotebookKit.Charts.Figures;
using NotebookKit.Quantities;

namespace NotebookKit.Charts.Tests.Figures;

public sealed class LegendSizeTests
{
    private static readonly Series Time = new("Time", "s", [0, 1]);

    [Fact]
    public void A_single_line_needs_no_legend() => Assert.Equal(0, LegendSize.Rows(Lines("Speed")));

    [Fact]
    public void Two_short_names_share_a_row() => Assert.Equal(1, LegendSize.Rows(Lines("free", "damped by the air")));

    [Fact]
    public void Many_long_names_need_more_rows() =>
        Assert.Equal(2, LegendSize.Rows(Lines("landings", "50 % of landings", "90 % of landings", "99 % of landings", "edge of the field",
            "pad")));

    [Fact]
    public void A_name_longer_than_the_plot_is_a_row_of_its_own() => Assert.Equal(2, LegendSize.Rows(Lines(new string('x', 200), "y")));

    [Fact]
    public void The_plot_makes_room_for_every_row()
    {
        var one = Lines("free", "damped").ToFigureJson();
        var two = Lines(new string('x', 80), new string('y', 80)).ToFigureJson();
        Assert.Contains("\"height\":457", one, StringComparison.Ordinal);
        Assert.Contains("\"height\":478", two, StringComparison.Ordinal);
    }

    private static EngineeringChart Lines(params string[] names)
        => LineChart.Draw("Speed", Time, [.. names.Select(n => new Series(n, "m/s", [1, 2]))]);
}
