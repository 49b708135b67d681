using NotebookKit.Quantities;
using UnitsNet;

namespace NotebookKit.Tests.Published.Proofing;

public class StandOffCases
{
    private static StandOff For(double bar, StandOffEdition edition = StandOffEdition.AsmeLater) =>
        StandOff.ForEnergy(StoredEnergy.OfGas(bar.BarGauge(), 3.Litres(), AbsolutePressure.FromPascals(101_000),
            GasEnergyModel.IsentropicAsPrinted), edition);

    [Theory]
    [InlineData(30, 3.790)]
    [InlineData(60, 4.912)]
    [InlineData(90, 5.701)]
    [PublishedCase("V56", "ASME PCC-2, later editions, R = Rs (2 TNT)^(1/3)")]
    public void Distance_by_formula_in_the_current_form(double bar, double metres)
    {
        var standOff = For(bar);
        Tolerance.Relative(metres, standOff.ByFormula.Meters, 2e-4);
        Assert.Equal(30, standOff.Distance.Meters);
        Assert.True(standOff.FloorGoverns);
    }

    [Fact]
    [PublishedCase("V56", "ASME PCC-2-2008, Appendix 501-III, R = Rs TNT^(1/3)")]
    public void Distance_by_formula_of_2008() => Tolerance.Relative(3.898, For(60, StandOffEdition.Asme2008).ByFormula.Meters, 2e-4);

    [Fact]
    [PublishedCase("V56", "ASME PCC-2-2008, Appendix 501-III, limits of the method")]
    public void At_the_limit_of_the_first_class_formula_and_floor_meet_as_printed()
    {
        var limit = Energy.FromMegajoules(135.5);
        Tolerance.Relative(31.756, TntEquivalent.Of(limit).Kilograms, 2e-5);
        Tolerance.Relative(63.33, StandOff.ForEnergy(limit, StandOffEdition.Asme2008).ByFormula.Meters, 1e-4);
        Tolerance.Relative(79.80, StandOff.ForEnergy(limit).ByFormula.Meters, 1e-4);
        Assert.Equal(30, StandOff.ForEnergy(limit).Floor.Meters);
        Assert.Equal(60, StandOff.ForEnergy(Energy.FromMegajoules(135.6)).Floor.Meters);
    }

    [Fact]
    [PublishedCase("V57", "ASME PCC-2, table of alternative scaled distances (unverified)")]
    public void Alternative_scaled_distances()
    {
        var standOff = For(60);
        double[] metres = [4.912, 2.947, 1.473, 0.491];
        Assert.Equal(metres.Length, BlastEffect.All.Count);
        for (var i = 0; i < metres.Length; i++) Tolerance.Relative(metres[i], standOff.At(BlastEffect.All[i].Within).Meters, 1e-3);
    }
}
