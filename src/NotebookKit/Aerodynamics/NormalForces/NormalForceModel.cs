using NotebookKit.Aerodynamics.Bodies;
using NotebookKit.Aerodynamics.Fins;

namespace NotebookKit.Aerodynamics.NormalForces;

/// <summary>The component method's formulas in SI numbers.</summary>
internal static class NormalForceModel
{
    /// <summary>Slope of one fin panel on the reference area, after Diederich with the Prandtl-Glauert factor [1/rad].</summary>
    public static double PanelSlope(in FinIntegrals fin, double referenceM2, double mach)
    {
        var beta = Math.Sqrt(1 - (mach * mach));
        var stretch = beta * fin.AspectRatio / fin.CosMidSweep;
        return 2 * Math.PI * fin.AspectRatio * (fin.AreaM2 / referenceM2) / (2 + Math.Sqrt(4 + (stretch * stretch)));
    }

    /// <summary>
    /// Interference of the body on its fins [-]. The 1966 report halves the carry-over for six fins; five fins, which it leaves out, take
    /// the same lower value, so that the margin errs low.
    /// </summary>
    public static double Interference(int count, double bodyRadiusM, double spanM)
    {
        var carryOver = bodyRadiusM / (spanM + bodyRadiusM);
        return 1 + (count <= 4 ? carryOver : carryOver / 2);
    }

    /// <summary>Slope of a whole set [1/rad].</summary>
    public static double SetSlope(int count, in FinIntegrals fin, double bodyRadiusM, double referenceM2, double mach) =>
        count / 2.0 * PanelSlope(fin, referenceM2, mach) * Interference(count, bodyRadiusM, fin.SpanM);

    /// <summary>Slope and centre of a body part between two cross sections (Munk): 2 ΔA / A, and the part's length less its volume over
    /// ΔA.</summary>
    public static (double Slope, double FromForeM) Body(BodyPart part, double referenceM2)
    {
        var rise = part.AftAreaM2 - part.ForeAreaM2;
        return (2 * rise / referenceM2, ((part.AftAreaM2 * part.LengthM) - part.VolumeM3) / rise);
    }
}
