using NotebookKit.Provenance;
using NotebookKit.Quantities;
using UnitsNet;

namespace NotebookKit.Tests.Proofing.Records;

public class StepReadingTests
{
    private static readonly ProofPlan Plan = new Proof
    {
        Vessel = "Curlew", Volume = 4.5.Litres(), WorkingPressure = 60.BarGauge(), Rule = new("Club rule", 1.5, 5.Percent(),
            Source.CommonPractice("a factor for the test")),
        Wall = new(1.Percent(), 90.BarGauge(), Source.CommonPractice("a growth for the test")),
    }.Plan();

    private static StepReading AtProof => new()
    {
        Plan = Plan, Step = Plan.Proof.Steps.Count, Gauge = 90.5.BarGauge(), AtStart = 90.5.BarGauge(), Held = Plan.Proof.ProofHold,
        Pumped = Plan.WaterToPump,
    };

    [Fact]
    public void A_step_held_as_planned_with_the_expected_water_goes_on() => Assert.Equal(ProofCall.GoOn, AtProof.Advise().Call);

    [Fact]
    public void A_step_is_held_until_its_planned_time_is_over()
    {
        var advice = (AtProof with { Held = Plan.Proof.ProofHold - 30.Seconds() }).Advise();
        Assert.Equal(ProofCall.Hold, advice.Call);
        Assert.Equal(30, advice.Left!.Value.Seconds, 9);
    }

    [Fact]
    public void Below_a_step_one_pumps_on()
    {
        var advice = (AtProof with { Gauge = 70.BarGauge(), AtStart = null, Held = null, Pumped = null }).Advise();
        Assert.Equal(ProofCall.GoOn, advice.Call);
        Assert.Contains(advice.Reasons, r => r.Message.Contains("isn't read", StringComparison.Ordinal));
    }

    // Water of 4.5 L at 20 °C is squeezed by V p/K = 4500 mL × 9.05 MPa / 2180 MPa = 18.7 mL (Kell 1975: K = 2.18 GPa); the wall grows by
    // 4500 mL × 1 % × 90.5/90 = 45.3 mL.
    [Fact]
    public void The_water_to_expect_is_that_of_wall_and_water_together() =>
        Assert.InRange(AtProof.Advise().Expected.Milliliters, 63.5, 64.5);

    [Fact]
    public void Water_that_neither_a_sound_wall_nor_the_allowed_air_explains_stops_the_proof()
    {
        // 64 mL, a third more wall and all of the air that the plan allows.
        var most = 64 + (0.3 * 45.3) + (4500 * Plan.Proof.TrappedAirLimit.DecimalFractions);
        Assert.Equal(ProofCall.StopAndVent, (AtProof with { Pumped = (most + 2).Millilitres() }).Advise().Call);
        Assert.Equal(ProofCall.Hold, (AtProof with { Pumped = 40.Millilitres() }).Advise().Call);
    }

    [Fact]
    public void A_gauge_that_falls_by_more_than_a_kelvin_of_cooling_explains_stops_the_proof()
    {
        Assert.Equal(ProofCall.GoOn, (AtProof with { Gauge = 90.4.BarGauge() }).Advise().Call);
        Assert.Equal(ProofCall.StopAndVent, (AtProof with { Gauge = 86.BarGauge() }).Advise().Call);
    }

    [Fact]
    public void A_proof_hold_below_proof_pressure_is_begun_again()
    {
        var advice = (AtProof with { Gauge = 89.8.BarGauge(), AtStart = 89.9.BarGauge(), Pumped = 63.5.Millilitres() }).Advise();
        Assert.Equal(ProofCall.Hold, advice.Call);
        Assert.Contains(advice.Reasons, r => r.Message.Contains("begin the hold again", StringComparison.Ordinal));
    }

    [Fact]
    public void After_the_proof_one_lets_the_pressure_down_before_the_hold_for_leaks()
    {
        var advice = (AtProof with { Step = Plan.Steps.Count, AtStart = null, Held = null }).Advise();
        Assert.Equal(ProofCall.GoOn, advice.Call);
        Assert.Contains(advice.Reasons, r => r.Message.Contains("Let the pressure down to 60 bar gauge", StringComparison.Ordinal));
    }

    [Fact]
    public void A_gauge_far_above_proof_pressure_stops_the_proof() =>
        Assert.Equal(ProofCall.StopAndVent, (AtProof with { Gauge = 95.BarGauge(), AtStart = 95.BarGauge() }).Advise().Call);

    [Theory]
    [InlineData(LeakPlace.FittingSeal)]
    [InlineData(LeakPlace.Bond)]
    [InlineData(LeakPlace.Wall)]
    [InlineData(LeakPlace.PumpLine)]
    public void Drops_anywhere_stop_the_proof(LeakPlace place) => Assert.Equal(ProofCall.StopAndVent,
        (AtProof with { Drops = [new(place, Frequency.FromCyclesPerMinute(2), 60.BarGauge())] }).Advise().Call);

    [Fact]
    public void A_place_that_was_watched_and_stayed_dry_stops_nothing() => Assert.Equal(ProofCall.GoOn,
        (AtProof with { Drops = [new(LeakPlace.Bond, Frequency.Zero, 60.BarGauge())] }).Advise().Call);

    [Fact]
    public void A_loud_crack_stops_the_proof_and_ticking_does_not()
    {
        Assert.Equal(ProofCall.StopAndVent, (AtProof with { Sounds = [new(SoundKind.Crack, 80.BarGauge())] }).Advise().Call);
        Assert.Equal(ProofCall.GoOn, (AtProof with { Sounds = [new(SoundKind.Ticking, 80.BarGauge())] }).Advise().Call);
    }

    [Fact]
    public void A_step_that_the_plan_does_not_have_is_refused() =>
        Assert.Throws<InvalidDesignException>(() => (AtProof with { Step = 99 }).Advise());
}
