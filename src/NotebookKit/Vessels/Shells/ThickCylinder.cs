using NotebookKit.Provenance;
using NotebookKit.Quantities;
using UnitsNet;

namespace NotebookKit.Vessels.Shells;

/// <summary>A closed cylinder of one isotropic material with a wall of any thickness, by Lamé.</summary>
/// <param name="InnerRadius">Inner radius; 1 to 10 000 mm.</param>
/// <param name="OuterRadius">Outer radius; above the inner one, up to 10 000 mm.</param>
/// <param name="Inside">Pressure inside above ambient; 0 to 2000 bar.</param>
/// <param name="Outside">Pressure outside above ambient; 0 to 2000 bar.</param>
/// <remarks>Source: Lamé's equations, Shigley, Mechanical Engineering Design, thick-walled cylinders.</remarks>
public sealed record ThickCylinder(Length InnerRadius, Length OuterRadius, GaugePressure Inside, GaugePressure Outside = default)
{
    /// <summary>Hoop stress at a radius. Source: Shigley, thick-walled cylinders.</summary>
    /// <param name="radius">Radius; from the inner to the outer one.</param>
    /// <exception cref="OutOfRangeException">An input is out of range.</exception>
    public Pressure HoopStress(Length radius)
    {
        var (mean, swing) = Constants(radius);
        return Pressure.FromPascals(mean + swing);
    }

    /// <summary>Radial stress at a radius, compression below 0. Source: Shigley, thick-walled cylinders.</summary>
    /// <param name="radius">Radius; from the inner to the outer one.</param>
    /// <exception cref="OutOfRangeException">An input is out of range.</exception>
    public Pressure RadialStress(Length radius)
    {
        var (mean, swing) = Constants(radius);
        return Pressure.FromPascals(mean - swing);
    }

    /// <summary>Axial stress of the closed cylinder, the same at every radius. Source: Shigley, thick-walled cylinders.</summary>
    /// <exception cref="OutOfRangeException">An input is out of range.</exception>
    public Pressure AxialStress() => Pressure.FromPascals(Constants(InnerRadius).Mean);

    /// <summary>Pressure at which the hoop stress at the inner wall comes to a stress, nothing outside. Source: Shigley, thick-walled
    /// cylinders.</summary>
    /// <param name="stress">Strength; 0.01 to 20 000 MPa.</param>
    /// <param name="innerRadius">Inner radius; 1 to 10 000 mm.</param>
    /// <param name="outerRadius">Outer radius; above the inner one.</param>
    /// <exception cref="OutOfRangeException">An input is out of range.</exception>
    public static GaugePressure PressureFor(Pressure stress, Length innerRadius, Length outerRadius)
    {
        var ri = ShellInput.Radius(innerRadius, "inner radius");
        var ro = Outer(innerRadius, outerRadius);
        return GaugePressure.FromPascals(ShellInput.Stress(stress) * (ro * ro - ri * ri) / (ro * ro + ri * ri));
    }

    private static double Outer(Length inner, Length outer) => outer > inner
        ? ShellInput.Radius(outer, "outer radius")
        : throw new OutOfRangeException("outer radius", outer.Show(4), $"above {inner.Show(4)}", "10 000 mm",
            "The outer radius is the inner one plus the wall.");

    private (double Mean, double Swing) Constants(Length radius)
    {
        var ri = ShellInput.Radius(InnerRadius, "inner radius");
        var ro = Outer(InnerRadius, OuterRadius);
        double pi = ShellInput.Pressure(Inside, "pressure inside"), po = ShellInput.Pressure(Outside, "pressure outside");
        var r = new ValidRange<Length>(InnerRadius, OuterRadius).Check(radius, "radius", "Ask for a radius inside the wall.").Meters;
        var d = ro * ro - ri * ri;
        return ((pi * ri * ri - po * ro * ro) / d, ri * ri * ro * ro * (pi - po) / (d * r * r));
    }
}
