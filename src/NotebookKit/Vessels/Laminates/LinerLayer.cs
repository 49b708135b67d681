namespace NotebookKit.Vessels.Laminates;

/// <summary>A liner bonded inside the wall, elastic then perfectly plastic, SI; thickness 0 where there is none or it isn't counted
/// on.</summary>
/// <param name="Modulus">Young's modulus [Pa].</param>
/// <param name="PoissonRatio">Poisson's ratio [-].</param>
/// <param name="YieldStrength">Yield strength [Pa].</param>
/// <param name="UsableStrain">Largest engineering strain before it tears [-].</param>
/// <param name="Thickness">Wall [m].</param>
internal readonly record struct LinerLayer(double Modulus, double PoissonRatio, double YieldStrength, double UsableStrain,
    double Thickness);
