namespace NotebookKit.Flight.Drive;

/// <summary>Thrust [N], water and gas aboard [kg], what leaves [kg/s], and the gas inside [Pa].</summary>
internal readonly record struct DriveState(double ThrustN, double WaterKg, double GasKg, double OutKgS, double GasPa)
{
    /// <summary>Most unknowns that any drive has.</summary>
    public const int MostUnknowns = 2;

    public double ContentsKg => WaterKg + GasKg;
}
