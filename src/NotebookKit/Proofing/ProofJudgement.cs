using NotebookKit.Provenance;
using NotebookKit.Quantities;
using UnitsNet;

namespace NotebookKit.Proofing;

/// <summary>The rules by which a proof log is accepted, repeated or rejected; every reason is said, not only the first.</summary>
internal static class ProofJudgement
{
    /// <summary>Growth over the expected at which a proof isn't accepted [-]; common practice, no source.</summary>
    private const double MostGrowth = 1.3;

    public static (ProofVerdict Verdict, IReadOnlyList<Finding> Findings) Of(ProofRecord record)
    {
        List<(ProofVerdict Verdict, Finding Finding)> reasons = [.. Failure(record), .. Reached(record), .. Held(record), .. Leak(record), .. Growth(record), .. Drops(record)];
        var verdict = reasons.Count == 0 ? ProofVerdict.Accept : reasons.Max(r => r.Verdict);
        List<Finding> findings = [.. reasons.Select(r => r.Finding)];
        if (verdict == ProofVerdict.Accept)
            findings.Insert(0, Finding.Note($"{record.Plan.Proof.Vessel} held {record.HeldAtLeast} and took no set beyond the limit: one survived proof, not a burst test; it says that this vessel, as it was that day, has shown a working pressure of {record.WorkingPressureShown}."));
        if (verdict == ProofVerdict.Reject)
            findings.Add(Finding.Note("A rejected vessel is cut up, so that nobody fills it by mistake."));
        return (verdict, findings);
    }

