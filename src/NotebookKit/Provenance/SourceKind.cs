namespace NotebookKit.Provenance;

/// <summary>How far a value or a formula can be trusted on its origin alone.</summary>
public enum SourceKind
{
    /// <summary>A standard.</summary>
    Standard,

    /// <summary>A paper, report or handbook that was read, or whose figures were re-computed.</summary>
    Published,

    /// <summary>A maker's data sheet.</summary>
    DataSheet,

    /// <summary>A typical value for the class of material; not a design value.</summary>
    Typical,

    /// <summary>Measured by the user.</summary>
    Measured,

    /// <summary>Recalled from the literature, text not in hand: confirm before relying on it.</summary>
    Unverified,

    /// <summary>Common practice in the trade, no source.</summary>
    CommonPractice,

    /// <summary>Computed independently of this library, from a stated model; nobody published it.</summary>
    Independent,
}
