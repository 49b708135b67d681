namespace NotebookKit.Vessels.Ends;

/// <summary>What a joint needs to know of the vessel it sits in, SI.</summary>
/// <param name="Bore">Inner diameter [m].</param>
/// <param name="WallStiffness">Axial stiffness of the wall a width, E·t [N/m].</param>
/// <param name="SleeveAxialStrength">Axial force a width at which the sleeves' fibres break, by netting [N/m].</param>
/// <param name="SleeveRadius">Radius the sleeves lie at [m].</param>
/// <param name="BondFactor">Strength of bonds over its mean [-]; 1 but in sampling.</param>
/// <param name="MetalFactor">Strength of closures over its mean [-]; 1 but in sampling.</param>
internal readonly record struct EndContext(
    double Bore, double WallStiffness, double SleeveAxialStrength, double SleeveRadius, double BondFactor = 1, double MetalFactor = 1)
{
    public double BoreArea => Math.PI / 4 * Bore * Bore;
}
