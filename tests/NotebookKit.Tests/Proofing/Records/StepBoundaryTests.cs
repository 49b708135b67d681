using NotebookKit.Provenance;
using NotebookKit.Quantities;

namespace NotebookKit.Tests.Proofing.Records;

/// <summary>Where advice at the bench turns, tried on either side: a proof at 90 bar for 60, 4.5 L, a gauge that may be off by
/// 0.1 bar.</summary>
public class StepBoundaryTests
{
    private static readonly ProofPlan Plan = new Proof
    {
        Vessel = "Curlew", Volume = 4.5.Litres(), WorkingPressure = 60.BarGauge(), Rule = new("Club rule", 1.5, 5.Percent(),
            Source.CommonPractice("a factor for the test")),
        Wall = new(1.Percent(), 90.BarGauge(), Source.CommonPractice("a growth for the test")),
    }.Plan();

    private static StepReading AtProof(double bar) => new() { Plan = Plan, Step = Plan.Proof.Steps.Count, Gauge = bar.BarGauge() };

    private static bool Says(StepReading reading, string words) =>
        reading.Advise().Reasons.Any(r => r.Message.Contains(words, StringComparison.Ordinal));

    // 2.5 % of 90 bar and the gauge's 0.1 bar: 87.65 to 92.35 bar.
    [Theory]
    [InlineData(87.6, "Pump on slowly", ProofCall.GoOn)]
    [InlineData(87.7, "Hold at 90 bar gauge", ProofCall.Hold)]
    [InlineData(92.3, "Hold at 90 bar gauge", ProofCall.Hold)]
    [InlineData(92.4, "Let the pressure down to 90 bar gauge", ProofCall.Hold)]
    public void A_step_is_reached_within_a_fortieth_and_the_gauges_error(double bar, string words, ProofCall call)
    {
        Assert.True(Says(AtProof(bar), words), string.Join("\n", AtProof(bar).Advise().Reasons));
        Assert.Equal(call, AtProof(bar).Advise().Call);
    }

    // On the way down a tenth of 60 bar and the gauge's 0.1 bar: 66.1 bar.
    [Theory]
    [InlineData(66.0, "Hold at 60 bar gauge", ProofCall.Hold)]
    [InlineData(66.2, "Let the pressure down to 60 bar gauge", ProofCall.GoOn)]
    public void The_hold_for_leaks_begins_within_a_tenth(double bar, string words, ProofCall call)
    {
        var reading = AtProof(bar) with { Step = Plan.Steps.Count };
        Assert.True(Says(reading, words));
        Assert.Equal(call, reading.Advise().Call);
    }

    // 5 % above 90 bar and the gauge's error: 94.6 bar.
    [Theory]
    [InlineData(94.55, false)]
    [InlineData(94.65, true)]
    public void Five_per_cent_above_the_proof_stops_it(double bar, bool stops) =>
        Assert.Equal(stops, AtProof(bar).Advise().Call == ProofCall.StopAndVent);

    // A kelvin: 2.07e-4/K × 4500 mL over 4500/21 800 + 45/90 mL/bar is 1.32 bar (Kell 1975 for the water), with both readings 1.52 bar.
    [Theory]
    [InlineData(1.45, false)]
    [InlineData(1.60, true)]
    public void A_fall_is_a_leak_beyond_a_kelvin_of_cooling_and_two_readings(double fall, bool stops)
    {
        var reading = AtProof(92 - fall) with { AtStart = 92.BarGauge(), Held = Plan.Proof.ProofHold };
        Assert.Equal(stops, Says(reading, "The gauge fell by"));
        Assert.Equal(stops, reading.Advise().Call == ProofCall.StopAndVent);
    }

    // At 90.5 bar: 4500 × 90.5/21 800 = 18.7 mL of water, 45.25 mL of wall; a third more wall and the 0.5 % of air that the plan allows,
    // 22.5 mL of which 1.013/91.5 stay as gas.
    [Theory]
    [InlineData(-1, false)]
    [InlineData(1, true)]
    public void Water_stops_the_proof_past_wall_and_allowed_air(double more, bool stops)
    {
        var most = 18.7 + (1.3 * 45.25) + (22.5 * (1 - (1.01325 / 91.51)));
        var reading = AtProof(90.5) with { Pumped = (most + more).Millilitres() };
        Assert.Equal(stops, reading.Advise().Call == ProofCall.StopAndVent);
    }

    // Seven tenths of 64 mL.
    [Theory]
    [InlineData(43.5, true)]
    [InlineData(46, false)]
    public void Less_than_seven_tenths_of_the_water_is_asked_about(double millilitres, bool isAsked) => Assert.Equal(isAsked,
        Says(AtProof(90.5) with { Pumped = millilitres.Millilitres() }, "mL went in up to"));

    [Theory]
    [InlineData(0.9, false)]
    [InlineData(5, true)]
    public void Water_is_asked_for_from_a_bar_on(double bar, bool isAsked) => Assert.Equal(isAsked, Says(AtProof(bar), "isn't read"));
}
