using NotebookKit.Quantities;
using NotebookKit.Vessels.Allowables;

namespace NotebookKit.Tests.Published.Life;

public class RiskCases
{
    private static StrengthInterference Of(double strength, double strengthDeviation, double load, double loadDeviation) =>
        new(strength.BarGauge(), strengthDeviation / strength, load.BarGauge(), loadDeviation / load);

    // The print says index 2.84, whose chance is 2.2557e-3; its own chance of 2.4e-3 belongs to 2.82: 2.84 is a misprint.
    [Fact]
    [PublishedCase("L59", "Faber, lecture notes (attribution unverified), Ex. 6.1: printed chance 2.4e-3")]
    public void Normal_strength_and_load()
    {
        var result = Of(350, 35, 200, 40).Normal();
        Tolerance.Relative(2.822163, result.Index.Beta, 3e-7);
        Tolerance.Absolute(2.4e-3, result.Index.Chance, 0.05e-3);
        Tolerance.Relative(2.38505e-3, result.Index.Chance, 3e-6);
    }

    // The second page prints .8133, the complement of the chance.
    [Theory]
    [PublishedCase("L60", "open reliability problems: printed .0028, and .8133 as the complement of the second")]
    [InlineData(2, 0.2, 1, 0.3, 2.773501, 2.772834e-3)]
    [InlineData(120, 20, 100, 10, 0.894427, 0.185547)]
    public void Normal_problems(double strength, double strengthDeviation, double load, double loadDeviation, double beta, double chance)
    {
        var result = Of(strength, strengthDeviation, load, loadDeviation).Normal();
        Tolerance.Relative(beta, result.Index.Beta, 6e-7);
        Tolerance.Relative(chance, result.Index.Chance, 3e-6);
    }

    [Theory]
    [PublishedCase("L61", "Withiam and others 1997, lognormal reliability index: computed")]
    [InlineData(2, 0.1, 0.05, 6.17942603, null)]
    [InlineData(1.5, 0.1, 0.05, 3.60086882, 1.585778e-4)]
    [InlineData(3, 0.2, 0.1, 4.88838488, 5.083331e-7)]
    public void Lognormal_strength_and_load(double ratio, double strengthSpread, double loadSpread, double beta, double? chance)
    {
        var result = new StrengthInterference((40 * ratio).BarGauge(), strengthSpread, 40.BarGauge(), loadSpread).Lognormal();
        Tolerance.Relative(beta, result.Index.Beta, 1e-8);
        if (chance is { } p) Tolerance.Relative(p, result.Index.Chance, 1e-6);
    }

    [Theory]
    [PublishedCase("L62", "EN 1990, index against failure probability, as a timber-design text prints it")]
    [InlineData(1.28, 1e-1)]
    [InlineData(2.32, 1e-2)]
    [InlineData(3.09, 1e-3)]
    [InlineData(3.72, 1e-4)]
    [InlineData(4.27, 1e-5)]
    [InlineData(4.75, 1e-6)]
    [InlineData(5.20, 1e-7)]
    [InlineData(3.8, 7.2e-5)]
    [InlineData(4.7, 1.30e-6)]
    public void Index_and_chance(double beta, double chance)
    {
        Tolerance.Relative(chance, new ReliabilityIndex(beta).Chance, 0.07);
        Tolerance.Absolute(beta, ReliabilityIndex.OfChance(chance).Beta, 0.03);
    }

    // Printed 5.60, exact 5.612: by its chance the row is 7.2 % off.
    [Fact]
    [PublishedCase("L62", "EN 1990, index against failure probability, as a timber-design text prints it")]
    public void Rarest_chance_of_the_table() => Tolerance.Absolute(5.60, ReliabilityIndex.OfChance(1e-8).Beta, 0.03);

    [Fact]
    [PublishedCase("L62", "EN 1990: 4.7 for one year is 3.8 for fifty")]
    public void One_year_and_fifty()
    {
        var fifty = new ReliabilityIndex(4.7).Over(50);
        Tolerance.Relative(6.5038e-5, fifty.Chance, 1e-5);
        Tolerance.Absolute(3.82631, fifty.Beta, 5e-6);
        Tolerance.Absolute(3.8, fifty.Beta, 0.03);
    }

