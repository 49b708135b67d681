using UnitsNet;

namespace NotebookKit.Vessels.Laminates;

/// <summary>The A, B and D matrices of a laminate, by the indices the literature prints: 1, 2 and 6.</summary>
/// <remarks>Source: Kaw, Mechanics of Composite Materials, 2nd ed. 2006, Eq. 4.28.</remarks>
public sealed class LaminateStiffness
{
    private readonly PlaneStiffness _a;
    private readonly PlaneStiffness _b;
    private readonly PlaneStiffness _d;
    private readonly double _thicknessMetres;

    internal LaminateStiffness(PlaneStiffness a, PlaneStiffness b, PlaneStiffness d, double thicknessMetres) =>
        (_a, _b, _d, _thicknessMetres) = (a, b, d, thicknessMetres);

    /// <summary>Total thickness.</summary>
    public Length Thickness => Length.FromMeters(_thicknessMetres);

    internal PlaneStiffness InPlane => _a;

    /// <summary>Extension stiffness: force a width for a strain.</summary>
    /// <param name="row">1, 2 or 6.</param>
    /// <param name="column">1, 2 or 6.</param>
    public ForcePerLength A(int row, int column) => ForcePerLength.FromNewtonsPerMeter(_a[row, column]);

    /// <summary>Coupling stiffness: moment a width for a strain, or force a width for a curvature.</summary>
    /// <param name="row">1, 2 or 6.</param>
    /// <param name="column">1, 2 or 6.</param>
    public Force B(int row, int column) => Force.FromNewtons(_b[row, column]);

    /// <summary>Bending stiffness: moment a width for a curvature.</summary>
    /// <param name="row">1, 2 or 6.</param>
    /// <param name="column">1, 2 or 6.</param>
    public Torque D(int row, int column) => Torque.FromNewtonMeters(_d[row, column]);
}
