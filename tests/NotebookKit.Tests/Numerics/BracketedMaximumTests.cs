using NotebookKit.Numerics;

namespace NotebookKit.Tests.Numerics;

public class BracketedMaximumTests
{
    [Fact]
    public void Finds_the_top_of_a_smooth_hill_in_few_evaluations()
    {
        // x exp(-x) is greatest at 1.
        var found = BracketedMaximum.Search(x => x * Math.Exp(-x), 0, 5, 1e-6);
        Tolerance.Absolute(1, found.Location, 1e-6);
        Tolerance.Absolute(Math.Exp(-1), found.Value, 1e-12);
        Assert.InRange(found.Evaluations, 5, 25);
    }

    [Theory]
    [InlineData(1, 5)]
    [InlineData(-1, 0)]
    public void A_function_without_a_top_inside_ends_at_the_better_end(double slope, double end) =>
        Tolerance.Absolute(end, BracketedMaximum.Search(x => slope * x, 0, 5, 1e-5).Location, 1e-4);

    [Fact]
    public void A_kink_is_found_too() =>
        Tolerance.Absolute(0.7, BracketedMaximum.Search(x => -Math.Abs(x - 0.7), 0, 1, 1e-7).Location, 1e-6);

    [Fact]
    public void What_is_not_a_number_counts_as_lowest() =>
        Tolerance.Absolute(2, BracketedMaximum.Search(x => x < 1 ? double.NaN : -(x - 2) * (x - 2), 0, 5, 1e-6).Location, 1e-5);

    [Fact]
    public void Refuses_ends_in_the_wrong_order_and_no_tolerance()
    {
        Assert.Throws<ArgumentException>(() => BracketedMaximum.Search(x => x, 1, 0, 1e-6));
        Assert.Throws<ArgumentException>(() => BracketedMaximum.Search(x => x, 0, 1, 0));
    }
}
