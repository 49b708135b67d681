namespace NotebookKit.Proofing;

/// <summary>What a proof log says of the vessel.</summary>
public enum ProofVerdict
{
    /// <summary>It held: good for what it held over the factor, at most the working pressure it was planned for.</summary>
    Accept,

    /// <summary>The log can't decide: mend what is named and prove again.</summary>
    Repeat,

    /// <summary>It did not hold, or took a set: cut it up.</summary>
    Reject,
}
