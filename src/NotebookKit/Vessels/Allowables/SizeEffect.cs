using MathNet.Numerics;
using NotebookKit.Numerics;
using NotebookKit.Provenance;

namespace NotebookKit.Vessels.Allowables;

/// <summary>How strength falls with size where the worst flaw decides, and rises again where fibres share the load.</summary>
/// <remarks>
/// Source: Weibull, J. Appl. Mech. 18, 1951 (weakest link); Bader and Priest, ICCM-IV, 1982 (carbon fibres of several lengths); Daniels,
/// Proc. R. Soc. A 183, 1945, and Coleman, J. Mech. Phys. Solids 7, 1958 (bundles).
/// </remarks>
public static class SizeEffect
{
    private static readonly ValidRange<double> Moduli = new(1, 500);

    /// <summary>Strength of a size over that of another: (size ratio)^(−1/m) [-]. Source: Weibull 1951.</summary>
    /// <param name="sizeRatio">Stressed length or volume over that of the reference [-]; 1e-9 to 1e9.</param>
    /// <param name="modulus">Weibull modulus m [-]; 1 to 500.</param>
    /// <exception cref="OutOfRangeException">An input is out of range.</exception>
    public static double Factor(double sizeRatio, double modulus) =>
        Math.Pow(new ValidRange<double>(1e-9, 1e9).Check(sizeRatio, "size ratio", "It is the larger stressed volume over the smaller."),
            -1 / Modulus(modulus));

    /// <summary>Coefficient of variation of a Weibull modulus [-]. Source: first two moments, Weibull 1951.</summary>
    /// <param name="modulus">Weibull modulus m [-]; 1 to 500.</param>
    /// <exception cref="OutOfRangeException">The modulus is out of range.</exception>
    public static double Spread(double modulus) => new WeibullFit(1, Modulus(modulus)).Spread;

    /// <summary>Weibull modulus of a coefficient of variation [-]. Source: root of the first two moments, Weibull 1951.</summary>
    /// <param name="spread">Coefficient of variation [-]; 0.003 to 0.9.</param>
    /// <exception cref="OutOfRangeException">The spread is out of range.</exception>
    public static double ModulusOf(double spread)
    {
        new ValidRange<double>(0.003, 0.9).Check(spread, "coefficient of variation", "0.10 is 10 %.");
        return BracketedRoot.Solve(m => new WeibullFit(1, m).Spread - spread, 1, 500, 1e-9);
    }

    /// <summary>Strength of a large bundle over the scale of its fibres: (m·e)^(−1/m) [-]. Source: Daniels 1945.</summary>
    /// <param name="modulus">Weibull modulus m of the fibres [-]; 1 to 500.</param>
    /// <exception cref="OutOfRangeException">The modulus is out of range.</exception>
    public static double Bundle(double modulus) => Math.Pow(Modulus(modulus) * Math.E, -1 / modulus);

    /// <summary>Strength of a large bundle over the mean strength of its fibres [-]. Source: Coleman 1958.</summary>
    /// <param name="modulus">Weibull modulus m of the fibres [-]; 1 to 500.</param>
    /// <exception cref="OutOfRangeException">The modulus is out of range.</exception>
    public static double BundleOverMean(double modulus) => Bundle(modulus) / SpecialFunctions.Gamma(1 + 1 / modulus);

    private static double Modulus(double modulus) => Moduli.Check(modulus, "Weibull modulus", "5 is a single fibre, 10 to 40 a laminate.");
}
