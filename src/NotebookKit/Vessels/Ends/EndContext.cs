namespace NotebookKit.Vessels.Ends;

/// <summary>What an end needs to know of the vessel it sits in, SI.</summary>
/// <param name="Bore">Inner diameter [m].</param>
/// <param name="WallStiffness">Axial stiffness of the wall a width, E·t [N/m].</param>
/// <param name="SleevePascals">Pressure at which the sleeves' fibres break along the axis, by netting [Pa].</param>
/// <param name="SleeveStiffness">Axial stiffness of the sleeves a width [N/m].</param>
/// <param name="GrowthPerPascal">How far the free wall's radius grows a pressure [m/Pa].</param>
/// <param name="ResinShear">Shear strength of the resin [Pa].</param>
/// <param name="Efficiency">Share of the fibre's strength that the making delivers [-].</param>
internal readonly record struct EndContext(double Bore, double WallStiffness, double SleevePascals, double SleeveStiffness,
    double GrowthPerPascal, double ResinShear, double Efficiency)
{
    /// <summary>How far a liner between bond and plies gives through its wall, held all around [m/Pa].</summary>
    public double LinerGive { get; init; }

    /// <summary>Least neck on which the yarns of every sleeve have room; 0 where none is known [m].</summary>
    public double LeastNeck { get; init; }
}
