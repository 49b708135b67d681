using NotebookKit.Provenance;

namespace NotebookKit.Tests.Published.Life;

public class DamageCases
{
    // Printed 24 880: rounded. Only 24 879 whole cycles are left.
    [Fact]
    [PublishedCase("L54", "machine-design textbook, problem 6-29 (Miner's rule): printed 24 880")]
    public void Cycles_left_after_a_first_kind()
    {
        var used = new CumulativeDamage([new("cycles of the first kind", 50_000, 131_200)]).Sum();
        Tolerance.Absolute(24_880, used.CyclesLeft(40_200), 1);
        Tolerance.Relative(24_879.878, used.CyclesLeft(40_200), 1e-8);
        Assert.Equal(24_879, used.WholeCyclesLeft(40_200));
    }

    [Fact]
    [PublishedCase("L54", "open problem on 1045 steel (Miner's rule): printed 7142 blocks")]
    public void Only_whole_blocks_count()
    {
        var sum = new CumulativeDamage([new("large cycles", 1, 1e4), new("small cycles", 4, 1e5)]).Sum();
        Tolerance.Relative(7142.857, 1 / sum.Damage, 1e-7);
        Assert.Equal(7142, sum.WholeBlocks);
    }

    [Fact]
    [PublishedCase("L55", "line of stress against cycles with slope 12 (Basquin's law): computed")]
    public void A_proof_counts_as_many_fills() =>
        Tolerance.Relative(129.746338, new FatigueSlope(12, Source.CommonPractice("slope of the case")).FillsFor(1.5), 1e-8);
}
