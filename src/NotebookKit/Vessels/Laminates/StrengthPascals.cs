namespace NotebookKit.Vessels.Laminates;

/// <summary>Strengths of a ply as plain numbers [Pa], for the inner loop.</summary>
internal readonly record struct StrengthPascals(double Xt, double Xc, double Yt, double Yc, double S)
{
    public static StrengthPascals Of(PlyStrength strength) => new(
        strength.LongitudinalTension.Pascals, strength.LongitudinalCompression.Pascals, strength.TransverseTension.Pascals,
            strength.TransverseCompression.Pascals, strength.Shear.Pascals);
}
