using NotebookKit.Clearance;
using NotebookKit.Clearance.Service;
using NotebookKit.Provenance;
using NotebookKit.Quantities;
using UnitsNet;
using static NotebookKit.Tests.Clearance.CardFixture;

namespace NotebookKit.Tests.Clearance.Cards;

public class FillAllowanceTests
{
    private static readonly ServiceStatus Status = InService(TheProved).StatusOn(FlightDay, LifeLimits.Club);

    [Fact]
    public void What_is_not_shown_allows_nothing_and_says_so()
    {
        var noTemperature = FillAllowance.Of(TheProved, Status, null);
        Assert.Equal(GaugePressure.Zero, noTemperature.Pressure);
        Assert.Null(noTemperature.ByHeat);
        Assert.False(noTemperature.IsShown);
        Assert.Contains("temperature of the vessel, which isn't given", noTemperature.SetBy, StringComparison.Ordinal);
        Assert.Contains(noTemperature.Findings, f => f.Severity == FindingSeverity.Error
            && f.Message.StartsWith("not shown: temperature of the vessel", StringComparison.Ordinal));
        Assert.Equal("not shown", noTemperature.Lines.Single(l => l.Name == "By heat and water").Value);

        var noService = FillAllowance.Of(TheProved, null, 15.Celsius(), NearlyDry);
        Assert.Equal(GaugePressure.Zero, noService.Pressure);
        Assert.Contains("service record", noService.SetBy, StringComparison.Ordinal);
    }

    [Fact]
    public void A_warmer_or_wetter_vessel_is_never_allowed_more()
    {
        double At(double celsius, double percent) => FillAllowance.Of(TheProved, Status, celsius.Celsius(),
            Property.Measured(percent.Percent(), 0, "case")).Pressure.Pascals;
        double[] walls = [-20, 0, 15, 20, 25, 30, 40, 49.9, 50.1, 60, 70, 200], waters = [0, 0.5, 1, 2, 4, 8, 10];
        foreach (var water in waters)
        {
            Assert.All(walls.Zip(walls.Skip(1)), w => Assert.True(At(w.Second, water) <= At(w.First, water)));
            Assert.Equal(0, At(50.1, water));
        }

        foreach (var wall in walls) Assert.All(waters.Zip(waters.Skip(1)), w => Assert.True(At(wall, w.Second) <= At(wall, w.First)));
        Assert.All(walls, w => Assert.True(At(w, 0) <= TheProved.Allowed.Pascals));
    }

    [Fact]
    public void Only_a_measured_water_content_lies_below_that_of_a_saturated_resin()
    {
        double Kept(Property<Ratio>? moisture) => FillAllowance.Of(TheProved, Status, 15.Celsius(), moisture).Heat!.Input.Moisture.Percent;
        Assert.Equal(2, Kept(null), 12);
        Assert.Equal(2, Kept(Property.Unverified(0.5.Percent(), 0, "heard")), 12);
        Assert.Equal(3, Kept(Property.Unverified(3.Percent(), 0, "heard")), 12);
        Assert.Equal(0.5, Kept(NearlyDry), 12);
    }

    [Fact]
    public void Guessed_values_of_the_resin_are_said()
    {
        var vessel = Built with { Resin = MaterialLibrary.Typical.Resin("laminating epoxy") };
        var rating = vessel.Rate(wanted: 34.BarGauge(), evidence: Vessels.Samples.Twins(vessel));
        var typical = FillAllowance.Of(Recorded(rating, "T-1").ToProvedVessel(rating), Status, 15.Celsius());
        Assert.Contains(typical.Findings, f => f.Severity == FindingSeverity.Warning
            && f.Message.Contains("glass temperature of 60 °C isn't measured", StringComparison.Ordinal));
        Assert.Contains(typical.Findings, f => f.Severity == FindingSeverity.Note
            && f.Message.Contains("2 % of water", StringComparison.Ordinal));
        Assert.DoesNotContain(FillAllowance.Of(TheProved, Status, 15.Celsius(), NearlyDry).Findings,
            f => f.Severity != FindingSeverity.Note);
    }

