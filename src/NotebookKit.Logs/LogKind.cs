namespace NotebookKit.Logs;

/// <summary>What was logged.</summary>
public enum LogKind
{
    /// <summary>Not known.</summary>
    Unknown,

    /// <summary>The pressure of a vessel: a proof or a fill.</summary>
    Gauge,

    /// <summary>The air's pressure, or the height, of a flight.</summary>
    Altimeter,

    /// <summary>A mass.</summary>
    Scale,

    /// <summary>A force.</summary>
    Force,
}
