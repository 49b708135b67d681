using NotebookKit.Provenance;
using NotebookKit.Quantities;
using UnitsNet;

namespace NotebookKit.Vessels.Ends.Modes;

/// <summary>
/// Stress beside a round hole in a sheet that is pulled: how many times it exceeds the pull, and what that takes off a laminate's
/// strength.
/// </summary>
/// <remarks>
/// A flat elastic sheet, the same in every direction; in a curved shell it holds while the hole is small against √(R·t), see
/// <see cref="RimAtOpening"/>. Source: Kirsch, Zeitschrift VDI 42, 1898 (unverified); Lamé, as in Shigley; Whitney and Nuismer, J.
/// Compos. Mater. 8, 1974, p. 253 (unverified; its forms for an even pull worked out here).
/// </remarks>
public static class HoleStress
{
    /// <summary>
    /// Distance from the hole at which the point-stress rule compares, of the first laminates it was fitted to: 1.016 mm. Source: Whitney
    /// and Nuismer 1974.
    /// </summary>
    public static Length PointDistance { get; } = 1.016.Millimetres();

    /// <summary>
    /// Distance over which the average-stress rule averages, of the first laminates it was fitted to: 3.81 mm. Source: Whitney and
    /// Nuismer 1974.
    /// </summary>
    public static Length AverageDistance { get; } = 3.81.Millimetres();

    /// <summary>
    /// Largest stress at a small hole over the larger pull, 3 − σ2/σ1 [-]: 2 in a sphere, 2.5 in a closed cylinder, 3 for a pull one way.
    /// Source: Kirsch 1898.
    /// </summary>
    /// <param name="crosswise">Smaller pull over the larger one, σ2/σ1 [-]; −1 to 1.</param>
    /// <exception cref="OutOfRangeException">The ratio is out of range.</exception>
    public static double Factor(double crosswise) => 3 - Crosswise(crosswise);

    /// <summary>
    /// Stress around the hole at a distance, on the line across the larger pull, over the larger pull [-]. Source: Kirsch 1898.
    /// </summary>
    /// <param name="crosswise">Smaller pull over the larger one, σ2/σ1 [-]; −1 to 1.</param>
    /// <param name="radiusOverHole">Distance from the hole's middle over the hole's radius, r/a [-]; 1 to 1e6.</param>
    /// <exception cref="OutOfRangeException">An input is out of range.</exception>
    public static double FactorAt(double crosswise, double radiusOverHole)
    {
        var x = 1 / new ValidRange<double>(1, 1e6)
            .Check(radiusOverHole, "distance over the hole's radius", "The sheet begins at the hole's edge.");
        var square = x * x;
        var ratio = Crosswise(crosswise);
        // Along the line across a pull one way, and along the pull, which the smaller one adds.
        var across = (1 + square + 1 + 3 * square * square) / 2;
        var along = (1 + square - 1 - 3 * square * square) / 2;
        return across + ratio * along;
    }

    /// <summary>Stress at the hole of a disc pulled evenly at its rim, over the pull, 2/(1 − (a/b)²) [-]. Source: Lamé.</summary>
    /// <param name="holeOverRim">Radius of the hole over that of the rim, a/b [-]; 0 to 0.99.</param>
    /// <exception cref="OutOfRangeException">The ratio is out of range.</exception>
    public static double DiscFactor(double holeOverRim)
    {
        var ratio = HoleOverRim(holeOverRim);
        return 2 / (1 - ratio * ratio);
    }

    /// <summary>
    /// Stress around at the hole of a disc pulled evenly at its rim, the pressure pressing on the hole's edge too; 2S + p in a wide
    /// sheet. Source: Lamé.
    /// </summary>
    /// <param name="pull">Pull at the rim, S; 0 to 5000 MPa.</param>
    /// <param name="onEdge">Pressure on the hole's edge, p; 0 to 2000 bar.</param>
    /// <param name="holeOverRim">Radius of the hole over that of the rim, a/b [-]; 0 to 0.99.</param>
    /// <exception cref="OutOfRangeException">An input is out of range.</exception>
    public static Pressure AtEdge(Pressure pull, GaugePressure onEdge, double holeOverRim = 0)
    {
        var s = new ValidRange<Pressure>(0.Megapascals(), 5000.Megapascals())
            .Check(pull, "pull at the rim", "Give the membrane stress of the shell.").Pascals;
        var square = HoleOverRim(holeOverRim) * holeOverRim;
        return Pressure.FromPascals((2 * s + ModeInput.Pressure(onEdge) * (1 + square)) / (1 - square));
    }

    /// <summary>
    /// Strength left of a laminate with a hole over that without, by the stress at a distance from the hole [-]. Source: Whitney and
    /// Nuismer 1974.
    /// </summary>
    /// <param name="hole">Radius of the hole, R; 0 to 2000 mm.</param>
    /// <param name="pull">How the laminate is pulled.</param>
    /// <param name="distance">Distance from the hole, d0, of this laminate by tests with holes; 0.1 to 20 mm.</param>
    /// <exception cref="OutOfRangeException">An input is out of range.</exception>
    public static double StrengthLeftByPoint(Length hole, HolePull pull, Length distance)
    {
        var x = Reach(hole, distance);
        return pull == HolePull.Even ? 1 / (1 + x * x) : 2 / (2 + x * x + 3 * Math.Pow(x, 4));
    }

    /// <summary>
    /// Strength left of a laminate with a hole over that without, by the mean stress over a distance from the hole [-]. Source: Whitney
    /// and Nuismer 1974.
    /// </summary>
    /// <param name="hole">Radius of the hole, R; 0 to 2000 mm.</param>
    /// <param name="pull">How the laminate is pulled.</param>
    /// <param name="distance">Distance from the hole, a0, of this laminate by tests with holes; 0.1 to 20 mm.</param>
    /// <exception cref="OutOfRangeException">An input is out of range.</exception>
    public static double StrengthLeftByAverage(Length hole, HolePull pull, Length distance)
    {
        var x = Reach(hole, distance);
        // 2(1 − ξ)/(2 − ξ² − ξ⁴) with 1 − ξ taken out of both, so that a wide hole keeps its limit.
        return pull == HolePull.Even ? 1 / (1 + x) : 2 / ((1 + x) * (2 + x * x));
    }

    private static double Reach(Length hole, Length distance)
    {
        var r = new ValidRange<Length>(0.Millimetres(), 2000.Millimetres()).Check(hole, "radius of the hole", "Give half its diameter.")
            .Meters;
        var d = new ValidRange<Length>(0.1.Millimetres(), 20.Millimetres())
            .Check(distance, "distance from the hole", "Laminates of carbon and epoxy were found near 1 mm by point, 4 mm by average.")
            .Meters;
        return r / (r + d);
    }

    private static double Crosswise(double value) =>
        new ValidRange<double>(-1, 1)
            .Check(value, "smaller pull over the larger one", "A sphere has 1, a closed cylinder 0.5, a pull one way 0.");

    private static double HoleOverRim(double value) =>
        new ValidRange<double>(0, 0.99)
            .Check(value, "hole's radius over the rim's", "A hole has to leave a rim; 0 is a small hole in a wide sheet.");
}

/// <summary>How a sheet with a hole is pulled.</summary>
public enum HolePull
{
    /// <summary>One way only.</summary>
    OneWay,

    /// <summary>The same in every direction, as in a sphere.</summary>
    Even,
}
