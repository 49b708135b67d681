using NotebookKit.Proofing.Plans;
using NotebookKit.Provenance;
using NotebookKit.Quantities;
using UnitsNet;

namespace NotebookKit.Proofing.Records;

/// <summary>The rules by which a proof log is accepted, repeated or rejected; every reason is said, not only the first.</summary>
internal static class ProofJudgement
{
    /// <summary>Growth over the expected at which a proof isn't accepted [-]; common practice, no source.</summary>
    private const double MostGrowth = 1.3;

    public static (ProofVerdict Verdict, IReadOnlyList<Finding> Findings) Of(ProofRecord record)
    {
        List<(ProofVerdict Verdict, Finding Finding)> reasons = [.. Failure(record), .. Reached(record), .. Held(record), .. Leak(record),
            .. Growth(record), .. Drops(record), .. TapeJudgement.Drops(record), .. TapeJudgement.Sounds(record)];
        var verdict = reasons.Count == 0 ? ProofVerdict.Accept : reasons.Max(r => r.Verdict);
        List<Finding> findings = [.. reasons.Select(r => r.Finding)];
        if (verdict == ProofVerdict.Accept)
            findings.Insert(0, ProofingFindings.VesselHeldWithoutSet(
                record.Plan.Proof.Vessel, record.HeldAtLeast, record.WorkingPressureShown));
        if (verdict == ProofVerdict.Reject)
            findings.Add(ProofingFindings.RejectedVesselIsCutUp());
        return (verdict, findings);
    }

    // More than half the pressure gone between two readings: it burst or a closure let go. Once every hold is over a fast vent is nobody's
    // harm.
    private static IEnumerable<(ProofVerdict, Finding)> Failure(ProofRecord record)
    {
        var (time, pressure) = (record.Readings.Time, record.Readings.Pressure);
        var until = record.Holds.All(h => h is { LongEnough: true }) ? record.Holds[^1]!.From.Seconds + record.Holds[^1]!.Held.Seconds
            : double.PositiveInfinity;
        for (var i = 1; i < time.Count && time[i] <= until; i++)
        {
            var fall = pressure[i - 1] - pressure[i];
            if (pressure[i - 1] < 0.1 * record.Plan.Proof.WorkingPressure.Bar || fall < 0.5 * pressure[i - 1]
                || fall < 10 * record.Readings.GaugeError.Bars || time[i] - time[i - 1] > 3) continue;
            yield return (ProofVerdict.Reject, ProofingFindings.GaugeFellBetweenTwoReadings(
                time[i], pressure[i - 1].BarGauge(), pressure[i].BarGauge()));
            yield break;
        }
    }

    // What was proved is what it stayed at or above through the whole hold, not the tip of the pump's last stroke.
    private static IEnumerable<(ProofVerdict, Finding)> Reached(ProofRecord record)
    {
        var (highest, planned, error) = (record.MaximumPressure, record.Plan.ProofPressure, record.Readings.GaugeError);
        if (record.ProofHold is not { } hold)
        {
            if (highest + error < planned)
                yield return (ProofVerdict.Retest, ProofingFindings.ProofPressureWasNotReached(highest, planned));
        }
        else if (hold.Minimum + error < planned)
        {
            yield return (ProofVerdict.Retest, ProofingFindings.ProofHoldFellShort(
                hold.Minimum, (planned - hold.Minimum).Bars, planned, error.Bars, record.WorkingPressureShown, planned + error + error));
        }
        else if (record.WorkingPressureShown is { } good && good < record.Plan.Proof.WorkingPressure)
        {
            yield return (ProofVerdict.Accept, ProofingFindings.GaugeErrorLeavesProofShort(
                error.Bars, record.HeldAtLeast, good, record.Plan.Proof.WorkingPressure, planned + error));
        }

        if (highest.Bar > 1.05 * planned.Bar + record.Readings.GaugeError.Bars)
            yield return (ProofVerdict.Accept, ProofingFindings.ProofPressureWasPassed(highest, planned));
    }

    private static IEnumerable<(ProofVerdict, Finding)> Held(ProofRecord record)
    {
        List<(bool Severe, ProofStep Step)> missing = [];
        for (var i = 0; i < record.Holds.Count; i++)
        {
            var step = record.Plan.Steps[i];
            var isProof = i == record.Plan.Proof.Steps.Count - 1;
            var isLeak = i >= record.Plan.Proof.Steps.Count;
            var severe = isProof || isLeak;
            if (record.Holds[i] is not { } hold) missing.Add((severe, step));
            else if (!hold.LongEnough)
                yield return (severe ? ProofVerdict.Retest : ProofVerdict.Accept,
                    Say(severe, $"{step.Pressure} was held for {ProofPlan.Seconds(hold.Held)}; {ProofPlan.Seconds(step.Hold)} "
                    + "were planned."));
        }

        foreach (var steps in missing.GroupBy(m => m.Severe).OrderByDescending(g => g.Key))
            yield return (steps.Key ? ProofVerdict.Retest : ProofVerdict.Accept,
                ProofingFindings.HoldsAreNotInTheLog(steps.Key,
                    [.. steps.Select(s => $"{s.Step.Pressure} ({ProofPlan.Seconds(s.Step.Hold)})")]));
    }

