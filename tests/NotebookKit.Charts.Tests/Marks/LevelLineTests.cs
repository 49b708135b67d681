using NotebookKit.Charts.Marks;
using NotebookKit.Quantities;

namespace NotebookKit.Charts.Tests.Marks;

public sealed class LevelLineTests
{
    [Fact]
    public void The_level_of_a_cone_is_a_circle_in_one_closed_piece()
    {
        var axis = Gallery.Column("x", "m", 41, t => t - 1, 2);
        var field = Of(axis, (x, y) => Math.Sqrt((x * x) + (y * y)));
        var (xs, ys) = LevelLine.Of(field, 0.7);
        Assert.DoesNotContain(double.NaN, xs.Values);
        Assert.Equal((xs[0], ys[0]), (xs[^1], ys[^1]));
        // Linear interpolation on a grid of 0.05 leaves less than h²/(8 r).
        Assert.All(xs.Values.Zip(ys.Values), p => Assert.InRange(double.Hypot(p.First, p.Second), 0.7 - 0.0005, 0.7 + 0.0005));
        Assert.Equal(2 * Math.PI * 0.7, Length(xs, ys), 2);
    }

    [Fact]
    public void A_saddle_gives_two_pieces_that_do_not_cross()
    {
        var axis = new Series("x", "m", [0, 1]);
        var field = new Field(axis, axis, new Series("z", "m", [1, 0, 0, 1]));
        var (xs, _) = LevelLine.Of(field, 0.6);
        Assert.Equal(5, xs.Count);
        Assert.Single(xs.Values, double.IsNaN);
    }

    [Fact]
    public void A_level_that_is_not_reached_gives_nothing()
    {
        var axis = Gallery.Column("x", "m", 5, t => t, 1);
        Assert.Equal(0, LevelLine.Of(Of(axis, (x, y) => x + y), 9).X.Count);
    }

    [Fact]
    public void Blank_cells_are_passed_over()
    {
        var axis = Gallery.Column("x", "m", 21, t => t, 1);
        var (xs, ys) = LevelLine.Of(Of(axis, (x, y) => x < 0.5 ? double.NaN : y), 0.33);
        Assert.All(xs.Values.Where(double.IsFinite), x => Assert.True(x >= 0.5));
        Assert.All(ys.Values.Where(double.IsFinite), y => Assert.Equal(0.33, y, 9));
    }

    private static Field Of(Series axis, Func<double, double, double> f) =>
        new(axis, axis, new Series("z", "m", [.. from y in axis.Values from x in axis.Values select f(x, y)]));

    private static double Length(Series xs, Series ys) => Enumerable.Range(1,
        xs.Count - 1).Sum(i => double.Hypot(xs[i] - xs[i - 1], ys[i] - ys[i - 1]));
}
