using NotebookKit.Flight;
using NotebookKit.Provenance;
using NotebookKit.Quantities;

namespace NotebookKit.Tests.Flight;

public class FlightCardTests
{
    private static readonly CardNotes Notes = new("P-7 of 3 May", 60.BarGauge(), 30.Metres());

    private static readonly LaunchSite Site = SampleVehicles.Breezy with { Ceiling = 400.Metres() };

    [Fact]
    public void The_card_says_what_the_officer_asks()
    {
        var card = SampleVehicles.Trainer.Card(Site, Notes with { Flight = "flight 3", Scatter = SampleVehicles.Trainer.Disperse(Site, new(), 40, 1) });
        Assert.True(card.MayFly, string.Join("; ", card.Findings));
        Assert.Contains("flight 3", card.Title, StringComparison.Ordinal);
        string[] wanted = ["Mass at release", "Charge pressure", "Proof", "Stand-off", "Apogee", "Ceiling", "Time of apogee", "Drift", "Most wind", "90 % of landings", "Above the ceiling"];
        Assert.All(wanted, name => Assert.Contains(card.Lines, l => l.Name == name));
        Assert.Contains(card.Checklist, c => c.Contains("990 ml of water", StringComparison.OrdinalIgnoreCase));
        Assert.Contains(card.Checklist, c => c.Contains("30 m", StringComparison.Ordinal));
        Assert.True(card.LowestApogee < card.Flight.Apogee && card.Flight.Apogee < card.HighestApogee);
        Assert.Contains(Cautions.StoredEnergy, card.Cautions);
        Assert.Contains(Cautions.Composite, card.Cautions);
    }

    [Fact]
    public void A_proof_below_the_charge_or_none_forbids_the_flight()
    {
        var low = SampleVehicles.Trainer.Card(Site, Notes with { ProofPressure = 30.BarGauge() });
        Assert.False(low.MayFly);
        Assert.Contains(low.Findings, f => f.Message.Contains("below the charge", StringComparison.Ordinal));
        Assert.Equal("DON'T FLY", low.Lines[0].Value);
        Assert.False(SampleVehicles.Trainer.Card(Site, Notes with { ProofReference = " " }).MayFly);
        Assert.False(SampleVehicles.Trainer.Card(Site, Notes with { StandOff = 1.Metres() }).MayFly);
    }

    [Fact]
    public void Wind_and_ceiling_forbid_it_too()
    {
        var windy = Site with { Wind = WindProfile.Uniform(14.MetresPerSecond()) };
        Assert.Contains(SampleVehicles.Trainer.Card(windy, Notes).Findings, f => f.Severity == FindingSeverity.Error && f.Message.Contains("above the most it may have", StringComparison.Ordinal));
        var expected = SampleVehicles.Trainer.Fly(Site).Apogee;
        var between = SampleVehicles.Trainer.Card(Site with { Ceiling = expected + 0.5.Metres() }, Notes);
        Assert.Contains(between.Findings, f => f.Message.Contains("low end of the drag band", StringComparison.Ordinal));
        Assert.False(SampleVehicles.Trainer.Card(Site with { Ceiling = expected - 1.Metres() }, Notes).MayFly);
    }

    [Fact]
    public void A_scatter_of_another_vehicle_or_site_or_of_a_part_forbids_it()
    {
        var other = (SampleVehicles.Trainer with { Name = "Another" }).Disperse(Site, new(), 10, 1);
        Assert.Contains(SampleVehicles.Trainer.Card(Site, Notes with { Scatter = other }).Findings, f => f.Message.Contains("is of Another", StringComparison.Ordinal));
        var elsewhere = SampleVehicles.Trainer.Disperse(Site with { Name = "elsewhere" }, new(), 10, 1);
        Assert.False(SampleVehicles.Trainer.Card(Site, Notes with { Scatter = elsewhere }).MayFly);
    }
}
