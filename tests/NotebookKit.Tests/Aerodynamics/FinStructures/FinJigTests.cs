using NotebookKit.Provenance;
using NotebookKit.Quantities;
using NotebookKit.Tests.Flight;

namespace NotebookKit.Tests.Aerodynamics.FinStructures;

public class FinJigTests
{
    private static FinJig Jig { get; } = new(0.5.Millimetres(), 80.Millimetres());

    // atan(0.5 / 80) = 0.358095°; the mean of three evenly spread angles has a deviation of a third of that.
    [Fact]
    public void Spread_of_the_mean_by_hand_and_by_samples()
    {
        var cant = Jig.Cant(3);
        Tolerance.Relative(0.358095, Jig.GapAngle.Degrees, 3e-6);
        Tolerance.Relative(0.358095 / 3, cant.Deviation.Degrees, 1e-5);
        var sampled = Math.Sqrt(cant.Samples.Values.Average(c => c * c));
        // 20 000 samples: 0.5 % standard error of a deviation, three of them.
        Tolerance.Relative(cant.Deviation.Degrees, sampled, 0.015);
        Assert.True(cant.Samples.Values.All(c => Math.Abs(c) <= cant.Worst.Degrees));
    }

    // Irwin and Hall: the mean of three uniforms on ±1 exceeds 2/3 in size with 2 · (3 (1 − 2/3)/2)³ / 6 = 1/24.
    [Fact]
    public void The_tail_is_that_of_three_evenly_spread_angles()
    {
        var gap = Jig.GapAngle;
        Tolerance.Absolute(1 - (1.0 / 24), Jig.Cant(3).Between(0.Degrees(), gap * (2.0 / 3)).DecimalFractions, 0.006);
    }

    [Fact]
    public void More_fins_more_length_and_less_gap_make_it_straighter()
    {
        Assert.True(Jig.Cant(4).Deviation < Jig.Cant(3).Deviation);
        Assert.True((Jig with { Length = 120.Millimetres() }).Cant(3).Deviation < Jig.Cant(3).Deviation);
        Assert.True((Jig with { Gap = 0.1.Millimetres() }).Cant(3).Deviation < Jig.Cant(3).Deviation);
        Assert.True((Jig with { Skew = 0.3.Degrees() }).Cant(3).Deviation > Jig.Cant(3).Deviation);
    }

    [Fact]
    public void A_twisted_jig_shifts_the_mean() =>
        Tolerance.Absolute(0.5, (Jig with { Twist = 0.5.Degrees() }).Cant(3).Samples.Values.Average(), 0.005);

    [Fact]
    public void Resonance_is_as_likely_as_the_cants_in_its_band()
    {
        var result = SampleAirframes.ThreeFins.Alignment(Jig, 80.MetresPerSecond());
        var critical = result.AtNineInTen.CriticalCant;
        Assert.Equal(result.Cant.Between(critical * 0.7, critical * 1.4), result.InResonanceBand);
        Assert.Equal(Cautions.ForFlight, result.Cautions);
    }

    [Theory]
    [InlineData(-0.1, 80)]
    [InlineData(6, 80)]
    [InlineData(0.5, 0)]
    public void A_jig_out_of_range_is_refused(double gap, double length) =>
        Assert.Throws<InvalidDesignException>(() => new FinJig(gap.Millimetres(), length.Millimetres()).Cant(3));
}
