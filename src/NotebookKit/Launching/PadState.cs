namespace NotebookKit.Launching;

/// <summary>What state a pad is in.</summary>
public enum PadState
{
    /// <summary>Vehicle on the pad, no pressure.</summary>
    Empty,

    /// <summary>Fill valve open.</summary>
    Filling,

    /// <summary>Fill valve shut, the gas cools or somebody looks.</summary>
    Holding,

    /// <summary>At fill pressure, settled.</summary>
    Full,

    /// <summary>Release unlocked, countdown.</summary>
    Armed,

    /// <summary>Released; counts until every stage is down and known to be without pressure.</summary>
    Released,

    /// <summary>The release or the stage latch didn't do what it was told.</summary>
    Misfire,

    /// <summary>Dump valve open.</summary>
    Venting,

    /// <summary>Gauge at zero, dump valve open, time behind cover over.</summary>
    Safe,
}
