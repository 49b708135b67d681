using NotebookKit.Proofing.Plans;
using NotebookKit.Provenance;
using NotebookKit.Quantities;
using UnitsNet;

namespace NotebookKit.Proofing.Records;

/// <summary>The rules by which a proof goes on, is held or is stopped while it is pumped. Every reason is said, and the gravest counts.
/// Source: limits of the record's judgement; common practice, no source.</summary>
internal static class StepJudgement
{
    /// <summary>Share of a step within which the gauge counts as being at it [-], as the record finds holds by, wider at working pressure
    /// after the proof; share above proof pressure that stops the pump [-]; growth over the expected that stops it [-].</summary>
    private const double Band = 0.025, LeakBand = 0.1, MostOver = 1.05, MostGrowth = 1.3, LeastWater = 0.7;

    public static StepAdvice Of(StepReading reading)
    {
        List<(ProofCall Call, Finding Why)> reasons = [.. Pressure(reading), .. Water(reading), .. Drops(reading), .. Sounds(reading)];
        Duration? left = null;
        var step = reading.Plan.Steps[reading.Step - 1];
        var isDown = ProofChecklist.IsDown(reading.Plan, reading.Step - 1);
        if (reading.Gauge.Bar < step.Pressure.Bar * (1 - Band) - reading.GaugeError.Bars && reading.Held is null)
        {
            reasons.Add((ProofCall.GoOn, ProofingFindings.StepIsNotReached(step.Pressure, reading.Gauge)));
        }
        else if (reading.Gauge.Bar > (step.Pressure.Bar * (1 + (isDown ? LeakBand : Band))) + reading.GaugeError.Bars)
        {
            reasons.Add((isDown ? ProofCall.GoOn : ProofCall.Hold, ProofingFindings.GaugeIsAboveStep(step.Pressure, reading.Gauge)));
        }
        else if ((reading.Held ?? Duration.Zero) is var held && held < step.Hold)
        {
            left = step.Hold - held;
            reasons.Add((ProofCall.Hold, ProofingFindings.HoldGoesOn(step.Pressure, ProofPlan.Seconds(left.Value))));
        }
        else
        {
            reasons.Add((ProofCall.GoOn, ProofingFindings.StepIsHeld(step.Pressure, ProofPlan.Seconds(step.Hold),
                reading.Step < reading.Plan.Steps.Count ? reading.Plan.Steps[reading.Step].Pressure : null)));
        }

        var at = reading.Gauge > GaugePressure.Zero ? reading.Gauge : GaugePressure.Zero;
        return new(reasons.Max(r => r.Call), [.. reasons.OrderByDescending(r => r.Call).Select(r => r.Why)],
            reading.Plan.Proof.Filled.WaterToPump(at), left);
    }

    private static IEnumerable<(ProofCall, Finding)> Pressure(StepReading reading)
    {
        var (proof, step) = (reading.Plan.ProofPressure, reading.Plan.Steps[reading.Step - 1].Pressure);
        if (reading.Gauge.Bar > (proof.Bar * MostOver) + reading.GaugeError.Bars)
            yield return (ProofCall.StopAndVent, ProofingFindings.GaugeIsFarAboveProof(reading.Gauge, proof));
        if (reading.AtStart is { } start && reading.Held is not null)
        {
            var fall = start.Bar - reading.Gauge.Bar;
            // A kelvin of cooling and both readings of the gauge explain so much; more is water lost.
            if (fall > reading.Plan.Proof.Filled.RiseFor(1.KelvinsOfChange(), step).Bars + (2 * reading.GaugeError.Bars))
                yield return (ProofCall.StopAndVent, ProofingFindings.GaugeFallsInHold(fall, step,
                    reading.Plan.Proof.Filled.LossFor(fall.Bar(), step).Milliliters));
        }

        if (reading.Held is not null && reading.Step == reading.Plan.Proof.Steps.Count && reading.Gauge < proof)
            yield return (ProofCall.Hold, ProofingFindings.ProofHoldIsBelowProof(reading.Gauge, proof));
    }

    private static IEnumerable<(ProofCall, Finding)> Water(StepReading reading)
    {
        if (reading.Gauge.Bar < 1) yield break;
        if (reading.Pumped is not { } pumped)
        {
            yield return (ProofCall.GoOn, ProofingFindings.WaterIsNotRead());
            yield break;
        }

        var (proof, filled) = (reading.Plan.Proof, reading.Plan.Proof.Filled);
        var (expected, wall) = (filled.WaterToPump(reading.Gauge), filled.WallExpansion(reading.Gauge));
        // Air up to the plan's limit is for the record to find; beyond it and the wall's allowance something yields or is lost.
        var air = (filled with { TrappedAir = proof.Volume * proof.TrappedAirLimit.DecimalFractions }).AirCompressed(reading.Gauge)
            - filled.AirCompressed(reading.Gauge);
        var most = expected + (wall * (MostGrowth - 1)) + (air > Volume.Zero ? air : Volume.Zero);
        if (pumped > most)
            yield return (ProofCall.StopAndVent, ProofingFindings.TooMuchWaterWentIn(pumped.Milliliters, expected.Milliliters,
                most.Milliliters, reading.Gauge));
        else if (pumped < expected * LeastWater)
            yield return (ProofCall.Hold, ProofingFindings.TooLittleWaterWentIn(pumped.Milliliters, expected.Milliliters, reading.Gauge));
    }

    private static IEnumerable<(ProofCall, Finding)> Drops(StepReading reading) =>
        from seen in reading.Drops
        let leak = LeakDecision.For(seen)
        where leak is not null
        select (ProofCall.StopAndVent, ProofingFindings.DropsAreSeenNow(TapeJudgement.NameOf(seen.Place), seen.At,
            TapeJudgement.NameOf(leak.Action)));

    private static IEnumerable<(ProofCall, Finding)> Sounds(StepReading reading) =>
        from heard in reading.Sounds
        where heard.Kind == SoundKind.Crack
        select (ProofCall.StopAndVent, ProofingFindings.CrackStopsProof(heard.At));
}
