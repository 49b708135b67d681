namespace NotebookKit.Vessels.Bursting;

/// <summary>What one sample, or the mean, puts on the wall.</summary>
/// <param name="Efficiency">Share of the fibre's strength delivered [-].</param>
/// <param name="FibreStrength">Fibre strength over its mean [-].</param>
/// <param name="FibreModulus">Fibre modulus over its mean [-].</param>
/// <param name="ResinStrength">Resin strength over its mean [-].</param>
/// <param name="FractionShift">Fibre volume fraction less its mean [-].</param>
/// <param name="AngleShift">Angle of sleeves less its mean [rad].</param>
/// <param name="FibreThickness">Fibre laid over its mean [-].</param>
internal readonly record struct LayerFactors(
    double Efficiency, double FibreStrength = 1, double FibreModulus = 1, double ResinStrength = 1, double FractionShift = 0,
        double AngleShift = 0, double FibreThickness = 1);
