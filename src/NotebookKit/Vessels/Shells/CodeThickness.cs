using NotebookKit.Quantities;
using UnitsNet;

namespace NotebookKit.Vessels.Shells;

/// <summary>
/// Least wall of a metal shell or head by the pressure-vessel code's forms. For comparison: the code's metal rules don't cover a
/// composite wall.
/// </summary>
/// <remarks>Source: ASME Boiler and Pressure Vessel Code, Section VIII Division 1, UG-27 and UG-32 (1983 edition as reprinted in a handbook
/// table).</remarks>
public static class CodeThickness
{
    /// <summary>Cylinder, hoop stress: PR/(SE − 0.6P). Source: UG-27(c)(1).</summary>
    /// <param name="pressure">Design pressure; 0 to 2000 bar.</param>
    /// <param name="innerRadius">Inner radius; 1 to 10 000 mm.</param>
    /// <param name="allowable">Allowable stress; 0.01 to 20 000 MPa.</param>
    /// <param name="jointEfficiency">Joint efficiency [-]; 0.1 to 1.</param>
    /// <exception cref="Provenance.OutOfRangeException">An input is out of range.</exception>
    public static Length Cylinder(GaugePressure pressure, Length innerRadius, Pressure allowable, double jointEfficiency = 1) =>
        Wall(pressure, ShellInput.Radius(innerRadius), allowable, jointEfficiency, 1, -0.6);

    /// <summary>Cylinder, axial stress: PR/(2SE + 0.4P). Source: UG-27(c)(2).</summary>
    /// <param name="pressure">Design pressure; 0 to 2000 bar.</param>
    /// <param name="innerRadius">Inner radius; 1 to 10 000 mm.</param>
    /// <param name="allowable">Allowable stress; 0.01 to 20 000 MPa.</param>
    /// <param name="jointEfficiency">Joint efficiency [-]; 0.1 to 1.</param>
    /// <exception cref="Provenance.OutOfRangeException">An input is out of range.</exception>
    public static Length CylinderAxial(GaugePressure pressure, Length innerRadius, Pressure allowable, double jointEfficiency = 1) =>
        Wall(pressure, ShellInput.Radius(innerRadius), allowable, jointEfficiency, 2, 0.4);

    /// <summary>Hemispherical head or sphere: PL/(2SE − 0.2P). Source: UG-27(d), UG-32(f).</summary>
    /// <param name="pressure">Design pressure; 0 to 2000 bar.</param>
    /// <param name="innerRadius">Inner radius; 1 to 10 000 mm.</param>
    /// <param name="allowable">Allowable stress; 0.01 to 20 000 MPa.</param>
    /// <param name="jointEfficiency">Joint efficiency [-]; 0.1 to 1.</param>
    /// <exception cref="Provenance.OutOfRangeException">An input is out of range.</exception>
    public static Length Hemisphere(GaugePressure pressure, Length innerRadius, Pressure allowable, double jointEfficiency = 1) =>
        Wall(pressure, ShellInput.Radius(innerRadius), allowable, jointEfficiency, 2, -0.2);

    /// <summary>Ellipsoidal head: PDK/(2SE − 0.2P) with K = (2 + (D/2h)²)/6. Source: UG-32(d), Appendix 1-4.</summary>
    /// <param name="pressure">Design pressure; 0 to 2000 bar.</param>
    /// <param name="innerRadius">Inner radius of the cylinder, D/2; 1 to 10 000 mm.</param>
    /// <param name="depth">Inside depth of the head, h; 1 to 10 000 mm.</param>
    /// <param name="allowable">Allowable stress; 0.01 to 20 000 MPa.</param>
    /// <param name="jointEfficiency">Joint efficiency [-]; 0.1 to 1.</param>
    /// <exception cref="Provenance.OutOfRangeException">An input is out of range.</exception>
    public static Length Ellipsoid(GaugePressure pressure, Length innerRadius, Length depth, Pressure allowable,
        double jointEfficiency = 1) =>
        Wall(pressure, 2 * ShellInput.Radius(innerRadius) * EllipsoidFactor(innerRadius, depth), allowable, jointEfficiency, 2, -0.2);

    /// <summary>Torispherical head with a knuckle of 6 % of the crown radius: 0.885PL/(SE − 0.1P). Source: UG-32(e).</summary>
    /// <param name="pressure">Design pressure; 0 to 2000 bar.</param>
    /// <param name="crownRadius">Inside crown radius, L; 1 to 10 000 mm.</param>
    /// <param name="allowable">Allowable stress; 0.01 to 20 000 MPa.</param>
    /// <param name="jointEfficiency">Joint efficiency [-]; 0.1 to 1.</param>
    /// <exception cref="Provenance.OutOfRangeException">An input is out of range.</exception>
    public static Length Torisphere(GaugePressure pressure, Length crownRadius, Pressure allowable, double jointEfficiency = 1) =>
        Wall(pressure, 0.885 * ShellInput.Radius(crownRadius, "crown radius"), allowable, jointEfficiency, 1, -0.1);

    /// <summary>Stress factor of an ellipsoidal head, K = (2 + (D/2h)²)/6 [-]: 1 at 2:1, 0.5 for a hemisphere. Source: Appendix
    /// 1-4.</summary>
    /// <param name="innerRadius">Inner radius of the cylinder, D/2; 1 to 10 000 mm.</param>
    /// <param name="depth">Inside depth of the head, h; 1 to 10 000 mm.</param>
    /// <exception cref="Provenance.OutOfRangeException">An input is out of range.</exception>
    public static double EllipsoidFactor(Length innerRadius, Length depth)
    {
        var ratio = ShellInput.Radius(innerRadius) / ShellInput.Radius(depth, "depth");
        return (2 + ratio * ratio) / 6;
    }

    private static Length Wall(GaugePressure pressure, double size, Pressure allowable, double efficiency, double stressShare,
        double pressureShare)
    {
        var p = ShellInput.Pressure(pressure);
        var denominator = stressShare * ShellInput.Stress(allowable, "allowable stress") * ShellInput.Efficiency(efficiency)
            + pressureShare * p;
        if (denominator <= 0)
        {
            throw new Provenance.OutOfRangeException("pressure", pressure.ToString(), "0 bar gauge",
                "what the allowable stress can hold at any thickness",
                "No wall is thick enough at this stress; take a stronger material.");
        }

        return Length.FromMeters(p * size / denominator);
    }
}
