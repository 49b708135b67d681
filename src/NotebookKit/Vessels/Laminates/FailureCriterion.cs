namespace NotebookKit.Vessels.Laminates;

/// <summary>How stresses in a ply are weighed together to say that it fails.</summary>
public enum FailureCriterion
{
    /// <summary>Each stress against its own strength. Source: Kaw, Mechanics of Composite Materials, 2nd ed. 2006, §2.8.</summary>
    MaximumStress,

    /// <summary>Tsai-Hill with tension strengths only. Source: Kaw 2006, Eq. 2.150.</summary>
    TsaiHill,

    /// <summary>Tsai-Hill with tension or compression strength by the sign of the stress. Source: Kaw 2006, Eq. 2.151.</summary>
    ModifiedTsaiHill,

    /// <summary>Tsai-Wu with F12 = −½√(F11·F22). Source: Tsai and Wu, J. Compos. Mater. 5, 1971; Kaw 2006, Eq. 2.152.</summary>
    TsaiWu,

    /// <summary>Fibre and resin failure told apart, transverse shear strength taken as half of Yc. Source: Hashin, J. Appl. Mech. 47, 1980,
    /// p. 329.</summary>
    Hashin,
}