    private static IEnumerable<(ProofVerdict, Finding)> Leak(ProofRecord record)
    {
        if (record.LeakHold is not { } hold || record.FallInTenMinutes is not { } fall) yield break;
        var error = Ratio.FromPercent(200 * hold.FallUncertainty.Bars / hold.Held.Minutes * 10 / record.Plan.Proof.WorkingPressure.Bar);
        var limit = record.Readings.LeakLimit;
        if (fall > limit)
        {
            yield return (ProofVerdict.Retest, ProofingFindings.GaugeFellAtWorkingPressure(
                fall.Percent, record.LeakRate!.Value.MillilitersPerMinute, limit));
        }
        else if (error > limit)
        {
            yield return (ProofVerdict.Retest, ProofingFindings.LogCannotTellLeak(limit, error.Percent));
        }

        if (record.Readings.Temperature is null)
            yield return (ProofVerdict.Accept, ProofingFindings.NoTemperatureWasLogged(record.Plan.RisePerKelvin.Bars, hold.Fall.Bars));
    }

    private static IEnumerable<(ProofVerdict, Finding)> Growth(ProofRecord record)
    {
        var rule = record.Plan.Proof.Rule;
        if (record.Expansion is not { } expansion)
        {
            if (record.TapeExpansion is { } alone)
            {
                foreach (var reason in TapeJudgement.Growth(record, alone, MostGrowth)) yield return reason;
                yield break;
            }

            yield return (ProofVerdict.Retest, ProofingFindings.PermanentExpansionCannotBeTold(
                record.Readings.Expansion is null ? ProofingFindings.NoWaterIsLogged()
                : record.ProofHold is null ? ProofingFindings.NoGrowthWithoutHold(record.Plan.ProofPressure, record.MaximumPressure)
                : ExpansionReading.IsDepressurised(record.Readings, record.ProofHold) ? ProofingFindings.NoGrowthIsSeen()
                : ProofingFindings.WaterIsNotLoggedToTheEnd()));
            yield break;
        }

        if (record.TapeExpansion is { } tape)
            foreach (var reason in TapeJudgement.Beside(record, tape))
                yield return reason;

        // Water lost after the proof hold may make what stays more than the growth itself; the log is judged all the same.
        var (stays, share) = (expansion.Permanent.Milliliters, expansion.PermanentShare.DecimalFractions);
        if (stays > expansion.Total.Milliliters || (share >= 0 && !rule.Accepts(expansion.Permanent, expansion.Total)))
            yield return (ProofVerdict.Reject, ProofingFindings.PermanentExpansionPastLimit(
                expansion.Permanent.Milliliters, ProofPlan.Millilitres(expansion.Total), expansion.PermanentShare.Percent,
                rule.PermanentLimit, rule.Name));
        if (-share > rule.PermanentLimit.DecimalFractions)
            yield return (ProofVerdict.Retest, ProofingFindings.TooMuchMoreWaterCameOut(-stays, -100 * share, rule.PermanentLimit));
        else if (share < -0.01)
            yield return (ProofVerdict.Accept, ProofingFindings.MoreWaterCameOutThanWent(stays));

        var limit = record.Plan.Proof.Volume * record.Plan.Proof.TrappedAirLimit.DecimalFractions;
        if (expansion.TrappedAir > limit)
            yield return (ProofVerdict.Retest, ProofingFindings.AirIsTrapped(
                ProofPlan.Millilitres(expansion.TrappedAir), ProofPlan.Millilitres(limit)));

        var expected = record.Plan.Proof.Filled.WallExpansion(record.Plan.ProofPressure);
        var ratio = expansion.Total / expected;
        var grew = $"The vessel grew by {ProofPlan.Millilitres(expansion.Total)}, {Digits.Round(ratio, 2)} times the expected "
            + $"{ProofPlan.Millilitres(expected)}";
        if (ratio >= MostGrowth)
            yield return (ProofVerdict.Retest, ProofingFindings.WallGrewTooMuch(grew, MostGrowth));
        else if (ratio < 0.7)
            yield return (ProofVerdict.Accept, ProofingFindings.LayupIsNotWhatPredictionTook(grew));
    }

    private static IEnumerable<(ProofVerdict, Finding)> Drops(ProofRecord record) =>
        record.Holds.OfType<HoldReading>().SelectMany(h => h.Drops.Select(d => (
            ProofVerdict.Accept,
            ProofingFindings.GaugeFellSuddenlyInHold(d.At.Seconds, h.Planned.Pressure, d.Fall.Bars, d.Volume.Milliliters))));

    private static Finding Say(bool severe, string message) => severe ? Finding.Error(message) : Finding.Warning(message);
}
