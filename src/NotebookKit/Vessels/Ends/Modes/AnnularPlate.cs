using MathNet.Numerics.LinearAlgebra;
using NotebookKit.Provenance;
using NotebookKit.Quantities;
using UnitsNet;

namespace NotebookKit.Vessels.Ends.Modes;

/// <summary>
/// A flat round plate with or without a round hole in its middle, bent by pressure and by a load around the edge of the hole. Elastic,
/// thin, small deflections: w = A + B·r² + C·ln r + F·r²·ln r + p·r⁴/(64D), its four constants from the four edge conditions.
/// </summary>
/// <param name="OuterRadius">Radius at which the rim is held, a; 1 to 2000 mm.</param>
/// <param name="HoleRadius">Radius of the hole, b; 0 for a whole plate, else 0.001·a to 0.99·a.</param>
/// <param name="Thickness">Thickness, t; 0.1 to 500 mm.</param>
/// <param name="Modulus">Young's modulus; 1 MPa to 1000 GPa.</param>
/// <param name="PoissonRatio">Poisson's ratio [-]; 0 to 0.49.</param>
/// <param name="Rim">How the outer edge is held.</param>
/// <remarks>
/// Source: Timoshenko and Woinowsky-Krieger, Theory of Plates and Shells, 2nd ed. 1959, §16 and §17; Young and Budynas, Roark's Formulas
/// for Stress and Strain, 7th ed., Table 11.2.
/// </remarks>
public sealed record AnnularPlate(Length OuterRadius, Length HoleRadius, Length Thickness, Pressure Modulus, double PoissonRatio,
    PlateRim Rim)
{
    /// <summary>Points that the largest deflection and stress are looked for at; both run smoothly between.</summary>
    private const int Points = 2000;

    /// <summary>How the edge of the hole is held; nothing holds it unless said.</summary>
    public PlateHole Hole { get; init; } = PlateHole.Free;

    /// <summary>Who carries the thrust on what closes the hole; the edge supports it unless said.</summary>
    public HoleCover Cover { get; init; } = HoleCover.SupportedAtEdge;

    /// <summary>Whether there is no hole.</summary>
    public bool IsWhole => HoleRadius.Meters == 0;

    /// <summary>Bending stiffness a width, D = E·t³/(12(1 − ν²)). Source: Timoshenko and Woinowsky-Krieger 1959.</summary>
    public TorquePerLength Stiffness => TorquePerLength.FromNewtonMetersPerMeter(StiffnessNm);

    internal double StiffnessNm => Modulus.Pascals * Math.Pow(Thickness.Meters, 3) / (12 * (1 - PoissonRatio * PoissonRatio));

    /// <summary>All that is wrong with the plate.</summary>
    public IReadOnlyList<Finding> Validate() => ModeInput.All(
    [
        new ValidRange<Length>(1.Millimetres(), 2000.Millimetres())
            .Find(OuterRadius, "outer radius of the plate", "Measure to where the rim is held."),
        .. HoleFindings(OuterRadius, HoleRadius),
        new ValidRange<Length>(0.1.Millimetres(), 500.Millimetres())
            .Find(Thickness, "thickness of the plate", "Turned end plates are 3 to 20 mm."),
        ModeInput.Moduli.Find(Modulus, "modulus of the plate", "Aluminium is 69 GPa."),
        ModeInput.PoissonRatios.Find(PoissonRatio, "Poisson's ratio of the plate", "Aluminium is near 0.33, plastics near 0.38."),
    ]);

    /// <summary>
    /// Deflection and stress under a pressure on the whole of the plate outside the hole, with the cover's pull where it is supported at
    /// the edge.
    /// </summary>
    /// <param name="pressure">Pressure on the plate; 0 to 2000 bar.</param>
    /// <exception cref="InvalidDesignException">The plate isn't valid.</exception>
    /// <exception cref="OutOfRangeException">The pressure is out of range.</exception>
    public PlateBending BendingAt(GaugePressure pressure) => BendingAt(pressure, default);

    /// <summary>Deflection and stress under a pressure, the cover's pull, and a further load around the edge of the hole.</summary>
    /// <param name="pressure">Pressure on the plate; 0 to 2000 bar.</param>
    /// <param name="edgeLoad">Further load around the edge of the hole, a length of edge, in the pressure's direction; any finite value,
    /// and 0 for a whole plate.</param>
    /// <exception cref="InvalidDesignException">The plate isn't valid.</exception>
    /// <exception cref="OutOfRangeException">The pressure is out of range, or an edge load is given where there is no hole.</exception>
    public PlateBending BendingAt(GaugePressure pressure, ForcePerLength edgeLoad)
    {
        InvalidDesignException.ThrowIfAny("Round plate", Validate());
        var p = ModeInput.Pressure(pressure);
        var w = edgeLoad.NewtonsPerMeter;
        if (!double.IsFinite(w) || (IsWhole && w != 0))
        {
            throw new OutOfRangeException("load on the edge of the hole", edgeLoad.Show(4), "0 N/m", IsWhole
                ? "0 N/m, for there is no hole" : "any finite load",
                "Give the plate a hole, or leave the edge load out.");
        }

        if (!IsWhole && Cover == HoleCover.SupportedAtEdge) w += p * HoleRadius.Meters / 2;
        var bent = new PlateBending(this, pressure, ForcePerLength.FromNewtonsPerMeter(w), Solve(p, w));
        return bent with { Findings = Reservations(Math.Abs(bent.MaximumDeflection.Meters)) };
    }

    /// <summary>
    /// Pressure at which the plate first yields anywhere, by the largest shear (Tresca), with the pressure itself on the loaded face. The
    /// plate holds well above it before it collapses: see <see cref="PlateCollapse"/>. Source: Timoshenko and Woinowsky-Krieger 1959, §16
    /// and §17; Tresca.
    /// </summary>
    /// <param name="yieldStrength">Yield strength; 0.1 to 5000 MPa.</param>
    /// <exception cref="InvalidDesignException">The plate isn't valid.</exception>
    /// <exception cref="OutOfRangeException">The strength is out of range.</exception>
    public GaugePressure FirstYield(Pressure yieldStrength)
    {
        var strength = ModeInput.Stress(yieldStrength, "yield strength of the plate");
        var unit = BendingAt(1.BarGauge());
        var largest = unit.Samples().Max(s => Shear(s.RadialPa, s.AroundPa, 1e5));
        return 1.BarGauge() * (strength / largest);
    }

    /// <summary>Errors of a hole's radius in a plate.</summary>
    internal static IEnumerable<Finding?> HoleFindings(Length outer, Length hole)
    {
        if (hole.Meters == 0 || !(outer.Meters > 0)) yield break;
        yield return new ValidRange<Length>(outer * 0.001, outer * 0.99).Find(
            hole, "radius of the hole in the plate", "A hole has to leave a rim inside the plate; give 0 for a plate without one.");
    }

    internal double[] Radii()
    {
        double a = OuterRadius.Meters, b = HoleRadius.Meters;
        return [.. Enumerable.Range(0, Points + 1).Select(i => i == Points ? a : b + (a - b) * i / Points)];
    }

    /// <summary>
    /// Twice the largest shear at either face: stresses of the far face, and those of the loaded one with the pressure across it.
    /// </summary>
    private static double Shear(double radial, double around, double pressure)
    {
        return Math.Max(Span(radial, around, 0), Span(-radial, -around, -pressure));

        static double Span(double x, double y, double z) => Math.Max(x, Math.Max(y, z)) - Math.Min(x, Math.Min(y, z));
    }

    private List<Finding> Reservations(double deflectionM)
    {
        List<Finding> findings = [];
        var width = OuterRadius - HoleRadius;
        if (Thickness > width / 4 || Thickness > OuterRadius / 2)
        {
            findings.Add(VesselsFindings.PlateIsThickForWidth(Thickness, width));
        }

        if (deflectionM > Thickness.Meters / 2)
        {
            findings.Add(VesselsFindings.PlateBendsTooFar(Length.FromMillimeters(1000 * deflectionM), Thickness));
        }

        if (Rim == PlateRim.Clamped)
        {
            findings.Add(VesselsFindings.ClampedRimIsBestCase());
        }

        return findings;
    }

    /// <summary>A, B, C, F of w over r/a [m].</summary>
    private double[] Solve(double p, double edge)
    {
        double a = OuterRadius.Meters, b = HoleRadius.Meters, d = StiffnessNm, nu = PoissonRatio;
        var load = p * Math.Pow(a, 4) / (64 * d);
        var rows = new List<(double[] Row, double Right)>();
        Add(Deflection(1));
        Add(Rim == PlateRim.Clamped ? Slope(1) : Moment(1));
        if (IsWhole)
        {
            rows.Add(([0, 0, 1, 0], 0));
            rows.Add(([0, 0, 0, 1], 0));
        }
        else
        {
            var x = b / a;
            Add(Hole is PlateHole.Free or PlateHole.Supported ? Moment(x) : Slope(x));
            if (Hole is PlateHole.Free or PlateHole.Guided) rows.Add(([0, 0, 0, 1], a * a * b * (edge - p * b / 2) / (4 * d)));
            else Add(Deflection(x));
        }

        var matrix = Matrix<double>.Build.DenseOfRowArrays(rows.Select(r => r.Row));
        return [.. matrix.Solve(Vector<double>.Build.DenseOfEnumerable(rows.Select(r => r.Right)))];

        void Add(double[] terms) => rows.Add((terms[..4], -load * terms[4]));

        double[] Deflection(double x) => [1, x * x, Math.Log(x), x * x * Math.Log(x), Math.Pow(x, 4)];

        double[] Slope(double x) => [0, 2 * x, 1 / x, x * (2 * Math.Log(x) + 1), 4 * x * x * x];

        double[] Moment(double x) =>
        [
            0, 2 + 2 * nu, (nu - 1) / (x * x), 2 * Math.Log(x) + 3 + nu * (2 * Math.Log(x) + 1), (12 + 4 * nu) * x * x,
        ];
    }
}

/// <summary>Who carries the thrust on what closes the hole in an end: nozzle, plug, valve.</summary>
public enum HoleCover
{
    /// <summary>
    /// It is supported at the edge of the hole and pulls on it. Taken where nothing else is said, since it loads the plate more.
    /// </summary>
    SupportedAtEdge,

    /// <summary>Something other than the plate carries it: a hole over a plugged neck, a tie rod.</summary>
    HeldElsewhere,
}
