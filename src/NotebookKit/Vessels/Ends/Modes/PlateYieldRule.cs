namespace NotebookKit.Vessels.Ends.Modes;

/// <summary>When a bent plate's section yields, by its two moments.</summary>
public enum PlateYieldRule
{
    /// <summary>By the largest shear (Tresca); the lowest answer.</summary>
    Tresca,

    /// <summary>By the energy of distortion (von Mises); closest to tests on ductile metals.</summary>
    VonMises,

    /// <summary>
    /// Where the larger moment comes to the full one. A bound for comparison, on the unsafe side of Tresca: not for a rating.
    /// </summary>
    MaximumMoment,
}
