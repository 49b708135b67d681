using NotebookKit.Aerodynamics.Airflow;
using NotebookKit.Aerodynamics.Fins;
using NotebookKit.Provenance;

namespace NotebookKit.Aerodynamics.Drag;

/// <summary>
/// Base, edge and compressibility terms of subsonic drag.
/// Source: S. F. Hoerner, Fluid-Dynamic Drag, 1965, ch. III; E. Fleeman, Tactical Missile Design, 2001; J. S. Barrowman, 1967, ch. 4
/// (unverified).
/// </summary>
public static class PressureDrag
{
    private static readonly ValidRange<double> Mach = new(0, Ranges.MaximumMach);

    /// <summary>Base drag on base area by the fore-body's friction, 0.029 / √CDf [-]. Source: Hoerner, ch. III.</summary>
    /// <param name="forebodyFriction">Friction drag of the body ahead of the base, on base area [-]; 0.01 to 10.</param>
    /// <exception cref="OutOfRangeException">The friction is outside.</exception>
    public static double BaseByFriction(double forebodyFriction) =>
        0.029 / Math.Sqrt(new ValidRange<double>(0.01, 10).Check(forebodyFriction, "fore-body friction drag",
            "The correlation was drawn from slender bodies."));

    /// <summary>Base drag on base area by Mach number, 0.12 + 0.13 M² [-]. Source: Fleeman.</summary>
    /// <param name="mach">Mach number [-]; 0 to 0.9.</param>
    /// <exception cref="OutOfRangeException">The Mach number is outside.</exception>
    public static double BaseByMach(double mach) => BaseByMachCore(Check(mach));

    /// <summary>Pressure coefficient at a stagnation point, [(1 + 0.2 M²)^3.5 − 1] / (0.7 M²) [-]. Source: isentropic flow.</summary>
    /// <param name="mach">Mach number [-]; 0 to 0.9.</param>
    /// <exception cref="OutOfRangeException">The Mach number is outside.</exception>
    public static double Stagnation(double mach) => StagnationCore(Check(mach));

    /// <summary>Prandtl-Glauert factor 1 / √(1 − M²) [-].</summary>
    /// <param name="mach">Mach number [-]; 0 to 0.9; grows too fast above some 0.8.</param>
    /// <exception cref="OutOfRangeException">The Mach number is outside.</exception>
    public static double PrandtlGlauert(double mach) => 1 / Math.Sqrt(1 - (Check(mach) * mach));

    /// <summary>Drag of an unswept leading edge, on its frontal area [-]; multiply by cos² of the sweep. Source: Barrowman, ch.
    /// 4.</summary>
    /// <param name="edge">Finish of the edge; a sharp one takes the rounded value, which is its high end: no value of its own is
    /// published, so a build-up counts nothing to that much.</param>
    /// <param name="mach">Mach number [-]; 0 to 0.9.</param>
    /// <exception cref="OutOfRangeException">The Mach number is outside.</exception>
    public static double LeadingEdge(FinEdge edge, double mach) => LeadingEdgeCore(edge, Check(mach));

    /// <summary>Drag of a trailing edge, on its frontal area: the base value where square, half of it where rounded, none where sharp
    /// [-].</summary>
    /// <param name="edge">Finish of the edge.</param>
    /// <param name="mach">Mach number [-]; 0 to 0.9.</param>
    /// <exception cref="OutOfRangeException">The Mach number is outside.</exception>
    public static double TrailingEdge(FinEdge edge, double mach) => TrailingEdgeCore(edge, Check(mach));

    internal static double BaseByMachCore(double mach) => 0.12 + (0.13 * mach * mach);

    internal static double StagnationCore(double mach)
    {
        var square = mach * mach;
        return mach < 0.01 ? 1 + (square / 4) : (Math.Pow(1 + (0.2 * square), 3.5) - 1) / (0.7 * square);
    }

    internal static double LeadingEdgeCore(FinEdge edge, double mach) => edge == FinEdge.Square
        ? 0.85 * StagnationCore(mach)
        : Math.Pow(1 - (mach * mach), -0.417) - 1;

    internal static double TrailingEdgeCore(FinEdge edge, double mach) => edge switch
    {
        FinEdge.Square => BaseByMachCore(mach),
        FinEdge.Rounded => BaseByMachCore(mach) / 2,
        _ => 0,
    };

    private static double Check(double mach) =>
        Mach.Check(mach, "Mach number", "The subsonic drag terms break down as shocks form; above Mach 0.9 measured data is needed.");
}
