namespace NotebookKit.Vessels.Laminates;

/// <summary>From fibre and resin to ply, on plain SI numbers. Callers check ranges.</summary>
internal static class MicromechanicsFormulas
{
    /// <summary>Square packing leaves no more room for fibre: π/4.</summary>
    public const double MaximumFibreFraction = Math.PI / 4;

    public static double Mixtures(double fibre, double matrix, double fibreFraction) =>
        fibre * fibreFraction + matrix * (1 - fibreFraction);

    public static double InverseMixtures(double fibre, double matrix, double fibreFraction) =>
        1 / (fibreFraction / fibre + (1 - fibreFraction) / matrix);

    public static double HalpinTsai(double fibre, double matrix, double fibreFraction, double xi)
    {
        var eta = (fibre / matrix - 1) / (fibre / matrix + xi);
        return matrix * (1 + xi * eta * fibreFraction) / (1 - eta * fibreFraction);
    }

    public static double Chamis(double fibre, double matrix, double fibreFraction) =>
        matrix / (1 - Math.Sqrt(fibreFraction) * (1 - matrix / fibre));

    /// <summary>Shear exponent of Hewitt and de Malherbe, for the Halpin-Tsai shear rule at high fibre fractions.</summary>
    public static double HewittDeMalherbe(double fibreFraction) => 1 + 40 * Math.Pow(fibreFraction, 10);

    public static double Transverse(MatrixRule rule, double fibre, double matrix, double fibreFraction, double xi) => rule switch
    {
        MatrixRule.InverseMixtures => InverseMixtures(fibre, matrix, fibreFraction),
        MatrixRule.HalpinTsai => HalpinTsai(fibre, matrix, fibreFraction, xi),
        _ => Chamis(fibre, matrix, fibreFraction),
    };

    /// <summary>Tension along the fibres: the fibres break first and the resin carries its share at their breaking strain.</summary>
    public static double LongitudinalStrength(double fibreStrength, double fibreModulus, double matrixModulus, double fibreFraction) =>
        fibreStrength * (fibreFraction + matrixModulus / fibreModulus * (1 - fibreFraction));

    /// <summary>Resin-dominated strength, cut by the strain concentration between fibres (Chamis).</summary>
    public static double MatrixStrength(double matrixStrength, double fibreModulus, double matrixModulus, double fibreFraction) =>
        matrixStrength * (1 - (Math.Sqrt(fibreFraction) - fibreFraction) * (1 - matrixModulus / fibreModulus));

    /// <summary>Cured thickness of dry fibre of an areal weight [m].</summary>
    public static double Thickness(double arealWeight, double fibreDensity, double fibreFraction) =>
        arealWeight / (fibreDensity * fibreFraction);
}
