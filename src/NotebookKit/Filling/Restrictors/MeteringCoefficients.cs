using NotebookKit.Provenance;

namespace NotebookKit.Filling.Restrictors;

/// <summary>Discharge coefficients of flow meters as the standards give them: what a carefully made nozzle or orifice passes of the ideal
/// flow.</summary>
/// <remarks>Source: ISO 9300:2005 (critical nozzles), ISO 5167-2 and -3:2003 (orifice plates and nozzles); all unverified: confirm before
/// relying on them.</remarks>
public static class MeteringCoefficients
{
    /// <summary>Toroidal-throat critical nozzle, normally machined: 0.9959 − 2.720 Re^−½ [-]. Source: ISO 9300:2005, unverified.</summary>
    /// <param name="reynolds">Throat Reynolds number [-]; 21 000 to 3.2e7.</param>
    /// <exception cref="OutOfRangeException">The Reynolds number is outside its range.</exception>
    public static double ToroidalNozzle(double reynolds) => 0.9959 - 2.720 / Math.Sqrt(CheckCritical(reynolds));

    /// <summary>Toroidal-throat critical nozzle, precisely machined: 0.9985 − 3.412 Re^−½ [-]. Source: ISO 9300:2005, unverified.</summary>
    /// <param name="reynolds">Throat Reynolds number [-]; 21 000 to 3.2e7.</param>
    /// <exception cref="OutOfRangeException">The Reynolds number is outside its range.</exception>
    public static double PreciseToroidalNozzle(double reynolds) => 0.9985 - 3.412 / Math.Sqrt(CheckCritical(reynolds));

    /// <summary>Cylindrical-throat critical nozzle: 0.9976 − 0.1388 Re^−0.2 [-]. Source: ISO 9300:2005, unverified.</summary>
    /// <param name="reynolds">Throat Reynolds number [-]; 21 000 to 3.2e7.</param>
    /// <exception cref="OutOfRangeException">The Reynolds number is outside its range.</exception>
    public static double CylindricalNozzle(double reynolds) => 0.9976 - 0.1388 * Math.Pow(CheckCritical(reynolds), -0.2);

    /// <summary>Sharp-edged orifice plate with corner taps in a pipe of 71 mm and more [-]. Source: ISO 5167-2:2003,
    /// Reader-Harris/Gallagher, unverified.</summary>
    /// <param name="diameterRatio">Orifice over pipe diameter [-]; 0.1 to 0.75.</param>
    /// <param name="reynolds">Pipe Reynolds number [-]; 5000 to 1e8.</param>
    /// <exception cref="OutOfRangeException">An input is outside its range.</exception>
    public static double OrificePlate(double diameterRatio, double reynolds)
    {
        var b = new ValidRange<double>(0.1, 0.75).Check(diameterRatio, "diameter ratio", "The standard covers 0.1 to 0.75.");
        new ValidRange<double>(5000, 1e8).Check(reynolds, "Reynolds number", "The standard starts at 5000.");
        var a = Math.Pow(19_000 * b / reynolds, 0.8);
        return 0.5961 + 0.0261 * b * b - 0.216 * Math.Pow(b, 8) + 0.000521 * Math.Pow(1e6 * b / reynolds, 0.7)
            + (0.0188 + 0.0063 * a) * Math.Pow(b, 3.5) * Math.Pow(1e6 / reynolds, 0.3)
            + (0.043 + 0.080 - 0.123) * (1 - 0.11 * a) * Math.Pow(b, 4) / (1 - Math.Pow(b, 4));
    }

    /// <summary>ISA 1932 nozzle [-]. Source: ISO 5167-3:2003, unverified.</summary>
    /// <param name="diameterRatio">Throat over pipe diameter [-]; 0.3 to 0.8.</param>
    /// <param name="reynolds">Pipe Reynolds number [-]; 20 000 to 1e7.</param>
    /// <exception cref="OutOfRangeException">An input is outside its range.</exception>
    public static double IsaNozzle(double diameterRatio, double reynolds)
    {
        var b = new ValidRange<double>(0.3, 0.8).Check(diameterRatio, "diameter ratio", "The standard covers 0.3 to 0.8.");
        new ValidRange<double>(20_000, 1e7).Check(reynolds, "Reynolds number", "The standard covers 20 000 to 10 000 000.");
        return 0.9900 - 0.2262 * Math.Pow(b, 4.1) - (0.00175 * b * b - 0.0033 * Math.Pow(b, 4.15)) * Math.Pow(1e6 / reynolds, 1.15);
    }

    /// <summary>Long-radius nozzle [-]. Source: ISO 5167-3:2003, unverified.</summary>
    /// <param name="diameterRatio">Throat over pipe diameter [-]; 0.2 to 0.8.</param>
    /// <param name="reynolds">Pipe Reynolds number [-]; 10 000 to 1e7.</param>
    /// <exception cref="OutOfRangeException">An input is outside its range.</exception>
    public static double LongRadiusNozzle(double diameterRatio, double reynolds)
    {
        var b = new ValidRange<double>(0.2, 0.8).Check(diameterRatio, "diameter ratio", "The standard covers 0.2 to 0.8.");
        new ValidRange<double>(10_000, 1e7).Check(reynolds, "Reynolds number", "The standard covers 10 000 to 10 000 000.");
        return 0.9965 - 0.00653 * Math.Sqrt(1e6 * b / reynolds);
    }

    private static double CheckCritical(double reynolds) =>
        new ValidRange<double>(21_000, 3.2e7).Check(reynolds, "throat Reynolds number", "The standard covers 21 000 to 32 000 000.");
}
