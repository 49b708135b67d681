namespace NotebookKit.Tests.Published.Filling;

/// <summary>What decides whether the jet that fills a vessel stirs the gas in it, held against the measured fills.</summary>
public class JetMixingCases
{
    private const string Peterson = "P. F. Peterson, Int. J. Heat Mass Transfer 37, suppl. 1 (1994) 97 (recalled, unverified)";

    // By hand: H/d 10, d 20 mm, Δρ/ρ 0.1, U 5 m/s: Ri = 9.80665·0.02·0.1/25 = 7.845e-4, cube root 0.09223;
    // 1 + 0.02/(0.28284·0.2) = 1.35355, to the power of 2/3 1.22365; 10 × 0.09223 × 1.22365 = 1.1286.
    [Fact]
    [PublishedCase("N10", Peterson + ": the number by hand")]
    public void The_number_by_hand()
    {
        Tolerance.Relative(1.1286, JetMixing.Number(0.2, 0.02, 5, 0.1), 2e-4);
        // It falls with the speed to the power of 2/3: 1 is passed at 5 m/s × 1.1286^1.5 = 5.995 m/s.
        Assert.True(JetMixing.Number(0.2, 0.02, 5.98, 0.1) > 1 && JetMixing.Number(0.2, 0.02, 6.01, 0.1) < 1);
        Assert.Equal(double.PositiveInfinity, JetMixing.Number(0.2, 0.02, 0, 0.1));
    }
}
