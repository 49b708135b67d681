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

    [Fact]
    public void A_vessel_at_its_time_at_pressure_is_grounded()
    {
        var full = new Filled(33.BarGauge(), 18.Celsius(), 20.Hours(), FillMedium.Gas) { At = At(ProofDay.AddDays(1)) };
        var status = InService(TheProved, full).StatusOn(FlightDay, LifeLimits.Club);
        Assert.Equal("Time at pressure", Assert.Single(status.Reasons).Rule);
        Assert.Equal(GaugePressure.Zero, FillAllowance.Of(TheProved, status, 15.Celsius(), NearlyDry).Pressure);
    }
}
