namespace NotebookKit.Recovery;

/// <summary>Types of canopy, by the names of the parachute handbook.</summary>
public enum CanopyType
{
    /// <summary>Flat circular, solid cloth.</summary>
    FlatCircular,

    /// <summary>Conical, solid cloth.</summary>
    Conical,

    /// <summary>Hemispherical, solid cloth.</summary>
    Hemispherical,

    /// <summary>Cross, solid cloth.</summary>
    Cross,

    /// <summary>Extended skirt, 10 %, solid cloth.</summary>
    ExtendedSkirt,

    /// <summary>Annular, solid cloth.</summary>
    Annular,

    /// <summary>Flat ribbon.</summary>
    FlatRibbon,

    /// <summary>Conical ribbon.</summary>
    ConicalRibbon,

    /// <summary>Ring-slot.</summary>
    RingSlot,

    /// <summary>Ringsail.</summary>
    Ringsail,

    /// <summary>Disc-gap-band.</summary>
    DiscGapBand,
}
