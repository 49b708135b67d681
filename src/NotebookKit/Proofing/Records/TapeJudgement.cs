using NotebookKit.Proofing.Plans;
using NotebookKit.Provenance;
using UnitsNet;
using UnitsNet.Units;

namespace NotebookKit.Proofing.Records;

/// <summary>What tape, drops and sounds say of a proof. A requirement counts as shown only where the uncertainty leaves no doubt.</summary>
internal static class TapeJudgement
{
    /// <summary>Growth by tape in place of a burette: every requirement of the rule shown, broken or not told.</summary>
    public static IEnumerable<(ProofVerdict, Finding)> Growth(ProofRecord record, TapeExpansion tape, double mostGrowth)
    {
        var proof = record.Plan.Proof;
        var limit = proof.Rule.PermanentLimit.ToUnit(RatioUnit.Percent);
        if (tape.PermanentShare is not { Expanded: { } error } share)
        {
            yield return (ProofVerdict.Retest, ProofingFindings.TapeWasNotReadAfter(tape.Total.Value <= Volume.Zero));
        }
        else if (share.Value - error > limit)
        {
            yield return (ProofVerdict.Reject, ProofingFindings.TapeShowsSet(share.Value.Percent, error.Percent, limit, proof.Rule.Name));
        }
        else if (share.Value + error > limit)
        {
            yield return (ProofVerdict.Retest, ProofingFindings.TapeCannotTellSet(share.Value.Percent, error.Percent, limit));
        }
        else if (share.Value + error < Ratio.Zero)
        {
            yield return (ProofVerdict.Retest, ProofingFindings.TapeShrank(share.Value.Percent, error.Percent));
        }
        else
        {
            yield return (ProofVerdict.Accept, ProofingFindings.TapeShowsNoSet(share.Value.Percent, error.Percent, limit));
        }

        var expected = proof.Filled.WallExpansion(record.Plan.ProofPressure);
        var (ratio, spread) = (tape.Total.Value / expected, tape.Total.Expanded is { } u ? u / expected : double.PositiveInfinity);
        if (ratio + spread >= mostGrowth)
            yield return (ProofVerdict.Retest, ProofingFindings.TapeGrowthTooMuchOrUnknown(
                ProofPlan.Millilitres(tape.Total.Value), ratio, spread, ProofPlan.Millilitres(expected), mostGrowth));
        else if (ratio + spread < 0.7)
            yield return (ProofVerdict.Accept, ProofingFindings.TapeGrewLittle(
                ProofPlan.Millilitres(tape.Total.Value), ratio, ProofPlan.Millilitres(expected)));

        // Air softens the gauge's answer to a leak: without its amount a small fall says little.
        var most = proof.Volume * proof.TrappedAirLimit.DecimalFractions;
        if (tape.TrappedAir is not { Expanded: { } within } air)
            yield return (ProofVerdict.Retest, ProofingFindings.TrappedAirIsNotShown());
        else if (air.Value - within > most)
            yield return (ProofVerdict.Retest, ProofingFindings.TapeAirIsTrapped(
                ProofPlan.Millilitres(air.Value), ProofPlan.Millilitres(within), ProofPlan.Millilitres(most)));
        else if (air.Value + within > most)
            yield return (ProofVerdict.Retest, ProofingFindings.TapeCannotTellAir(
                ProofPlan.Millilitres(air.Value), ProofPlan.Millilitres(within), ProofPlan.Millilitres(most)));
    }

    /// <summary>A tape beside a burette: where it shows a set beyond doubt that the burette doesn't, one of them misread.</summary>
    public static IEnumerable<(ProofVerdict, Finding)> Beside(ProofRecord record, TapeExpansion tape)
    {
        var limit = record.Plan.Proof.Rule.PermanentLimit.ToUnit(RatioUnit.Percent);
        if (tape.PermanentShare is { Expanded: { } error } share && share.Value - error > limit)
            yield return (ProofVerdict.Retest, ProofingFindings.TapeAndBuretteDiffer(share.Value.Percent, error.Percent, limit));
    }

    public static IEnumerable<(ProofVerdict, Finding)> Drops(ProofRecord record) =>
        record.Leaks.Select(leak =>
        {
            var (place, remedy) = leak.Seen.Place switch
            {
                LeakPlace.FittingSeal => ("at the seal of a fitting", "Change the seal and proof-test the vessel again."),
                LeakPlace.Bond => ("at the bond of an end", "Bond the end anew and proof-test the vessel again."),
                LeakPlace.PumpLine => ("at the pump's line", "Mend the line before the next proof."),
                _ => ("through the wall", "Retire the vessel."),
            };
            return (leak.Verdict, ProofingFindings.DropsWereSeen(place, leak.Seen.At, leak.Seen.Rate.Hertz * 60,
                leak.Seen.Flow.MillilitersPerMinute, leak.Reasons, remedy, leak.Action == LeakAction.MendPumpLine));
        });

    public static string NameOf(LeakPlace place) => place switch
    {
        LeakPlace.FittingSeal => "seal of a fitting", LeakPlace.Bond => "bond of an end", LeakPlace.PumpLine => "pump's line", _ => "wall",
    };

    public static string NameOf(LeakAction action) => action switch
    {
        LeakAction.Reseal => "seal anew and retest", LeakAction.Rebond => "bond anew and retest",
            LeakAction.MendPumpLine => "mend the line",
        _ => "retire",
    };

    public static IEnumerable<(ProofVerdict, Finding)> Sounds(ProofRecord record)
    {
        foreach (var sound in record.Readings.Sounds)
        {
            var low = sound.At <= record.Plan.Proof.WorkingPressure;
            yield return sound.Kind == SoundKind.Crack && low
                ? (ProofVerdict.Retest, ProofingFindings.CrackAtOrBelowWorkingPressure(sound.At, record.Plan.Proof.WorkingPressure))
                : (ProofVerdict.Accept, sound.Kind == SoundKind.Crack ? ProofingFindings.CrackWasHeard(sound.At)
                    : ProofingFindings.TickingWasHeard(sound.At));
        }
    }
}
