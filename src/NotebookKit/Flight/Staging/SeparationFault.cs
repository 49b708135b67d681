namespace NotebookKit.Flight.Staging;

/// <summary>Why two stages don't part in order.</summary>
internal enum SeparationFault
{
    /// <summary>They do.</summary>
    None,

    /// <summary>The flight of both together has no answer.</summary>
    NoFlight,

    /// <summary>The ground comes first.</summary>
    OnGround,

    /// <summary>They part on the way down.</summary>
    AfterApogee,

    /// <summary>They would part while the booster still drives.</summary>
    WhileDriven,
}
