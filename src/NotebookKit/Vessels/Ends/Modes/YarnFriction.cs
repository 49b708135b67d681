using NotebookKit.Provenance;
using NotebookKit.Quantities;
using UnitsNet;

namespace NotebookKit.Vessels.Ends.Modes;

/// <summary>How much of a yarn's pull friction takes up where the yarn runs over a curve or an edge.</summary>
/// <remarks>
/// A flexible yarn about to slip on a dry surface. In cured resin the yarn doesn't slip; the same figures then bound what a wet or loose
/// sleeve holds. Source: capstan equation (balance of forces on a yarn over a curve); on a cylinder, the normal curvature sin²θ/R.
/// </remarks>
public static class YarnFriction
{
    /// <summary>Pull before the curve over pull after it, e^(μβ) [-]. Source: capstan equation.</summary>
    /// <param name="friction">Coefficient of friction, μ [-]; 0 to 2.</param>
    /// <param name="turn">Angle that the yarn itself turns through, β; 0° to 36 000°.</param>
    /// <exception cref="OutOfRangeException">An input is out of range.</exception>
    public static double PullRatio(double friction, Angle turn) => Math.Exp(Friction(friction) * Turn(turn));

    /// <summary>
    /// Pull before a cylinder over pull after it, e^(μψ·sinθ), for a yarn that runs at an angle [-]. Source: capstan equation.
    /// </summary>
    /// <param name="friction">Coefficient of friction, μ [-]; 0 to 2.</param>
    /// <param name="around">Angle around the cylinder, ψ; 0° to 36 000°.</param>
    /// <param name="fromAxis">Angle between yarn and the cylinder's axis, θ; above 0° to 90°. Over the edge of a closure, whose axis runs
    /// around, it is 90° less the braid angle.</param>
    /// <exception cref="OutOfRangeException">An input is out of range.</exception>
    public static double PullRatio(double friction, Angle around, Angle fromAxis)
    {
        var angle = new ValidRange<Angle>(0.01.Degrees(), 90.Degrees())
            .Check(fromAxis, "angle between yarn and axis", "A yarn along the axis doesn't turn.").Radians;
        return Math.Exp(Friction(friction) * Turn(around) * Math.Sin(angle));
    }

    /// <summary>
    /// Pull left in a sleeve's yarns behind an edge that the sleeve is carried over. Source: capstan equation, the edge as a cylinder
    /// that the yarns cross.
    /// </summary>
    /// <param name="pull">Pull before the edge; 0 to 1000 kN.</param>
    /// <param name="friction">Coefficient of friction, μ [-]; 0 to 2.</param>
    /// <param name="edgeTurn">Angle that the surface turns at the edge; 0° to 180°.</param>
    /// <param name="braidAngle">Angle between yarns and vessel axis at the edge; 0° to below 90°.</param>
    /// <exception cref="OutOfRangeException">An input is out of range.</exception>
    public static Force PullBehindEdge(Force pull, double friction, Angle edgeTurn, Angle braidAngle)
    {
        var force = new ValidRange<Force>(Force.Zero, Force.FromKilonewtons(1000))
            .Check(pull, "pull before the edge", "Give the pull of the yarns or of the sleeve.");
        var turn = new ValidRange<Angle>(0.Degrees(), 180.Degrees()).Check(edgeTurn, "turn of the edge", "A square edge turns 90°.");
        var angle = new ValidRange<Angle>(0.Degrees(), 89.99.Degrees())
            .Check(braidAngle, "braid angle at the edge", "Yarns that run around don't cross the edge.");
        return force / PullRatio(friction, turn, Angle.FromDegrees(90 - angle.Degrees));
    }

    private static double Friction(double value) =>
        new ValidRange<double>(0, 2).Check(value, "coefficient of friction", "Dry fibres on plastic or metal are 0.15 to 0.35.");

    private static double Turn(Angle value) =>
        new ValidRange<Angle>(0.Degrees(), 36_000.Degrees()).Check(value, "turn of the yarn", "A turn is 360°.").Radians;
}
