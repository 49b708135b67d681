using NotebookKit.Provenance;
using NotebookKit.Quantities;
using UnitsNet;

namespace NotebookKit.Vessels.Shells;

/// <summary>Netting analysis of a closed cylinder: fibres carry everything, resin nothing. A cross-check, and what a vessel comes to when
/// its resin has cracked.</summary>
/// <remarks>
/// Source: Evans and Gibson, Composite angle ply laminates and netting analysis, Proc. R. Soc. A 458, 2002; Peters, Humphrey and Foral,
/// Filament Winding: Composite Structure Fabrication, SAMPE.
/// </remarks>
public static class Netting
{
    /// <summary>Angle at which one family of fibres balances a closed cylinder: tan²α = 2, 54.7356°. Source: Evans and Gibson
    /// 2002.</summary>
    public static Angle BalanceAngle { get; } = Angle.FromDegrees(Math.Atan(Math.Sqrt(2)) * 180 / Math.PI);

    /// <summary>Solid fibre thickness that one family at the balance angle needs, 3pR/(2σ). Source: Peters, Humphrey and Foral.</summary>
    /// <param name="pressure">Pressure inside; 0 to 2000 bar.</param>
    /// <param name="radius">Radius; 1 to 10 000 mm.</param>
    /// <param name="fibreStress">Stress in the fibres; 0.01 to 20 000 MPa.</param>
    /// <exception cref="OutOfRangeException">An input is out of range.</exception>
    public static Length FibreThickness(GaugePressure pressure, Length radius, Pressure fibreStress) => Length.FromMeters(
        1.5 * ShellInput.Pressure(pressure) * ShellInput.Radius(radius) / ShellInput.Stress(fibreStress, "fibre stress"));

    /// <summary>Solid fibre thickness of a helical layer that carries the whole axial load, pR/(2σcos²α). Source: Peters, Humphrey and
    /// Foral.</summary>
    /// <param name="pressure">Pressure inside; 0 to 2000 bar.</param>
    /// <param name="radius">Radius; 1 to 10 000 mm.</param>
    /// <param name="fibreStress">Stress in the fibres; 0.01 to 20 000 MPa.</param>
    /// <param name="angle">Angle of the helical layer; 0 to the balance angle.</param>
    /// <exception cref="OutOfRangeException">An input is out of range.</exception>
    public static Length HelicalThickness(GaugePressure pressure, Length radius, Pressure fibreStress, Angle angle)
    {
        var c = Math.Cos(Helical(angle));
        return Length.FromMeters(ShellInput.Pressure(pressure) * ShellInput.Radius(radius) / (2 * ShellInput.Stress(fibreStress,
            "fibre stress") * c * c));
    }

    /// <summary>Solid fibre thickness of the hoop layer that goes with it, pR(2 − tan²α)/(2σ). Source: Peters, Humphrey and
    /// Foral.</summary>
    /// <param name="pressure">Pressure inside; 0 to 2000 bar.</param>
    /// <param name="radius">Radius; 1 to 10 000 mm.</param>
    /// <param name="fibreStress">Stress in the fibres; 0.01 to 20 000 MPa.</param>
    /// <param name="angle">Angle of the helical layer; 0 to the balance angle, above which no hoop layer can balance it.</param>
    /// <exception cref="OutOfRangeException">An input is out of range.</exception>
    public static Length HoopThickness(GaugePressure pressure, Length radius, Pressure fibreStress, Angle angle)
    {
        var t = Math.Tan(Helical(angle));
        return Length.FromMeters(ShellInput.Pressure(pressure) * ShellInput.Radius(radius) * Math.Max(2 - t * t,
            0) / (2 * ShellInput.Stress(fibreStress, "fibre stress")));
    }

    /// <summary>Burst of one family at any angle that doesn't turn: σ·t/R times the smaller of sin²θ and 2cos²θ. Source: Evans and Gibson
    /// 2002.</summary>
    /// <param name="fibreThickness">Solid fibre thickness, both directions together; above 0.</param>
    /// <param name="radius">Radius; 1 to 10 000 mm.</param>
    /// <param name="fibreStrength">Strength of the fibres; 0.01 to 20 000 MPa.</param>
    /// <param name="angle">Angle from the axis; 0° to 90°.</param>
    /// <exception cref="OutOfRangeException">An input is out of range.</exception>
    public static GaugePressure Burst(Length fibreThickness, Length radius, Pressure fibreStrength, Angle angle)
        => GaugePressure.FromPascals(
        ShellInput.Stress(fibreStrength, "fibre strength") * ShellInput.Wall(fibreThickness,
            "fibre thickness") / ShellInput.Radius(radius) * Factor(angle));

    /// <summary>The smaller of sin²θ (around) and 2cos²θ (along) [-]; at best 2/3, at the balance angle. Source: Evans and Gibson
    /// 2002.</summary>
    /// <param name="angle">Angle from the axis; 0° to 90°.</param>
    /// <exception cref="OutOfRangeException">The angle is out of range.</exception>
    public static double Factor(Angle angle)
    {
        var (s, c) = Math.SinCos(new ValidRange<Angle>(0.Degrees(), 90.Degrees()).Check(angle, "angle",
            "Measure it from the axis.").Radians);
        return Math.Min(s * s, 2 * c * c);
    }

    private static double Helical(Angle angle) => new ValidRange<Angle>(0.Degrees(), BalanceAngle)
        .Check(angle, "helical angle", "Above the balance angle the helical layer alone gives more around than along, and the hoop layer "
            + "would have to push.").Radians;
}
