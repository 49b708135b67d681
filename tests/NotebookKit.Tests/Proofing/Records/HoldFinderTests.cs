using NotebookKit.Quantities;
using UnitsNet;

namespace NotebookKit.Tests.Proofing.Records;

/// <summary>Holds in readings that are written down here second by second, their figures worked by hand.</summary>
public class HoldFinderTests
{
    private static readonly Proof Planned = new()
    {
        Vessel = "Curlew", Volume = 2.5.Litres(), WorkingPressure = 40.BarGauge(),
        Wall = new WallExpansion(1.2.Percent(), 60.BarGauge(), NotebookKit.Provenance.Source.CommonPractice("test")),
    };

    private static ProofStep Step(double bar, double seconds) =>
        new(bar.BarGauge(), seconds.Seconds(), Volume.Zero, Volume.Zero, Volume.Zero);

    private static (double[] Seconds, double[] Bar) Stays(params (double Bar, int Seconds)[] stays)
    {
        double[] bar = [.. stays.SelectMany(s => Enumerable.Repeat(s.Bar, s.Seconds))];
        return ([.. Enumerable.Range(0, bar.Length).Select(i => (double)i)], bar);
    }

    private static HoldReading Read(double[] bar, double planned = 60, double seconds = 60, double error = 0.1) => HoldFinder.Read(
        Step(planned, seconds), (0, bar.Length - 1), [.. Enumerable.Range(0, bar.Length).Select(i => (double)i)], bar, null, Planned.Filled,
        error);

    // On the way up a step of 60 s is the first stay of 30 s or more, also where the gauge stands there longer on the way down.
    [Theory]
    [InlineData(36, 0, 35)]
    [InlineData(20, 100, 219)]
    public void The_first_stay_of_half_the_planned_time_is_the_step(int first, int from, int to)
    {
        var (seconds, bar) = Stays((15, first), (20, 40), (25, 60 - first + 20 - 20), (15, 120));
        var found = HoldFinder.Rows([Step(15, 60)], 0, seconds, bar, 0.1)[0]!.Value;
        Assert.Equal((from, to), (found.First, found.Last));
    }

    // The hold at the working pressure comes after the proof, though the gauge stood there on the way up, too.
    [Fact]
    public void A_step_is_looked_for_behind_the_one_before()
    {
        var (seconds, bar) = Stays((40, 60), (50, 5), (60, 120), (50, 5), (40, 300));
        var found = HoldFinder.Rows([Step(40, 60), Step(60, 120), Step(40, 100)], 1, seconds, bar, 0.1);
        Assert.Equal((0, 59), (found[0]!.Value.First, found[0]!.Value.Last));
        Assert.Equal((65, 184), (found[1]!.Value.First, found[1]!.Value.Last));
        Assert.Equal((190, 489), (found[2]!.Value.First, found[2]!.Value.Last));
    }

    // 2.5 % of 60 bar is 1.5 bar at the proof, 10 % of 40 bar 4 bar after it.
    [Fact]
    public void The_band_of_a_hold_is_a_fortieth_to_the_proof_and_a_tenth_after()
    {
        var (seconds, bar) = Stays((58.4, 100), (61.4, 120), (20, 10), (36.1, 200), (35.9, 200));
        var found = HoldFinder.Rows([Step(60, 120), Step(40, 200)], 0, seconds, bar, 0.1);
        Assert.Equal((100, 219), (found[0]!.Value.First, found[0]!.Value.Last));
        Assert.Equal((230, 429), (found[1]!.Value.First, found[1]!.Value.Last));
    }

    // Of 60 s, 58 count: a reading at each end may be missing. The second before and after may be low, a third one counts.
    [Theory]
    [InlineData(1, 1, 60)]
    [InlineData(2, 1, 59)]
    public void Two_seconds_of_a_hold_may_be_missing(int before, int after, double lowest)
    {
        double[] bar = [.. Enumerable.Range(0, 61).Select(i => i < before || i > 60 - after ? 59.0 : 60)];
        Assert.Equal(lowest, Read(bar).Minimum.Bar, 9);
    }

    // Ninety seconds for a hold of sixty: the first sixty stood at 60 bar, the rest fell away.
    [Fact]
    public void The_best_stretch_of_the_planned_time_counts()
    {
        double[] bar = [.. Enumerable.Range(0, 91).Select(i => i <= 60 ? 60 : 60 - (0.03 * (i - 60)))];
        Assert.Equal(60, Read(bar, error: 0.5).Minimum.Bar, 9);
    }

    // Level but for a drop of 1 bar half-way: the drop is one, and nothing leaks beside it.
    [Fact]
    public void A_sudden_drop_is_taken_out_of_the_leak()
    {
        var read = Read([.. Enumerable.Range(0, 61).Select(i => i < 30 ? 60.0 : 59)]);
        Assert.Equal(1, Assert.Single(read.Drops).Fall.Bars, 9);
        Assert.Equal(30, read.Drops[0].At.Seconds, 9);
        Assert.Equal(0, read.Fall.Bars, 9);
    }

    // 2.5 times the gauge's 0.1 bar.
    [Theory]
    [InlineData(0.24, 0)]
    [InlineData(0.26, 1)]
    public void A_drop_is_one_from_two_and_a_half_errors_of_the_gauge_on(double fall, int drops) =>
        Assert.Equal(drops, Read([.. Enumerable.Range(0, 61).Select(i => i < 30 ? 60.0 : 60 - fall)]).Drops.Count);

    // 60 − 0.01·t ∓ 0.05 over 11 s: n = 11, Sxx = 110; the sum of ±1 against t is −0, so the slope stays and the rest is 0.05²·(11 − 1/11),
    // over n − 2 = 9 and 110: 0.0050204 bar/s, times 10 s.
    [Fact]
    public void The_leak_and_its_error_by_hand()
    {
        var read = Read([.. Enumerable.Range(0, 11).Select(i => 60 - (0.01 * i) + (i % 2 == 0 ? 0.05 : -0.05))], seconds: 10);
        Assert.Equal(0.1, read.Fall.Bars, 9);
        var rest = 0.05 * 0.05 * (11 - (1 / 11.0));
        Tolerance.Relative(10 * Math.Sqrt(rest / 9 / 110), read.FallUncertainty.Bars, 1e-9);
    }

    // A pump's last stroke that stands off by more than twice the gauge's error belongs to no hold; by less it does.
    [Theory]
    [InlineData(0.3, 1)]
    [InlineData(0.15, 0)]
    public void A_last_stroke_is_left_out(double off, int first)
    {
        var (seconds, bar) = Stays((60, 100), (40, 5));
        bar[0] += off;
        bar[99] -= off;
        var found = HoldFinder.Rows([Step(60, 60)], 0, seconds, bar, 0.1)[0]!.Value;
        Assert.Equal((first, 99 - first), (found.First, found.Last));
    }
}
