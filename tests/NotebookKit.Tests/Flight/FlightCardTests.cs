using NotebookKit.Aerodynamics;
using NotebookKit.Flight;
using NotebookKit.Provenance;
using NotebookKit.Quantities;
using UnitsNet;

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
    public void A_margin_below_what_is_wanted_forbids_it_not_only_one_that_is_gone()
    {
        var small = SampleVehicles.Trainer.Body.Fins[0] with { Planform = new TrapezoidPlanform(130.Millimetres(), 70.Millimetres(), 60.Millimetres(), 60.Millimetres()) };
        var card = (SampleVehicles.Trainer with { Body = SampleVehicles.Trainer.Body with { Fins = [small] } }).Card(SampleVehicles.Calm, Notes);
        Assert.InRange(card.LeastMargin, 0.1, 0.99);
        Assert.False(card.MayFly);
    }

    [Fact]
    public void Wind_above_a_quarter_of_the_speed_off_the_rail_forbids_it()
    {
        var card = SampleVehicles.Trainer.Card(SampleVehicles.Calm with { Wind = WindProfile.Uniform(8.MetresPerSecond()) }, Notes);
        Tolerance.Relative(card.Flight.Figures.RailExitSpeed.MetersPerSecond / 4, card.WindLimit.MetersPerSecond, 1e-9);
        Assert.False(card.MayFly);
    }

    [Fact]
    public void No_canopy_and_a_canopy_too_hard_for_its_gear_forbid_it()
    {
        Assert.False((SampleVehicles.Trainer with { Deployment = Deployment.Never }).Card(Site, Notes).MayFly);
        var late = SampleVehicles.Trainer with { Deployment = Deployment.AtApogee(4.Seconds()) };
        var load = late.Fly(Site).Figures.Opening!.DesignLoad;
        Assert.Contains(late.Card(Site, Notes with { RecoveryStrength = load / 2 }).Findings, f => f.Severity == FindingSeverity.Error && f.Message.Contains("weakest of cord", StringComparison.Ordinal));
        Assert.True(late.Card(Site, Notes with { RecoveryStrength = load * 2 }).MayFly);
        Assert.False(late.Card(Site, Notes with { RecoveryStrength = 0.Newtons() }).MayFly);
    }

    [Fact]
    public void A_proof_that_proves_nothing_beyond_the_charge_forbids_it()
    {
        Assert.False(SampleVehicles.Trainer.Card(Site, Notes with { ProofPressure = 40.BarGauge() }).MayFly);
        Assert.True(SampleVehicles.Trainer.Card(Site, Notes with { ProofPressure = 44.1.BarGauge() }).MayFly);
    }

    [Fact]
    public void Fins_that_do_not_hold_or_were_checked_for_less_forbid_it()
    {
        var body = SampleVehicles.Trainer.Body;
        var bond = new FinBond(6.Millimetres(), Pressure.FromMegapascals(10), Source.CommonPractice("invented"));
        FinStructureResult Check(double gigapascals, double speed) => body.FinStructure(
            new("sheet", Pressure.FromGigapascals(gigapascals), Pressure.FromMegapascals(500), Source.CommonPractice("invented")), bond, speed.MetresPerSecond(), 8.MetresPerSecond());
        Assert.True(Check(5, 80).Holds);
        Assert.True(SampleVehicles.Trainer.Card(Site, Notes with { Fins = Check(5, 80) }).MayFly);
        Assert.Contains(SampleVehicles.Trainer.Card(Site, Notes with { Fins = Check(5, 40) }).Findings, f => f.Severity == FindingSeverity.Error && f.Message.Contains("were checked to 40 m/s", StringComparison.Ordinal));
        Assert.False(Check(0.2, 80).Holds);
        Assert.False(SampleVehicles.Trainer.Card(Site, Notes with { Fins = Check(0.2, 80) }).MayFly);
    }

    // None of 20 flights passes the ceiling: that leaves one in seven possible.
    [Fact]
    public void The_scatter_has_its_say_on_the_card_and_few_flights_are_few()
    {
        var card = SampleVehicles.Trainer.Card(Site, Notes with { Scatter = SampleVehicles.Trainer.Disperse(Site, new(), 20, 1) });
        Assert.Contains(card.Findings, f => f.Message.Contains("none of 20: below 14 %", StringComparison.Ordinal));
        Assert.Contains("warnings below", card.Lines[0].Note, StringComparison.Ordinal);
        var judged = SampleVehicles.Trainer.Card(Site with { Ceiling = 390.Metres() }, Notes with { Scatter = SampleVehicles.Trainer.Disperse(Site, new(), 20, 1) });
        Assert.Contains(judged.Findings, f => f.Message.Contains("was judged by a ceiling of 400 m", StringComparison.Ordinal));
    }

    // Expected just below the ceiling: near half of the flights pass it, though the one on the card doesn't. The same of the field's edge.
    [Fact]
    public void A_ceiling_or_a_field_that_is_broken_too_often_forbids_it()
    {
        var figures = SampleVehicles.Trainer.Fly(Site).Figures;
        var low = Site with { Ceiling = figures.Apogee + 1.Metres() };
        var card = SampleVehicles.Trainer.Card(low, Notes with { Scatter = SampleVehicles.Trainer.Disperse(low, new(), 60, 1) });
        Assert.Contains(card.Findings, f => f.Severity == FindingSeverity.Error && f.Message.Contains("the ceiling is passed in", StringComparison.Ordinal));
        var small = Site with { Field = FlyingField.Circle(figures.Drift + 5.Metres()) };
        var edge = SampleVehicles.Trainer.Card(small, Notes with { Scatter = SampleVehicles.Trainer.Disperse(small, new(), 60, 1) });
        Assert.Contains(edge.Findings, f => f.Severity == FindingSeverity.Error && f.Message.Contains("lands off the field in", StringComparison.Ordinal));
        Assert.False(card.MayFly || edge.MayFly);
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
