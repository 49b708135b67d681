using NotebookKit.Filling.Networks;
using NotebookKit.Quantities;

namespace NotebookKit.Tests.Clearance.Cards;

public class PadNetworkOnCardTests
{
    private static PadNetworkResult Run(Func<LinePart, LinePart>? change = null, Chamber? chamber = null) => new PadNetwork
    {
        Nodes = [new SupplyNode("supply", 33.BarGauge()), new VesselNode("vessel", chamber ?? CardFixture.TestVehicle.Charge.Chamber)
            { ProvedOn = CardFixture.ProofDay }],
        Links = [new("supply", "vessel", [.. new LinePart[] { new RegulatorPart("regulator", 33.BarGauge()) { RatedTo = 60.BarGauge(),
            Creep = 0.Bar(), ProvedOn = CardFixture.ProofDay }, new ValvePart("valve", new Orifice(1.Millimetres(), 0.8))
            { RatedTo = 60.BarGauge(), ProvedOn = CardFixture.ProofDay } }.Select(change ?? (p => p))])],
    }.Fill(5.Seconds());

    [Fact]
    public void A_network_with_every_rating_leaves_a_go_a_go()
    {
        Assert.True(CardFixture.CardOf(CardFixture.Whole).IsGo);
        Assert.True(CardFixture.CardOf(CardFixture.Whole with { Network = Run() }).IsGo);
    }

    [Fact]
    public void A_part_without_a_rating_or_below_what_may_stand_in_it_forbids()
    {
        var bare = CardFixture.CardOf(CardFixture.Whole with { Network = Run(p => p is ValvePart ? p with { RatedTo = null } : p) });
        Assert.False(bare.IsGo);
        Assert.Contains(bare.Findings, f => f.Message.Contains("Rating not given: valve", StringComparison.Ordinal));
        var low = CardFixture.CardOf(CardFixture.Whole with { Network = Run(p => p with { RatedTo = 20.BarGauge() }) });
        Assert.False(low.IsGo);
        Assert.Contains(low.Findings, f => f.Message.Contains("is rated to 20 bar gauge, but 33 bar gauge may stand",
            StringComparison.Ordinal));
    }

    [Fact]
    public void A_network_of_another_vessel_forbids()
    {
        var other = CardFixture.CardOf(CardFixture.Whole with { Network = Run(chamber: new(1.Litres(), 60.Millimetres(), 34.BarGauge())) });
        Assert.False(other.IsGo);
        Assert.Contains(other.Findings, f => f.Message.Contains("no vessel of the pad's network", StringComparison.OrdinalIgnoreCase));
    }
}
