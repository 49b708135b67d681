using NotebookKit.Provenance;

namespace NotebookKit.Aerodynamics.NormalForces;

/// <summary>
/// Drag of a body of finite length across the flow. Source: H. J. Allen and E. W. Perkins, NACA TR 1048, 1951; the finite-length factor is
/// the measured drag of short cylinders over that of a long one, F. M. White, Fluid Mechanics (both unverified).
/// </summary>
public static class Crossflow
{
    /// <summary>Drag coefficient of a long cylinder across the flow, below the drag crisis and below Mach 0.4 across [-].</summary>
    public const double LongCylinder = 1.2;

    private static readonly double[] Fineness = [1, 2, 3, 5, 10, 20, 40];
    private static readonly double[] Measured = [0.64, 0.68, 0.72, 0.74, 0.82, 0.91, 0.98];

    /// <summary>Share of the long cylinder's drag that a body of a given fineness has [-].</summary>
    /// <param name="fineness">Length over diameter [-]; 1 to 60.</param>
    /// <exception cref="OutOfRangeException">The fineness is outside 1 to 60.</exception>
    public static double FiniteLengthFactor(double fineness)
    {
        new ValidRange<double>(1, 60).Check(fineness, "body fineness (length over diameter)",
            "The measured cylinders span 1 to 40; state the factor yourself beyond.");
        if (fineness >= Fineness[^1]) return Measured[^1] / LongCylinder;
        var i = 0;
        while (fineness > Fineness[i + 1]) i++;
        var along = Math.Log(fineness / Fineness[i]) / Math.Log(Fineness[i + 1] / Fineness[i]);
        return (Measured[i] + (along * (Measured[i + 1] - Measured[i]))) / LongCylinder;
    }
}
