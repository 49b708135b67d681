using UnitsNet;

namespace NotebookKit.Vessels.Laminates;

/// <summary>Forces and moments on a strip of laminate, a width of it: x along, y across (around, in a tube). What isn't given is
/// none.</summary>
/// <remarks>Source: Kaw, Mechanics of Composite Materials, 2nd ed. 2006, Fig. 4.3 (signs).</remarks>
public sealed record LaminateLoad
{
    /// <summary>Force along x a width, Nx; tension above 0.</summary>
    public ForcePerLength ForceX { get; init; }

    /// <summary>Force along y a width, Ny; tension above 0.</summary>
    public ForcePerLength ForceY { get; init; }

    /// <summary>Shear force a width, Nxy; any sign.</summary>
    public ForcePerLength Shear { get; init; }

    /// <summary>Bending moment a width that stretches the last face along x, Mx; any sign.</summary>
    public TorquePerLength MomentX { get; init; }

    /// <summary>Bending moment a width that stretches the last face along y, My; any sign.</summary>
    public TorquePerLength MomentY { get; init; }

    /// <summary>Twisting moment a width, Mxy; any sign.</summary>
    public TorquePerLength Twist { get; init; }

    internal double[] Values =>
    [
        ForceX.NewtonsPerMeter, ForceY.NewtonsPerMeter, Shear.NewtonsPerMeter,
        MomentX.NewtonMetersPerMeter, MomentY.NewtonMetersPerMeter, Twist.NewtonMetersPerMeter,
    ];
}