    // A primer prints 298 for 95 %, 0.99: it rounds 298.07 down, which shows less than it says.
    [Theory]
    [PublishedCase("L63", "reliability primer, tests without a failure; 299 where it prints 298")]
    [InlineData(0.90, 0.90, 22)]
    [InlineData(0.90, 0.95, 29)]
    [InlineData(0.95, 0.90, 45)]
    [InlineData(0.95, 0.95, 59)]
    [InlineData(0.99, 0.95, 299)]
    [InlineData(0.99, 0.90, 230)]
    public void Tests_without_a_failure(double reliability, double confidence, int tests)
    {
        Assert.Equal(tests, ZeroFailureTests.Needed(reliability, confidence));
        Assert.Equal(tests, FewFailureTests.Needed(1 - reliability, 0, confidence));
    }

    [Theory]
    [PublishedCase("L63", "reliability primer, reliability shown at 90 %: printed 92.6 % for thirty")]
    [InlineData(1, 0.1)]
    [InlineData(3, 0.464159)]
    [InlineData(5, 0.630957)]
    [InlineData(10, 0.794328)]
    [InlineData(30, 0.926119)]
    public void Reliability_shown(int tests, double reliability)
        => Tolerance.Absolute(reliability, ZeroFailureTests.Shown(tests, 0.9), 5e-7);

    [Theory]
    [PublishedCase("L64", "Clopper and Pearson 1934: computed")]
    [InlineData(0, 30, 0.0738812719)]
    [InlineData(1, 30, 0.123569991)]
    [InlineData(1, 10, 0.336847723)]
    [InlineData(2, 100, 0.0523452902)]
    public void Few_failures(int failures, int tests, double atMost)
        => Tolerance.Relative(atMost, FewFailureTests.AtMost(failures, tests, 0.9), 1e-8);

    // The case's .00299573 and 2 995 733 are those of a rate (Poisson: −ln 0.05 / n); counted tries (binomial) give .00299125 and 2 995
    // 731.
    [Fact]
    [PublishedCase("L64", "Clopper and Pearson 1934, exact binomial; the case's own figures are the Poisson ones, 0.15 % higher")]
    public void One_in_a_million_is_not_shown_by_counting()
    {
        Tolerance.Relative(0.00299124955, FewFailureTests.AtMost(0, 1000, 0.95), 1e-8);
        Tolerance.Relative(0.00299573, FewFailureTests.AtMost(0, 1000, 0.95), 1.6e-3);
        Assert.Equal(2_995_731, FewFailureTests.Needed(1e-6, 0, 0.95));
    }

    [Fact]
    [PublishedCase("L65", "HSE, Reducing risks, protecting people, 2001, paragraphs 130 and 132")]
    public void Tolerable_risks()
    {
        Assert.Equal(1e-6, TolerableRisk.BroadlyAcceptable.PerYear);
        Assert.Equal(1e-4, TolerableRisk.PublicLimit.PerYear);
        Assert.Equal(1e-3, TolerableRisk.WorkerLimit.PerYear);
        Tolerance.Relative(2.000001e-8, TolerableRisk.BroadlyAcceptable.PerFill(50), 1e-7);
        Tolerance.Relative(9.9955012e-4, TolerableRisk.PublicLimit.OverYears(10), 1e-8);
    }

    [Fact]
    [PublishedCase("L66", "conditional probability of a lognormal strength cut off at the proof: computed")]
    public void Fill_after_a_proof()
    {
        var screening = new ScreeningByProof(180.BarGauge(), 0.12, 120.BarGauge(), 80.BarGauge());
        Assert.Equal(0, screening.AfterProof((200.0 / 3 + 1e-9).Percent()));
        Assert.Equal(0, screening.AfterProof(100.Percent()));
        Tolerance.Relative(5.69311945e-3, screening.AfterProof(60.Percent()), 1e-7);
        Tolerance.Absolute(0.6666040, screening.KeptWhereChanceIs(1e-6).DecimalFractions, 5e-8);
        Tolerance.Relative(5.927e-12, screening.WithoutProof(100.Percent()), 1e-4);
        Tolerance.Relative(2.0 / 3, screening.RulesOutDownTo().DecimalFractions, 1e-12);
    }
}
