namespace NotebookKit.Proofing;

/// <summary>What a proof log says of the vessel.</summary>
public enum ProofVerdict
{
    /// <summary>It held: the working pressure shown is what it held over the factor, at most the one it was planned for.</summary>
    Accept,

    /// <summary>The log can't decide: mend what is named and proof-test the vessel again.</summary>
    Retest,

    /// <summary>It did not hold, or took a set: cut it up.</summary>
    Reject,
}
