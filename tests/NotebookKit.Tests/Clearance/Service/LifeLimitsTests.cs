using NotebookKit.Clearance.Service;
using NotebookKit.Provenance;

namespace NotebookKit.Tests.Clearance.Service;

public class LifeLimitsTests
{
    [Fact]
    public void The_clubs_figures_are_the_cautious_ones_and_none_has_a_source()
    {
        var club = LifeLimits.Club;
        Assert.Equal((12, 50, 100, 36), (club.MonthsBetweenProofs!.Value, club.FillsBetweenProofs!.Value, club.Pressurisations!.Value,
            club.MonthsOfLife!.Value));
        Assert.Equal(20, club.TimeAtPressure!.Value.Hours, 12);
        Assert.Equal(50, club.HotAbove!.Value.DegreesCelsius, 12);
        Source[] sources =
        [
            club.MonthsBetweenProofs.Source, club.FillsBetweenProofs.Source, club.Pressurisations.Source, club.MonthsOfLife.Source,
                club.TimeAtPressure.Source, club.HotAbove.Source,
            club.AfterHardLanding.Source, club.AfterDrop.Source, club.AfterHeat.Source, club.AfterRepair.Source,
                club.AfterFailedInspection.Source, club.InspectEveryDayOfUse.Source,
        ];
        Assert.All(sources, s => Assert.Contains("common practice, no source", s.ToString(), StringComparison.Ordinal));
        Assert.Empty(club.Validate());
    }

    // 49 CFR 180.209, Table 1 and 180.205(i): 3 years, 24 years, 4380; DOT-E 11194: 5 and 15 years; ISO 11439:2000, 4.1.3: 20 years.
    [Fact]
    public void Published_sets_carry_the_figures_and_the_sources_of_the_regulations()
    {
        static (int?, int?, int?) Of(LifeLimits l) => (l.MonthsBetweenProofs?.Value, l.MonthsOfLife?.Value, l.Pressurisations?.Value);
        Assert.Equal((36, 288, 4380), Of(LifeLimits.AircraftCylinder));
        Assert.Equal((60, 180, null), Of(LifeLimits.CarbonCylinder));
        Assert.Equal((null, 240, null), Of(LifeLimits.VehicleGasCylinder));
        Assert.Same(RetestRules.LightSteel.Source, LifeLimits.AircraftCylinder.MonthsOfLife!.Source);
        Assert.Same(RetestRules.CarbonCylinder.Source, LifeLimits.CarbonCylinder.MonthsBetweenProofs!.Source);
        Assert.Same(RetestRules.VehicleGas.Source, LifeLimits.VehicleGasCylinder.MonthsOfLife!.Source);
    }
}
