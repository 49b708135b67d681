using NotebookKit.Flight.Dispersion;
using NotebookKit.Flight.Staging;
using NotebookKit.Provenance;
using NotebookKit.Quantities;

namespace NotebookKit.Tests.Flight.Staging;

public class HopOfStagesTests
{
    private static readonly TwoStageVehicle Pair = SampleVehicles.TwoStages;

    // Its own thrust carries the sustainer for a moment only; on the pad it would be a hop, off the booster it comes down
    // under pressure all the same.
    private static readonly TwoStageVehicle WeakSustainer = Pair with
    {
        Booster = Pair.Booster with { Charge = Pair.Booster.Charge with { Pressure = 14.BarGauge() } },
        Sustainer = Pair.Sustainer with
        {
            Deployment = Deployment.None,
            Nozzle = new Nozzle(5.Millimetres()),
            Charge = Pair.Sustainer.Charge with { Pressure = 10.BarGauge(), WaterFraction = 80.Percent() },
        },
    };

    private static readonly TwoStageVehicle WeakStack = Pair with
    {
        Booster = Pair.Booster with { Nozzle = new Nozzle(8.Millimetres()),
            Charge = Pair.Booster.Charge with { Pressure = 12.5.BarGauge(), WaterFraction = 75.Percent() } },
    };

    [Fact]
    public void A_sustainer_that_comes_down_charged_fails_the_flight()
    {
        var result = WeakSustainer.Fly(SampleVehicles.Calm);
        Assert.Equal(ResultStatus.Failed, result.Status);
        Assert.Equal(ResultStatus.Failed, result.Sustainer.Status);
        Assert.Empty(result.Lines);
        Assert.Contains(result.Findings, f => f.Severity == FindingSeverity.Error
            && f.Message.StartsWith("sustainer: the vehicle comes down under pressure", StringComparison.Ordinal)
                && f.Message.Contains("kg of water", StringComparison.Ordinal));
        // A stage that starts in the air is not judged as if it started on the pad.
        Assert.DoesNotContain(WeakSustainer.Validate(SampleVehicles.Calm), f => f.Message.Contains("hop", StringComparison.Ordinal));
        Assert.All(WeakSustainer.CostOfDelay(SampleVehicles.Calm, 0.1.Seconds()).Apogee.Values, h => Assert.True(double.IsNaN(h)));
        Assert.Equal(10, WeakSustainer.Disperse(SampleVehicles.Calm, TwoStageSpread.None, 10, 1).Failed);
    }

    [Fact]
    public void Both_stages_together_that_come_down_charged_say_so_before_and_after()
    {
        var site = SampleHops.ShortRail;
        Assert.Contains(WeakStack.Validate(site), f => f.Severity == FindingSeverity.Warning
            && f.Message.StartsWith("stack: this flight is a hop", StringComparison.Ordinal));
        var result = WeakStack.Fly(site);
        Assert.Equal(ResultStatus.Failed, result.Status);
        var error = Assert.Single(result.Findings, f => f.Severity == FindingSeverity.Error).Message;
        Assert.Contains("both stages together: the vehicle comes down under pressure", error, StringComparison.Ordinal);
        Assert.Contains("The sustainer still holds 40 bar gauge", error, StringComparison.Ordinal);
    }
}
