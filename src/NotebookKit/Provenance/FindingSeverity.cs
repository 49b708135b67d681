namespace NotebookKit.Provenance;

/// <summary>Whether a finding stops the work or only qualifies it.</summary>
public enum FindingSeverity
{
    /// <summary>Worth knowing.</summary>
    Note,

    /// <summary>The answer stands, with this reservation.</summary>
    Warning,

    /// <summary>No answer is given until this is mended.</summary>
    Error,
}
