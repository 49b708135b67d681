namespace NotebookKit.Proofing.Records;

/// <summary>What a leak's place leads to, and why.</summary>
/// <param name="Seen">The drops that were counted.</param>
/// <param name="Action">What is to be done.</param>
/// <param name="Reasons">Why, a sentence each.</param>
/// <remarks>Source: common practice, no source.</remarks>
public sealed record LeakDecision(DropsSeen Seen, LeakAction Action, IReadOnlyList<string> Reasons)
{
    /// <summary>The verdict that the leak alone allows.</summary>
    public ProofVerdict Verdict => Action switch
    {
        LeakAction.Retire => ProofVerdict.Reject,
        LeakAction.MendPumpLine => ProofVerdict.Accept,
        _ => ProofVerdict.Retest,
    };

    /// <summary>The decision for a leak; none where the place was watched and stayed dry. Source: common practice, no source.</summary>
    /// <param name="seen">The drops that were counted.</param>
    public static LeakDecision? For(DropsSeen seen)
    {
        ArgumentNullException.ThrowIfNull(seen);
        if (seen.Rate.Hertz <= 0) return null;
        return seen.Place switch
        {
            LeakPlace.FittingSeal => new(seen, LeakAction.Reseal,
                ["A seal can be changed without touching the laminate.",
                    "What the vessel holds isn't known while its seal lets water past: the proof is done again with the new seal."]),
            LeakPlace.Bond => new(seen, LeakAction.Rebond,
                ["Water at a bond shows a path along the adhesive, and a path grows with every fill.",
                    "The mended end is another end than the one that was proved: the whole proof is done again."]),
            LeakPlace.PumpLine => new(seen, LeakAction.MendPumpLine,
                ["The line isn't part of the vessel; the leak makes the gauge fall more, never less.",
                    "Where the fall was still within the limit with that leak, the vessel's own is smaller."]),
            _ => new(seen, LeakAction.Retire,
                ["Water through the wall shows that liner and laminate are open to each other, and where fibres broke isn't seen "
                    + "from outside.",
                    "No mend from outside brings back what the wall held."]),
        };
    }
}

/// <summary>What a leak asks for.</summary>
public enum LeakAction
{
    /// <summary>Mend the pump's line; the vessel isn't touched.</summary>
    MendPumpLine,

    /// <summary>Change the seal and proof-test again.</summary>
    Reseal,

    /// <summary>Bond the end anew and proof-test again.</summary>
    Rebond,

    /// <summary>Retire the vessel: cut it up.</summary>
    Retire,
}
