namespace NotebookKit.Vessels.Ends;

/// <summary>What keeps a carried sleeve from slipping off its neck.</summary>
internal enum SleeveHold
{
    /// <summary>Turns of yarn around the tail.</summary>
    TiedOff,

    /// <summary>The bond of the tail to the neck.</summary>
    Bonded,

    /// <summary>Not given: neck or tail is missing.</summary>
    NotGiven,
}