    [Fact]
    public void The_limit_of_time_stands_in_for_stress_rupture_and_is_said_once_on_a_card()
    {
        Assert.Single(CardOf(Whole).Findings, f => f.Message.Contains("stress-rupture", StringComparison.Ordinal)
            && f.Message.Contains("20 h at pressure", StringComparison.Ordinal));
        Assert.Single(Pair.Vehicle.Card(Pair.Site, Pair.Evidence).Findings,
            f => f.Message.Contains("stress-rupture", StringComparison.Ordinal));
        var without = FillAllowance.Of(TheProved, InService(TheProved).StatusOn(FlightDay, LifeLimits.CarbonCylinder), 15.Celsius(),
            NearlyDry);
        Assert.Contains(without.Findings, f => f.Severity == FindingSeverity.Warning
            && f.Message.Contains("set no time at pressure", StringComparison.Ordinal));
    }

    // Held over 1.5 × 1.05 = 1.575: a proof planned for 28 bar allows no 34 bar, and a line that says less was held allows less again.
    [Fact]
    public void The_lowest_of_rating_proof_and_last_line_of_the_record_allows()
    {
        var weak = Recorded(Rated, "T-1", plan: p => p with { WorkingPressure = 28.BarGauge() }).ToProvedVessel(Rated);
        // The line of the record says more than this proof held.
        var byProof = FillAllowance.Of(weak, Status, 5.Celsius(), NearlyDry);
        Assert.Equal("the proof", byProof.SetBy);
        Tolerance.Relative(weak.Held.Bar / 1.575, byProof.Pressure.Bar, 1e-9);
        Assert.InRange(byProof.Pressure.Bar, 28, 28.5);
        var events = Usual(TheProved);
        events[1] = new Proved(TheProved.Day, 47.25.BarGauge(), 1.575, TheProved.RuleSet, TheProved.Fingerprint) { At = At(TheProved.Day) };
        var less = ServiceOf(TheProved.Vessel, TheProved.Serial, [.. events, Sound(FlightDay)]).StatusOn(FlightDay, LifeLimits.Club);
        var byLine = FillAllowance.Of(TheProved, less, 5.Celsius(), NearlyDry);
        Assert.Equal("the last proof in the service record", byLine.SetBy);
        Tolerance.Relative(30, byLine.Pressure.Bar, 1e-9);
        // Heat takes from the lowest of them.
        var warm = FillAllowance.Of(TheProved, less, 35.Celsius(), NearlyDry);
        Tolerance.Relative(30 * warm.Heat!.Retention, warm.Pressure.Bar, 1e-9);
        Assert.True(warm.Heat.Retention < 1);
    }

    // Whatever the resin loses counts, a twentieth as a half: 34 bar times what is kept.
    [Fact]
    public void A_little_heat_takes_a_little_pressure()
    {
        var least = Enumerable.Range(10, 40).Select(c => FillAllowance.Of(TheProved, Status, ((double)c).Celsius(), NearlyDry))
            .First(a => a.Heat!.Retention < 0.999);
        Assert.InRange(least.Heat!.Retention, 0.95, 0.999);
        Tolerance.Relative(34 * least.Heat.Retention, least.Pressure.Bar, 1e-3);
        Assert.True(least.Pressure < TheProved.Allowed);
    }

    // Limits of one's own that are stricter ground; looser ones don't lift the club's.
    [Fact]
    public void The_stricter_of_two_limits_of_life_is_shown_on_the_card()
    {
        var strict = LifeLimits.Club with { Name = "own limits", MonthsOfLife = new(1, Source.CommonPractice("a month, for the test")) };
        var card = CardOf(Whole with { Life = strict });
        Assert.False(card.IsGo);
        Assert.Contains(card.Findings, f => f.Severity == FindingSeverity.Error
            && f.Message.Contains("The vessel's life ended on 2026-04-01", StringComparison.Ordinal));
        var loose = LifeLimits.Club with { Name = "loose limits", MonthsOfLife = new(600, Source.CommonPractice("fifty years")) };
        Assert.True(CardOf(Whole with { Life = loose }).IsGo);
    }

    [Fact]
    public void A_vessel_at_its_time_at_pressure_is_grounded()
    {
        var full = new Filled(33.BarGauge(), 18.Celsius(), 20.Hours(), FillMedium.Gas) { At = At(ProofDay.AddDays(1)) };
        var status = InService(TheProved, full).StatusOn(FlightDay, LifeLimits.Club);
        Assert.Equal("Time at pressure", Assert.Single(status.Reasons).Rule);
        Assert.Equal(GaugePressure.Zero, FillAllowance.Of(TheProved, status, 15.Celsius(), NearlyDry).Pressure);
    }
}
