namespace NotebookKit.Vessels.Ends;

/// <summary>
/// A bond and a sleeve that hold the same closure in side by side. Each takes of the thrust what its stiffness takes; when one lets go the
/// other carries all, so the end holds the pressure of that first loss, or what the other holds alone, whichever is more.
/// </summary>
/// <remarks>Source: balance of forces and equal stretch of two springs side by side.</remarks>
internal static class SharedHold
{
    /// <summary>Pressure at which the second of both lets go [Pa]; never below what either holds alone.</summary>
    public static double Pascals(double bond, double sleeve, double bondShare) =>
        Math.Max(Math.Max(bond, sleeve), Math.Min(BondLetsGo(bond, bondShare), sleeve / Math.Max(1 - bondShare, 1e-12)));

    /// <summary>Pressure at which the bond would let go while the sleeve takes its share [Pa].</summary>
    public static double BondLetsGo(double bond, double bondShare) => bond / Math.Max(bondShare, 1e-12);

    /// <summary>The bond's share of the thrust, by stiffness [-].</summary>
    /// <param name="bondStiffness">Force a width and length of slip of the bond [N/m²].</param>
    /// <param name="sleeveStiffness">The same of the sleeve: E·t over its length [N/m²].</param>
    public static double BondShare(double bondStiffness, double sleeveStiffness) =>
        bondStiffness / (bondStiffness + sleeveStiffness);
}
