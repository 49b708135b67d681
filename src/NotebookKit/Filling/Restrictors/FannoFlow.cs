using NotebookKit.Numerics;
using NotebookKit.Provenance;

namespace NotebookKit.Filling.Restrictors;

/// <summary>Adiabatic flow of an ideal gas with friction in a pipe of constant bore, as functions of the Mach number.</summary>
/// <remarks>Subsonic branch. Source: A. H. Shapiro, The Dynamics and Thermodynamics of Compressible Fluid Flow, 1953, ch. 6; NACA Report
/// 1135, 1953.</remarks>
public static class FannoFlow
{
    /// <summary>Friction length to choking, f L*/D with the Darcy friction factor [-]. Source: Shapiro 1953, equation 6.20.</summary>
    /// <param name="mach">Mach number [-]; 0.001 to 1.</param>
    /// <param name="heatCapacityRatio">Ratio of heat capacities [-]; 1.05 to 1.7.</param>
    /// <exception cref="OutOfRangeException">An input is outside its range.</exception>
    public static double FrictionLength(double mach, double heatCapacityRatio = 1.4)
    {
        Check(mach, heatCapacityRatio);
        return Length(mach, heatCapacityRatio);
    }

    /// <summary>Pressure over the pressure at choking, p/p* [-]. Source: Shapiro 1953, equation 6.21.</summary>
    /// <param name="mach">Mach number [-]; 0.001 to 1.</param>
    /// <param name="heatCapacityRatio">Ratio of heat capacities [-]; 1.05 to 1.7.</param>
    /// <exception cref="OutOfRangeException">An input is outside its range.</exception>
    public static double PressureRatio(double mach, double heatCapacityRatio = 1.4)
    {
        Check(mach, heatCapacityRatio);
        return Pressure(mach, heatCapacityRatio);
    }

    /// <summary>Mach number at the start of a pipe that just chokes at its end [-]. Source: Shapiro 1953, equation 6.20 solved.</summary>
    /// <param name="frictionLength">Friction length f L/D with the Darcy friction factor [-]; 0 to 10 000.</param>
    /// <param name="heatCapacityRatio">Ratio of heat capacities [-]; 1.05 to 1.7.</param>
    /// <exception cref="OutOfRangeException">An input is outside its range.</exception>
    public static double InletMach(double frictionLength, double heatCapacityRatio = 1.4)
    {
        new ValidRange<double>(0, 10_000).Check(frictionLength, "friction length f L/D", "Longer pipes pass almost no gas.");
        Check(1, heatCapacityRatio);
        return MachAt(frictionLength, heatCapacityRatio);
    }

    internal static double Length(double m, double g)
    {
        var m2 = m * m;
        return (1 - m2) / (g * m2) + (g + 1) / (2 * g) * Math.Log((g + 1) * m2 / (2 + (g - 1) * m2));
    }

    internal static double Pressure(double m, double g) => Math.Sqrt((g + 1) / (2 + (g - 1) * m * m)) / m;

    internal static double MachAt(double length, double g)
    {
        if (length <= 0) return 1;
        var function = new Excess(length, g);
        BracketedRoot.TrySolve(ref function, 1e-3, 1, 1e-14, out var root);
        return root.Root;
    }

    private static void Check(double mach, double heatCapacityRatio)
    {
        new ValidRange<double>(1e-3, 1).Check(mach, "Mach number", "A hose flows below the speed of sound, and at it at its end.");
        new ValidRange<double>(1.05, 1.7).Check(heatCapacityRatio, "ratio of heat capacities",
            "Air and nitrogen have 1.40, hydrogen 1.41.");
    }

    private readonly struct Excess(double length, double g) : IScalarFunction
    {
        public double Value(double x) => Length(x, g) - length;
    }
}
