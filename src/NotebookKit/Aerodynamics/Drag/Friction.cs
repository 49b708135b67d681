using NotebookKit.Provenance;
using UnitsNet;

namespace NotebookKit.Aerodynamics.Drag;

/// <summary>
/// Mean skin-friction coefficients of a flat plate, on wetted area.
/// Source: H. Schlichting, Boundary-Layer Theory, ch. XXI; S. F. Hoerner, Fluid-Dynamic Drag, 1965, ch. II (unverified).
/// </summary>
public static class Friction
{
    private static readonly ValidRange<double> Reynolds = new(1e3, 1e10);

    /// <summary>Laminar plate, 1.328 / √Re [-]. Source: Blasius, as in Schlichting.</summary>
    /// <param name="reynolds">Reynolds number on the length [-]; 1e3 to 1e10.</param>
    /// <exception cref="OutOfRangeException">The Reynolds number is outside.</exception>
    public static double Laminar(double reynolds) => LaminarCore(Check(reynolds));

    /// <summary>Smooth plate, turbulent from the leading edge, 0.455 / (log₁₀ Re)^2.58 [-]. Source: Prandtl and Schlichting.</summary>
    /// <param name="reynolds">Reynolds number on the length [-]; 1e3 to 1e10.</param>
    /// <exception cref="OutOfRangeException">The Reynolds number is outside.</exception>
    public static double Turbulent(double reynolds) => TurbulentCore(Check(reynolds));

    /// <summary>Smooth turbulent plate by Schoenherr's line, 0.242 / √C = log₁₀(Re C), as a cross-check [-].</summary>
    /// <param name="reynolds">Reynolds number on the length [-]; 1e3 to 1e10.</param>
    /// <exception cref="OutOfRangeException">The Reynolds number is outside.</exception>
    public static double TurbulentSchoenherr(double reynolds)
    {
        Check(reynolds);
        // Newton in u = √C on f = 0.242/u - log10(Re u²): f falls monotonically, and the start lies left of the root.
        var u = Math.Sqrt(TurbulentCore(reynolds)) / 2;
        for (var i = 0; i < 50; i++)
        {
            var f = (0.242 / u) - Math.Log10(reynolds * u * u);
            var step = f / ((-0.242 / (u * u)) - (2 / (u * Math.Log(10))));
            u -= step;
            if (Math.Abs(step) < 1e-15) break;
        }

        return u * u;
    }

    /// <summary>
    /// Plate that is laminar up to a transition Reynolds number and turbulent beyond, Prandtl's 0.455 / (log₁₀ Re)^2.58 − A / Re, never
    /// below laminar [-]. A is 1050, 1700, 3300, 8700 at a transition of 3e5, 5e5, 1e6, 3e6 (Schlichting), between them by power law.
    /// </summary>
    /// <param name="reynolds">Reynolds number on the length [-]; 1e3 to 1e10.</param>
    /// <param name="transition">Reynolds number at which the layer turns turbulent [-]; 0 (turbulent from the start) to 1e7.</param>
    /// <exception cref="OutOfRangeException">A Reynolds number is outside.</exception>
    public static double Mixed(double reynolds, double transition) =>
        MixedCore(Check(reynolds), CheckTransition(transition), 0);

    /// <summary>Fully rough turbulent plate, (1.89 + 1.62 log₁₀(L / k))^−2.5 [-]. Source: Schlichting.</summary>
    /// <param name="length">Length of the surface; above 0.</param>
    /// <param name="roughness">Sand-grain roughness height; above 0, below a hundredth of the length.</param>
    /// <exception cref="OutOfRangeException">The roughness is outside.</exception>
    public static double Rough(Length length, Length roughness)
    {
        new ValidRange<double>(100, 1e8).Check(length / roughness, "length over roughness",
            "The rough-plate law is for roughness well inside the boundary layer.");
        return RoughCore(length / roughness);
    }

    /// <summary>Fully rough plate by the power law 0.032 (k / L)^0.2, as a cross-check [-]. Source: Hoerner, ch. II.</summary>
    /// <param name="length">Length of the surface; above 0.</param>
    /// <param name="roughness">Sand-grain roughness height; above 0, below a hundredth of the length.</param>
    /// <exception cref="OutOfRangeException">The roughness is outside.</exception>
    public static double RoughPowerLaw(Length length, Length roughness)
    {
        new ValidRange<double>(100, 1e8).Check(length / roughness, "length over roughness",
            "The rough-plate law is for roughness well inside the boundary layer.");
        return 0.032 * Math.Pow(roughness / length, 0.2);
    }

    /// <summary>Reynolds number above which roughness sets the friction, 51 (L / k)^1.039 [-].</summary>
    /// <param name="length">Length of the surface; above 0.</param>
    /// <param name="roughness">Sand-grain roughness height; above 0, below a hundredth of the length.</param>
    /// <exception cref="OutOfRangeException">The roughness is outside.</exception>
    public static double CriticalReynolds(Length length, Length roughness)
    {
        new ValidRange<double>(100, 1e8).Check(length / roughness, "length over roughness",
            "The rough-plate law is for roughness well inside the boundary layer.");
        return 51 * Math.Pow(length / roughness, 1.039);
    }

    internal static double CheckTransition(double transition)
        => new ValidRange<double>(0, 1e7).Check(transition, "transition Reynolds number",
        "Zero means turbulent from the start; natural transition in flight lies between 3e5 and 3e6.");

    internal static double LaminarCore(double reynolds) => 1.328 / Math.Sqrt(reynolds);

    internal static double TurbulentCore(double reynolds) => 0.455 / Math.Pow(Math.Log10(reynolds), 2.58);

    internal static double RoughCore(double lengthOverRoughness) => Math.Pow(1.89 + (1.62 * Math.Log10(lengthOverRoughness)), -2.5);

    /// <summary>Mixed layer with the turbulent part at least at the rough value; rough 0 for a smooth surface.</summary>
    internal static double MixedCore(double reynolds, double transition, double rough)
    {
        var turbulent = Math.Max(TurbulentCore(reynolds), rough);
        if (transition <= 0) return turbulent;
        var laminar = LaminarCore(reynolds);
        return reynolds <= transition ? laminar : Math.Max(laminar, turbulent - (LaminarRelief(transition) / reynolds));
    }

    /// <summary>Schlichting's A against transition Reynolds number, straight in logarithms.</summary>
    private static double LaminarRelief(double transition)
    {
        var (t0, a0, t1, a1) = transition switch
        {
            < 5e5 => (3e5, 1050.0, 5e5, 1700.0),
            < 1e6 => (5e5, 1700.0, 1e6, 3300.0),
            _ => (1e6, 3300.0, 3e6, 8700.0),
        };
        return a0 * Math.Pow(transition / t0, Math.Log(a1 / a0) / Math.Log(t1 / t0));
    }

    private static double Check(double reynolds) => Reynolds.Check(reynolds, "Reynolds number",
        "The plate laws are for boundary layers, not for creeping flow.");
}
