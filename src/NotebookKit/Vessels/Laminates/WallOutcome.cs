namespace NotebookKit.Vessels.Laminates;

/// <summary>Where a wall's path of damage ends, SI.</summary>
internal struct WallOutcome
{
    /// <summary>Load at the first resin crack [N/m]; NaN where resin never cracks before the burst.</summary>
    public double FirstPlyFailureLineLoad;

    /// <summary>Ply of the first resin crack; −1 for none.</summary>
    public int FirstPlyFailurePly;

    /// <summary>Largest load the wall carries [N/m].</summary>
    public double BurstLineLoad;

    /// <summary>What ends it.</summary>
    public FailureMode Mode;

    /// <summary>Which ply ends it; −1 for the liner or the whole wall.</summary>
    public int Ply;

    /// <summary>State of the wall at the burst.</summary>
    public WallState State;

    /// <summary>Largest strain across or in shear that any layer's resin would have to follow at the burst [-].</summary>
    public double ResinStrain;

    /// <summary>Share of the load the liner carries at the burst, around or along, whichever is more [-].</summary>
    public double LinerShare;
}
