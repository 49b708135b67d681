using NotebookKit.Flight.Dispersion;
using NotebookKit.Flight.Staging;
using NotebookKit.Provenance;
using NotebookKit.Quantities;

namespace NotebookKit.Tests.Flight;

/// <summary>A wind that nobody has given is not a calm.</summary>
public class WindNotGivenTests
{
    private static readonly LaunchSite NoWind = LaunchSite.SeaLevel with { Rail = new(2.Metres()) };

    private static bool SaysSo(IEnumerable<Finding> findings) =>
        findings.Any(f => f.Severity == FindingSeverity.Warning && f.Message.StartsWith("wind isn't given", StringComparison.Ordinal));

    [Fact]
    public void A_site_has_no_wind_until_somebody_gives_one()
    {
        Assert.False(LaunchSite.SeaLevel.Wind.IsGiven);
        Assert.Equal(WindProfile.NotGiven, LaunchSite.SeaLevel.Wind);
        Assert.NotEqual(WindProfile.Calm, WindProfile.NotGiven);
        Assert.True(WindProfile.Calm.IsGiven && WindProfile.PowerLaw(5.MetresPerSecond(), 10.Metres()).IsGiven);
        Assert.Equal(0, WindProfile.NotGiven.At(50.Metres()).MetersPerSecond);
    }

    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public void A_flight_without_a_wind_is_that_of_still_air_and_says_so(bool sixDegrees)
    {
        FlightResult Fly(LaunchSite site) => sixDegrees ? SampleVehicles.Trainer.FlySixDegrees(site) : SampleVehicles.Trainer.Fly(site);
        var (open, calm) = (Fly(NoWind), Fly(SampleVehicles.Calm));
        Assert.True(SaysSo(open.Findings));
        Assert.False(SaysSo(calm.Findings));
        Assert.Equal(calm.Apogee, open.Apogee);
        Assert.Equal("wind not given", open.Lines.Single(l => l.Name == "Drift").Value);
        Assert.Equal("wind not given", open.Lines.Single(l => l.Name == "Angle of attack off the rail").Value);
        Assert.EndsWith("wind not given", open.Lines.Single(l => l.Name == "Speed off the rail").Note, StringComparison.Ordinal);
        Assert.Equal("0 m", calm.Lines.Single(l => l.Name == "Drift").Value);
        Assert.Contains(open.Model.Assumptions, a => a.Contains("Wind: not given", StringComparison.Ordinal));
    }

    [Fact]
    public void Two_stages_say_it_once()
    {
        var result = SampleVehicles.TwoStages.Fly(NoWind);
        Assert.Single(result.Findings, f => f.Message.Contains("wind isn't given", StringComparison.Ordinal));
        Assert.Equal("wind not given", result.Lines.Single(l => l.Name == "Booster comes down").Value);
        Assert.DoesNotContain(SampleVehicles.TwoStages.Fly(SampleVehicles.Calm).Findings,
            f => f.Message.Contains("wind isn't given", StringComparison.Ordinal));
    }

    [Fact]
    public void A_scatter_keeps_it_through_its_shards()
    {
        var open = SampleVehicles.Trainer.DisperseShard(NoWind, Spread.None, 4, 1, 1, 1);
        var calm = SampleVehicles.Trainer.DisperseShard(SampleVehicles.Calm, Spread.None, 4, 1, 1, 1);
        Assert.NotEqual(calm.Plan.Fingerprint, open.Plan.Fingerprint);
        Assert.True(SaysSo(DispersionResult.Merge([DispersionShard.FromJson(open.ToJson())]).Findings));
        Assert.False(SaysSo(DispersionResult.Merge([DispersionShard.FromJson(calm.ToJson())]).Findings));
        // A file that doesn't say is taken as not given.
        var silent = calm.ToJson().Replace(",\"IsWindGiven\":true", "", StringComparison.Ordinal);
        Assert.NotEqual(calm.ToJson(), silent);
        Assert.False(DispersionShard.FromJson(silent).Plan.IsWindGiven);
    }

    [Fact]
    public void A_drift_under_no_given_wind_is_not_zero_but_not_known()
    {
        var drift = Drift.Descending(100.Metres(), 6.MetresPerSecond(), WindProfile.NotGiven);
        Assert.True(SaysSo(drift.Findings));
        Assert.Equal("wind not given", drift.Lines[0].Value);
        Assert.False(SaysSo(Drift.Descending(100.Metres(), 6.MetresPerSecond(), WindProfile.Calm).Findings));
    }

    [Fact]
    public void A_flight_straight_up_knows_no_wind_and_says_nothing_of_it() =>
        Assert.DoesNotContain(SampleHops.At(15).Fly().Findings, f => f.Message.Contains("wind isn't", StringComparison.Ordinal));
}
