using NotebookKit.Numerics;

namespace NotebookKit.Tests.Numerics;

public class BracketedRootTests
{
    [Fact]
    public void Finds_a_root_to_rounding_in_few_evaluations()
    {
        // x^3 - 2x - 5: Wallis' equation, root 2.094551481542326591482386540579 (Whittaker and Robinson, The Calculus of Observations,
        // 1924).
        Assert.True(BracketedRoot.TrySolve(x => x * x * x - 2 * x - 5, 2, 3, 0, out var result));
        Tolerance.Absolute(2.0945514815423266, result.Root, 1e-15);
        Assert.InRange(result.Evaluations, 3, 15);
    }

    [Theory]
    [InlineData(0, 1, 1)]
    [InlineData(-1, 0, 0)]
    public void A_root_at_an_end_counts(double low, double high, double root) =>
        Assert.Equal(root, BracketedRoot.Solve(x => x - root, low, high), 14);

    [Fact]
    public void A_flat_root_is_found_as_well() =>
        Tolerance.Absolute(0.3, BracketedRoot.Solve(x => Math.Pow(x - 0.3, 9), -1, 4), 1e-6);

    [Fact]
    public void A_jump_is_narrowed_down() =>
        Tolerance.Absolute(1.0 / 3, BracketedRoot.Solve(x => x < 1.0 / 3 ? -1 : 2, 0, 1), 1e-15);

    [Fact]
    public void No_sign_change_is_refused_with_the_values_at_the_ends()
    {
        var error = Assert.Throws<ArgumentException>(() => BracketedRoot.Solve(x => x * x + 1, -1, 2));
        Assert.Contains("no sign change between -1 and 2", error.Message, StringComparison.Ordinal);
        Assert.False(BracketedRoot.TrySolve(_ => double.NaN, 0, 1, 0, out var result));
        Assert.False(result.Converged);
    }
}
