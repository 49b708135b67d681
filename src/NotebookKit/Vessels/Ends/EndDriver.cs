namespace NotebookKit.Vessels.Ends;

/// <summary>What makes a mode's pressure scatter from vessel to vessel.</summary>
internal enum EndDriver
{
    /// <summary>Strength of the closures' material.</summary>
    Closure,

    /// <summary>Strength of the bond between closure and liner.</summary>
    Bond,

    /// <summary>Strength of the sleeves' fibres.</summary>
    Sleeve,

    /// <summary>Bond and sleeves together.</summary>
    Shared,
}
