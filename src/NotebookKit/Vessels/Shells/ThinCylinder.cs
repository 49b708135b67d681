using NotebookKit.Quantities;
using UnitsNet;

namespace NotebookKit.Vessels.Shells;

/// <summary>A closed cylinder of one isotropic material with a thin wall.</summary>
/// <remarks>Source: Timoshenko, Strength of Materials; Shigley, Mechanical Engineering Design, thin-walled vessels.</remarks>
public static class ThinCylinder
{
    /// <summary>Hoop stress p·r/t. Source: Shigley, thin-walled vessels.</summary>
    /// <param name="pressure">Pressure inside; 0 to 2000 bar.</param>
    /// <param name="radius">Mean radius; 1 to 10 000 mm.</param>
    /// <param name="wall">Wall; above 0.</param>
    /// <exception cref="Provenance.OutOfRangeException">An input is out of range.</exception>
    public static Pressure HoopStress(GaugePressure pressure, Length radius, Length wall) =>
        Pressure.FromPascals(ShellInput.Pressure(pressure) * ShellInput.Radius(radius) / ShellInput.Wall(wall));

    /// <summary>Axial stress p·r/(2t). Source: Shigley, thin-walled vessels.</summary>
    /// <param name="pressure">Pressure inside; 0 to 2000 bar.</param>
    /// <param name="radius">Mean radius; 1 to 10 000 mm.</param>
    /// <param name="wall">Wall; above 0.</param>
    /// <exception cref="Provenance.OutOfRangeException">An input is out of range.</exception>
    public static Pressure AxialStress(GaugePressure pressure, Length radius, Length wall) => HoopStress(pressure, radius, wall) / 2;

    /// <summary>Pressure at which the hoop stress at the mean radius comes to a stress: 2tσ/(d + t). Source: Shigley, thin-walled
    /// vessels.</summary>
    /// <param name="stress">Allowable stress or strength; 0.01 to 20 000 MPa.</param>
    /// <param name="innerDiameter">Inner diameter; 2 to 20 000 mm.</param>
    /// <param name="wall">Wall; above 0.</param>
    /// <exception cref="Provenance.OutOfRangeException">An input is out of range.</exception>
    public static GaugePressure PressureFor(Pressure stress, Length innerDiameter, Length wall) => GaugePressure.FromPascals(
        2 * ShellInput.Wall(wall) * ShellInput.Stress(stress) / (2 * ShellInput.Radius(innerDiameter / 2, "inner radius") + wall.Meters));

    /// <summary>Strain of the closed cylinder: around (pr/Et)(1 − ν/2), along (pr/Et)(½ − ν). Source: Timoshenko; Roark, Formulas for
    /// Stress and Strain.</summary>
    /// <param name="pressure">Pressure inside; 0 to 2000 bar.</param>
    /// <param name="radius">Mean radius; 1 to 10 000 mm.</param>
    /// <param name="wall">Wall; above 0.</param>
    /// <param name="modulus">Young's modulus; 1 MPa to 1000 GPa.</param>
    /// <param name="poissonRatio">Poisson's ratio [-]; 0 to 0.5.</param>
    /// <exception cref="Provenance.OutOfRangeException">An input is out of range.</exception>
    public static Laminates.TubeStrain Expand(GaugePressure pressure, Length radius, Length wall, Pressure modulus, double poissonRatio)
    {
        var e = new Provenance.ValidRange<Pressure>(1.Megapascals(), 1000.Gigapascals()).Check(modulus, "modulus",
            "Aluminium is 69 GPa.").Pascals;
        var nu = new Provenance.ValidRange<double>(0, 0.5).Check(poissonRatio, "Poisson's ratio", "Aluminium is 0.33.");
        var unit = HoopStress(pressure, radius, wall).Pascals / e;
        return Laminates.TubeStrain.Of(unit * (1 - nu / 2), unit * (0.5 - nu));
    }
}
