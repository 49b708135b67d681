using NotebookKit.Provenance;
using NotebookKit.Quantities;
using NotebookKit.Recovery;

namespace NotebookKit.Tests.Recovery;

public class TimedOpeningTests
{
    private static Canopy Canopy { get; } = new(CanopyType.FlatCircular, 1.Metres()) { DragCoefficient = 0.75 };

    // Set to the top: 95 % of normal offsets lie within 1.959964 deviations, so the speed there is √(3² + (9.80665 · 0.979982)²) = 10.0677
    // m/s.
    [Fact]
    public void Nineteen_in_twenty_by_hand()
    {
        var result = Canopy.OpenByTimer(1.5.Kilograms(), 8.Seconds(), 8.Seconds(), 0.5.Seconds(), 3.MetresPerSecond());
        Tolerance.Relative(Canopy.Open(1.5.Kilograms(), 10.0677.MetresPerSecond()).FiniteMass.Newtons, result.LoadAt95Percent.Newtons,
            2e-5);
        Tolerance.Relative(Canopy.Open(1.5.Kilograms(), 3.MetresPerSecond()).FiniteMass.Newtons, result.ExpectedLoad.Newtons, 1e-12);
    }

    // The gear takes exactly the load of 95 %: one in twenty exceeds it.
    [Theory]
    [InlineData(8)]
    [InlineData(7.2)]
    [InlineData(9.5)]
    public void The_chance_of_too_much_agrees_with_the_quantile(double timer)
    {
        var first = Canopy.OpenByTimer(1.5.Kilograms(), timer.Seconds(), 8.Seconds(), 0.5.Seconds(), 3.MetresPerSecond());
        var second = Canopy.OpenByTimer(1.5.Kilograms(), timer.Seconds(), 8.Seconds(), 0.5.Seconds(), 3.MetresPerSecond(),
            first.LoadAt95Percent);
        Tolerance.Absolute(5, second.ChanceOfExceeding!.Value.Percent, 1e-6);
        Assert.Contains(second.Findings, f => f.Severity == FindingSeverity.Warning);
    }

    [Fact]
    public void Early_and_late_cost_the_same_and_the_top_costs_least()
    {
        var result = Canopy.OpenByTimer(1.5.Kilograms(), 8.Seconds(), 8.Seconds(), 0.5.Seconds(), 3.MetresPerSecond());
        for (var i = 0; i < result.Load.Count; i++) Tolerance.Relative(result.Load[i], result.Load[^(i + 1)], 1e-9);
        Assert.Equal(result.Load.Values.Min(), result.Load[result.Load.Count / 2]);
    }

    [Fact]
    public void A_timer_far_off_is_refused_and_one_a_second_off_warned_of()
    {
        Assert.Throws<OutOfRangeException>(() => Canopy.OpenByTimer(1.5.Kilograms(), 20.Seconds(), 8.Seconds(), 0.5.Seconds(),
            3.MetresPerSecond()));
        var late = Canopy.OpenByTimer(1.5.Kilograms(), 9.Seconds(), 8.Seconds(), 0.5.Seconds(), 3.MetresPerSecond());
        Assert.Contains(late.Findings, f => f.Message.Contains("late", StringComparison.Ordinal));
    }

    // C_x ρ v²/2 C_D S = 1.7 × 0.6125 × 10.0677² × 0.589049 = 62.17 N: what the infinite mass of this canopy sees, whatever hangs from it.
    [Fact]
    public void A_slow_opening_says_that_it_is_extrapolated_and_gives_the_upper_bound()
    {
        var result = Canopy.OpenByTimer(1.5.Kilograms(), 8.Seconds(), 8.Seconds(), 0.5.Seconds(), 3.MetresPerSecond());
        Tolerance.Relative(62.17, result.UpperBoundAt95Percent.Newtons, 2e-4);
        Assert.True(result.UpperBoundAt95Percent > result.LoadAt95Percent);
        Assert.Contains(result.Findings, f => f.Message.Contains("extrapolation", StringComparison.Ordinal)
            && f.Message.Contains("62.2 N", StringComparison.Ordinal));
        Assert.Contains(result.Lines, l => l.Value == result.UpperBoundAt95Percent.Show());
    }

    [Fact]
    public void Gear_between_the_load_and_its_upper_bound_is_warned_of()
    {
        var result = Canopy.OpenByTimer(1.5.Kilograms(), 8.Seconds(), 8.Seconds(), 0.5.Seconds(), 3.MetresPerSecond(), 50.Newtons());
        Assert.Contains(result.Findings, f => f.Severity == FindingSeverity.Warning
            && f.Message.Contains("upper bound", StringComparison.Ordinal));
    }
}
