using NotebookKit.Provenance;
using NotebookKit.Quantities;

namespace NotebookKit.Tests.Proofing.Records;

public partial class ProofRecordTests
{
    // Half the pressure between two readings is a vessel that let go.
    [Theory]
    [InlineData(0.55, true)]
    [InlineData(0.45, false)]
    public void A_fall_of_more_than_half_between_two_readings_is_a_failure(double share, bool isFailure)
    {
        var log = Log(new() { NoiseBar = 0 });
        Assert.Equal(isFailure, LetGo(Falls(log, 60.2, share * 60.3)));
    }

    // From 15 to 2 bar: 13 bar, or ten times an error of 1.3 bar of the gauge.
    [Theory]
    [InlineData(1.2, true)]
    [InlineData(1.4, false)]
    public void A_fall_within_ten_errors_of_the_gauge_is_none(double error, bool isFailure) =>
        Assert.Equal(isFailure, LetGo(Falls(Log(new() { NoiseBar = 0 }), 14.9, 13) with { GaugeError = error.Bar() }));

    [Theory]
    [InlineData(1.9, true)]
    [InlineData(2.1, false)]
    public void Over_more_than_three_seconds_anybody_may_have_vented(double later, bool isFailure)
    {
        var log = Falls(Log(new() { NoiseBar = 0 }), 60.2, 40);
        var at = log.Pressure.Values.ToList().FindIndex(b => Math.Abs(b - 20.3) < 1e-6);
        Assert.Equal(isFailure, LetGo(log with { Time = log.Time with { Values = [.. log.Time.Values.Select((t, i) => i < at ? t
            : t + later)] } }));
    }

    // Only the tip of a stroke came near: 60 bar less the gauge's 0.1.
    [Theory]
    [InlineData(59.95, false)]
    [InlineData(59.85, true)]
    public void A_proof_that_was_never_reached_is_said_beyond_the_gauges_error(double tip, bool isSaid)
    {
        var log = Log(new() { NoiseBar = 0 });
        var at = log.Pressure.Values.ToList().FindIndex(b => b > 55);
        Assert.Equal(isSaid, Messages(log with { Pressure = log.Pressure with { Values = [.. log.Pressure.Values.Select((b, i) =>
            i == at ? tip : b > 55 ? 50 : b)] } }, "The highest reading is"));
    }

    // 1.05 × 60 + 0.1 bar.
    [Theory]
    [InlineData(63.05, false)]
    [InlineData(63.15, true)]
    public void A_proof_that_was_passed_by_a_twentieth_is_said(double tip, bool isSaid)
    {
        var log = Log(new() { NoiseBar = 0 });
        var at = log.Pressure.Values.ToList().FindIndex(b => b > 60.2) + 20;
        Assert.Equal(isSaid, Messages(log with { Pressure = log.Pressure with { Values = [.. log.Pressure.Values.Select((b, i) =>
            i == at ? tip : b)] } }, "more than 5 % above the planned"));
    }

    [Fact]
    public void A_proof_hold_that_was_cut_short_is_an_error_and_a_step_that_was_is_a_warning()
    {
        var log = Log(new() { NoiseBar = 0 });
        ProofReadings Cut(double above, int after)
        {
            var at = log.Pressure.Values.ToList().FindIndex(b => b > above);
            return log with { Pressure = log.Pressure with { Values = [.. log.Pressure.Values.Select((b, i) => i >= at + after
                && i < at + 120 && b > above && b < above + 1 ? b - 8 : b)] } };
        }

        Assert.Contains(Cut(60.2, 60).Judge().Findings, f => f.Severity == FindingSeverity.Error
            && f.Message.StartsWith("60 bar gauge was held for", StringComparison.Ordinal));
        Assert.Contains(Cut(29.9, 40).Judge().Findings, f => f.Severity == FindingSeverity.Warning
            && f.Message.StartsWith("30 bar gauge was held for", StringComparison.Ordinal));
    }

    // Readings of 40 ± s in turn over ten minutes: the line's error is s·√(12/601)·1.0017 over the hold, 0.1415·s; twice that over 40 bar
    // is 1 % at s = 1.413.
    [Theory]
    [InlineData(1.30, false)]
    [InlineData(1.52, true)]
    public void A_log_that_cannot_tell_the_leak_is_said_from_two_standard_errors_on(double noise, bool isSaid)
    {
        var log = Log(new() { NoiseBar = 0 });
        var from = log.Pressure.Values.ToList().FindLastIndex(b => b > 44.5);
        Assert.Equal(isSaid, Messages(log with { GaugeError = 1.6.Bar(), Pressure = log.Pressure with { Values =
            [.. log.Pressure.Values.Select((b, i) => i > from && Math.Abs(b - 40) < 1e-6 ? b + (i % 2 == 0 ? noise : -noise) : b)] } },
            "The log can't tell a leak"));
    }

    [Theory]
    [InlineData(0.66, true)]
    [InlineData(0.74, false)]
    public void A_wall_that_grew_by_less_than_seven_tenths_is_said(double times, bool isSaid) => Assert.Equal(isSaid,
        Messages(Log(new() { Growth = times * WallGrowth }), "the layup isn't what the prediction took"));

    private static ProofReadings Falls(ProofReadings log, double above, double by)
    {
        var at = log.Pressure.Values.ToList().FindIndex(b => b > above) + 20;
        return log with { Pressure = log.Pressure with { Values = [.. log.Pressure.Values.Select((b, i) => i < at ? b
            : log.Pressure[at - 1] - by)] } };
    }

    private static bool LetGo(ProofReadings log) => Messages(log, "let go at that pressure");

    private static bool Messages(ProofReadings log, string words) =>
        log.Judge().Findings.Any(f => f.Message.Contains(words, StringComparison.Ordinal));
}
