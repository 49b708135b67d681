namespace NotebookKit.Vessels.Laminates;

/// <summary>
/// One unidirectional family in a tube wall, SI: both directions of a ±θ pair together, so that shear coupling cancels and the wall
/// neither twists nor shears under pressure.
/// </summary>
internal struct WallLayer
{
    /// <summary>Moduli of the sound ply [Pa] and its major Poisson's ratio [-].</summary>
    public double E1, E2, G12, Nu12;

    /// <summary>Strengths [Pa].</summary>
    public StrengthPascals Strength;

    /// <summary>Angle of the fibres from the axis [rad]; 0 to π/2.</summary>
    public double Angle;

    /// <summary>Thickness of both directions together [m].</summary>
    public double Thickness;

    /// <summary>Which ply of the design it belongs to.</summary>
    public int Ply;

    /// <summary>Strength of the fibres alone times their share of the ply [Pa]: what netting analysis counts on.</summary>
    public double NettingStrength;
}
