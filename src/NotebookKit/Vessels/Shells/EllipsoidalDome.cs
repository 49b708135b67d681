using NotebookKit.Provenance;
using NotebookKit.Quantities;
using UnitsNet;

namespace NotebookKit.Vessels.Shells;

/// <summary>Membrane stress in an ellipsoidal dome of isotropic wall, a hemisphere included.</summary>
/// <param name="Radius">Radius of the cylinder it closes, a; 1 to 10 000 mm.</param>
/// <param name="Depth">Depth, b; 1 to 10 000 mm, a itself for a hemisphere.</param>
/// <param name="Wall">Wall; above 0.</param>
/// <remarks>Source: Timoshenko and Woinowsky-Krieger, Theory of Plates and Shells; Roark, Formulas for Stress and Strain.</remarks>
public sealed record EllipsoidalDome(Length Radius, Length Depth, Length Wall)
{
    /// <summary>Stress at the crown, all directions alike: pa²/(2bt). Source: Roark.</summary>
    /// <param name="pressure">Pressure inside; 0 to 2000 bar.</param>
    /// <exception cref="OutOfRangeException">An input is out of range.</exception>
    public Pressure Crown(GaugePressure pressure)
    {
        var (p, a, b, t) = Numbers(pressure);
        return Pressure.FromPascals(p * a * a / (2 * b * t));
    }

    /// <summary>Stress along the meridian at the equator: pa/(2t). Source: Roark.</summary>
    /// <param name="pressure">Pressure inside; 0 to 2000 bar.</param>
    /// <exception cref="OutOfRangeException">An input is out of range.</exception>
    public Pressure EquatorAlong(GaugePressure pressure)
    {
        var (p, a, _, t) = Numbers(pressure);
        return Pressure.FromPascals(p * a / (2 * t));
    }

    /// <summary>Hoop stress at the equator: (pa/t)(1 − a²/(2b²)); below 0 for a dome flatter than a/b = √2, which can then buckle. Source:
    /// Roark.</summary>
    /// <param name="pressure">Pressure inside; 0 to 2000 bar.</param>
    /// <exception cref="OutOfRangeException">An input is out of range.</exception>
    public Pressure EquatorHoop(GaugePressure pressure)
    {
        var (p, a, b, t) = Numbers(pressure);
        return Pressure.FromPascals(p * a / t * (1 - a * a / (2 * b * b)));
    }

    /// <summary>
    /// Pressure at which the equivalent stress (von Mises) at crown or equator comes to a strength. At the rim of a flat dome the hoop
    /// stress pushes while the meridian pulls, which yields sooner than either would alone. Source: Roark; von Mises, as in Shigley.
    /// </summary>
    /// <param name="strength">Strength; 0.01 to 20 000 MPa.</param>
    /// <exception cref="OutOfRangeException">An input is out of range.</exception>
    public GaugePressure PressureFor(Pressure strength)
    {
        var unit = 1.BarGauge();
        double along = EquatorAlong(unit).Pascals, hoop = EquatorHoop(unit).Pascals;
        var largest = Math.Max(Crown(unit).Pascals, Math.Sqrt(along * along - along * hoop + hoop * hoop));
        return unit * (ShellInput.Stress(strength, "strength") / largest);
    }

    private (double P, double A, double B, double T) Numbers(GaugePressure pressure) =>
        (ShellInput.Pressure(pressure), ShellInput.Radius(Radius), ShellInput.Radius(Depth, "depth"), ShellInput.Wall(Wall));
}