    // More than half the pressure gone between two readings: it burst or a closure let go. Once every hold is over a fast vent is nobody's harm.
    private static IEnumerable<(ProofVerdict, Finding)> Failure(ProofRecord record)
    {
        var (time, pressure) = (record.Readings.Time, record.Readings.Pressure);
        var until = record.Holds.All(h => h is { LongEnough: true }) ? record.Holds[^1]!.From.Seconds + record.Holds[^1]!.Held.Seconds : double.PositiveInfinity;
        for (var i = 1; i < time.Count && time[i] <= until; i++)
        {
            var fall = pressure[i - 1] - pressure[i];
            if (pressure[i - 1] < 0.1 * record.Plan.Proof.WorkingPressure.Bar || fall < 0.5 * pressure[i - 1] || fall < 10 * record.Readings.GaugeError.Bars || time[i] - time[i - 1] > 3) continue;
            yield return (ProofVerdict.Reject, Finding.Error($"At {Digits.Round(time[i], 5)} s the gauge fell from {pressure[i - 1].BarGauge()} to {pressure[i].BarGauge()} between two readings: the vessel or a closure let go at that pressure. Where the vessel was vented by hand on purpose, cut the log there."));
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
                yield return (ProofVerdict.Retest, Finding.Error($"The highest reading is {highest}; proof pressure is {planned}. A lower proof proves a lower working pressure, and that only where it was held."));
        }
        else if (hold.Minimum + error < planned)
        {
            yield return (ProofVerdict.Retest, Finding.Error($"The lowest reading of the proof hold is {hold.Minimum}, {Digits.Round((planned - hold.Minimum).Bars, 2)} bar short of the proof pressure of {planned}; the gauge can't tell {Digits.Round(error.Bars, 2)} bar apart. A lower proof proves a lower working pressure: {(record.WorkingPressureShown is { } less ? $"it shows {less}" : "none, it wasn't held for long enough")}. Proof-test it again, pumped past {planned + error + error} so that it stays above through the hold, or rate it lower."));
        }
        else if (record.WorkingPressureShown is { } good && good < record.Plan.Proof.WorkingPressure)
        {
            yield return (ProofVerdict.Accept, Finding.Warning($"With the gauge's {Digits.Round(error.Bars, 2)} bar on the safe side it held {record.HeldAtLeast}, which proves {good}, not {record.Plan.Proof.WorkingPressure}. Limit the working pressure to {good}, or proof-test it at {planned + error} by the gauge or above."));
        }

        if (highest.Bar > 1.05 * planned.Bar + record.Readings.GaugeError.Bars)
            yield return (ProofVerdict.Accept, Finding.Warning($"The gauge went to {highest}, more than 5 % above the planned {planned}: inspect with care, the laminate has seen it."));
    }

    private static IEnumerable<(ProofVerdict, Finding)> Held(ProofRecord record)
    {
        for (var i = 0; i < record.Holds.Count; i++)
        {
            var step = record.Plan.Steps[i];
            var isProof = i == record.Plan.Proof.Steps.Count - 1;
            var isLeak = i >= record.Plan.Proof.Steps.Count;
            var severe = isProof || isLeak;
            if (record.Holds[i] is not { } hold)
                yield return (severe ? ProofVerdict.Retest : ProofVerdict.Accept, Say(severe, $"The hold at {step.Pressure} isn't in the log; {ProofPlan.Seconds(step.Hold)} were planned."));
            else if (!hold.LongEnough)
                yield return (severe ? ProofVerdict.Retest : ProofVerdict.Accept, Say(severe, $"{step.Pressure} was held for {ProofPlan.Seconds(hold.Held)}; {ProofPlan.Seconds(step.Hold)} were planned."));
        }
    }

    private static IEnumerable<(ProofVerdict, Finding)> Leak(ProofRecord record)
    {
        if (record.LeakHold is not { } hold || record.FallInTenMinutes is not { } fall) yield break;
        var error = Ratio.FromPercent(200 * hold.FallUncertainty.Bars / hold.Held.Minutes * 10 / record.Plan.Proof.WorkingPressure.Bar);
        var limit = record.Readings.LeakLimit;
        if (fall > limit)
        {
            yield return (ProofVerdict.Retest, Finding.Error($"At working pressure the gauge fell by {Digits.Round(fall.Percent, 2)} % in ten minutes with warmth and sudden drops taken off, {Digits.Round(record.LeakRate!.Value.MillilitersPerMinute, 2)} mL/min; {limit.Show()} is the limit. Seal the fittings and proof-test it again; where the wall weeps, reject."));
        }
        else if (error > limit)
        {
            yield return (ProofVerdict.Retest, Finding.Error($"The log can't tell a leak of {limit.Show()} in ten minutes from nothing (two standard errors are {Digits.Round(error.Percent, 2)} %): hold longer or read a finer gauge."));
        }

        if (record.Readings.Temperature is null)
            yield return (ProofVerdict.Accept, Finding.Warning($"No temperature was logged: {Digits.Round(record.Plan.RisePerKelvin.Bars, 2)} bar for each kelvin of warming or cooling may hide in the fall of {Digits.Round(hold.Fall.Bars, 2)} bar."));
    }

    private static IEnumerable<(ProofVerdict, Finding)> Growth(ProofRecord record)
    {
        var rule = record.Plan.Proof.Rule;
        if (record.Expansion is not { } expansion)
        {
            yield return (ProofVerdict.Retest, Finding.Error("Permanent expansion can't be told: water in and out wasn't logged from no pressure to no pressure. It is half of what a proof says."));
            yield break;
        }

        // Water lost after the proof hold may make what stays more than the growth itself; the log is judged all the same.
        var (stays, share) = (expansion.Permanent.Milliliters, expansion.PermanentShare.DecimalFractions);
        if (stays > expansion.Total.Milliliters || (share >= 0 && !rule.Accepts(expansion.Permanent, expansion.Total)))
            yield return (ProofVerdict.Reject, Finding.Error($"{Digits.Round(expansion.Permanent.Milliliters, 2)} mL of {ProofPlan.Millilitres(expansion.Total)} stay, {Digits.Round(expansion.PermanentShare.Percent, 2)} %; {rule.PermanentLimit.Show()} is the limit of {rule.Name}: the laminate has cracked or crept."));
        if (-share > rule.PermanentLimit.DecimalFractions)
            yield return (ProofVerdict.Retest, Finding.Error($"{Digits.Round(-stays, 2)} mL more came out than went in, {Digits.Round(-100 * share, 2)} % of the total expansion: the burette errs by more than the {rule.PermanentLimit.Show()} it is to judge. Check its zero and proof-test it again."));
        else if (share < -0.01)
            yield return (ProofVerdict.Accept, Finding.Warning($"More water came out than went in ({Digits.Round(stays, 2)} mL): check the burette's zero."));

        var limit = record.Plan.Proof.Volume * record.Plan.Proof.TrappedAirLimit.DecimalFractions;
        if (expansion.TrappedAir > limit)
            yield return (ProofVerdict.Retest, Finding.Error($"The curve of water against pressure points to {ProofPlan.Millilitres(expansion.TrappedAir)} of trapped air; {ProofPlan.Millilitres(limit)} is the limit. Bleed again: air makes a burst dangerous and a leak invisible."));

        var expected = record.Plan.Proof.Filled.WallExpansion(record.Plan.ProofPressure);
        var ratio = expansion.Total / expected;
        var grew = $"The vessel grew by {ProofPlan.Millilitres(expansion.Total)}, {Digits.Round(ratio, 2)} times the expected {ProofPlan.Millilitres(expected)}";
        if (ratio >= MostGrowth)
            yield return (ProofVerdict.Retest, Finding.Error($"{grew}; {MostGrowth} times is the limit (common practice, no source): the wall is softer than the layup it was rated by, or water was lost. Find out which before it is filled with gas: weigh it, measure its wall, mend the prediction, and proof-test it again."));
        else if (ratio < 0.7)
            yield return (ProofVerdict.Accept, Finding.Warning($"{grew}: the layup isn't what the prediction took, or the burette misread."));
    }

    private static IEnumerable<(ProofVerdict, Finding)> Drops(ProofRecord record) =>
        record.Holds.OfType<HoldReading>().SelectMany(h => h.Drops.Select(d => (
            ProofVerdict.Accept,
            Finding.Warning($"At {Digits.Round(d.At.Seconds, 5)} s, holding {h.Planned.Pressure}, the gauge fell suddenly by {Digits.Round(d.Fall.Bars, 2)} bar, {Digits.Round(d.Volume.Milliliters, 2)} mL: a fitting that settled, or a crack. Look for water at every fitting and listen on the next proof."))));

    private static Finding Say(bool severe, string message) => severe ? Finding.Error(message) : Finding.Warning(message);
}
