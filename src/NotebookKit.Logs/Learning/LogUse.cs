namespace NotebookKit.Logs.Learning;

/// <summary>What a log is fitted for.</summary>
public enum LogUse
{
    /// <summary>A flight's altimeter: the drag.</summary>
    Flight,

    /// <summary>A proof with water: what the vessel held.</summary>
    Proof,

    /// <summary>A fill at the pad: the restrictor.</summary>
    Fill,
}
