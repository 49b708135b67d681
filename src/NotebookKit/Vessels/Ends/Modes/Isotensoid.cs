using MathNet.Numerics.Integration;
using NotebookKit.Provenance;
using NotebookKit.Quantities;
using UnitsNet;

namespace NotebookKit.Vessels.Ends.Modes;

/// <summary>
/// A dome wound along geodesics around a polar opening whose shape gives every fibre the same pull all along (isotensoid). The shape
/// holds from the equator in to √1.5 of the opening's radius, where its curvature turns; from there a fitting takes over.
/// </summary>
/// <param name="Radius">Radius at the equator, R; 0.01 to 2000 mm.</param>
/// <param name="PoleRadius">Radius at which the fibres turn back, r0; 0 to 0.6·R.</param>
/// <remarks>
/// Netting: the resin carries nothing, one family of fibres in both directions. A sleeve keeps sinθ/r and doesn't lie like this. Source:
/// Zickel, ARS Journal 32, 1962, and Koussios, Filament Winding, 2004 (both unverified); closed poles: Taylor's curve.
/// </remarks>
public sealed record Isotensoid(Length Radius, Length PoleRadius)
{
    private double Ratio => PoleRadius / Radius;

    private double Rest => 1 - Ratio * Ratio;

    /// <summary>
    /// Radius at which the shape's curvature turns and a fitting has to take over, √1.5·r0. Source: Koussios 2004 (unverified).
    /// </summary>
    public Length InnermostRadius => PoleRadius * Math.Sqrt(1.5);

    /// <summary>Angle of the fibres to the meridian at the equator. Source: Clairaut's relation.</summary>
    public Angle EquatorAngle => Angle.FromDegrees(Math.Asin(Ratio) * 180 / Math.PI);

    /// <summary>
    /// Radius of curvature across the meridian over that along it at the equator, 2 − tan²α0 [-]. Source: Zickel 1962, netting.
    /// </summary>
    public double EquatorCurvatureRatio => 2 - Ratio * Ratio / Rest;

    /// <summary>All that is wrong with it.</summary>
    public IReadOnlyList<Finding> Validate() => ModeInput.All(
        ModeInput.Sizes.Find(Radius, "radius of the dome", "Half the vessel's diameter."),
        new ValidRange<Length>(0.Millimetres(), Radius * 0.6)
            .Find(PoleRadius, "radius of the polar opening", "A wider opening leaves too little of a dome for this shape."));

    /// <summary>
    /// Height from the equator's plane, down to which the meridian has run at a radius. Source: Zickel 1962, by integration of the
    /// meridian's slope.
    /// </summary>
    /// <param name="radius">Radius; from <see cref="InnermostRadius"/> to the equator's.</param>
    /// <exception cref="InvalidDesignException">The dome isn't valid.</exception>
    /// <exception cref="OutOfRangeException">The radius is out of range.</exception>
    public Length HeightAt(Length radius)
    {
        var x = Check(radius);
        double a = Rest, b = Ratio * Ratio;
        // r = R(1 − s²) takes the infinite slope at the equator away.
        var height = 2 * GaussLegendreRule.Integrate(s =>
        {
            var rho = 1 - s * s;
            var square = rho * rho;
            return Math.Pow(rho, 3) * Math.Sqrt(a / ((2 - s * s) * (a * square * square + a * square - b)));
        }, 0, Math.Sqrt(1 - x), 100);
        return Radius * height;
    }

    /// <summary>
    /// Height of the dome from the equator's plane to <see cref="InnermostRadius"/>; with closed poles 0.59907·R. Source: Zickel 1962;
    /// Taylor's curve.
    /// </summary>
    /// <exception cref="InvalidDesignException">The dome isn't valid.</exception>
    public Length Height() => HeightAt(InnermostRadius);

    /// <summary>Angle of the fibres to the meridian at a radius. Source: Clairaut's relation.</summary>
    /// <param name="radius">Radius; from <see cref="InnermostRadius"/> to the equator's.</param>
    /// <exception cref="InvalidDesignException">The dome isn't valid.</exception>
    /// <exception cref="OutOfRangeException">The radius is out of range.</exception>
    public Angle FibreAngleAt(Length radius) => Angle.FromDegrees(Math.Asin(Ratio / Math.Max(Check(radius), 1e-300)) * 180 / Math.PI);

    /// <summary>
    /// Thickness of the wound layer over that at the equator, √((R² − r0²)/(r² − r0²)) [-], the same fibres crossing a smaller circle.
    /// Source: Koussios 2004 (unverified).
    /// </summary>
    /// <param name="radius">Radius; from <see cref="InnermostRadius"/> to the equator's, above 0. Within a band's width of the opening it
    /// counts too much.</param>
    /// <exception cref="InvalidDesignException">The dome isn't valid.</exception>
    /// <exception cref="OutOfRangeException">The radius is out of range.</exception>
    public double ThicknessGrowthAt(Length radius)
    {
        var x = Check(radius);
        if (x <= 0) throw new OutOfRangeException("radius", radius.Show(4), "above 0 mm", Radius.Show(4),
            "All fibres meet in a closed pole, where the layer has no thickness.");
        return Math.Sqrt(Rest / (x * x - Ratio * Ratio));
    }

    /// <summary>Radius of curvature across the meridian at a radius, R²·cosα/(r·cosα0). Source: Zickel 1962, netting.</summary>
    /// <param name="radius">Radius; from <see cref="InnermostRadius"/> to the equator's, above 0.</param>
    /// <exception cref="InvalidDesignException">The dome isn't valid.</exception>
    /// <exception cref="OutOfRangeException">The radius is out of range.</exception>
    public Length CrossCurvatureAt(Length radius)
    {
        var x = Check(radius);
        if (x <= 0) throw new OutOfRangeException("radius", radius.Show(4), "above 0 mm", Radius.Show(4),
            "At a closed pole the dome is flat.");
        return Radius * (Math.Sqrt(x * x - Ratio * Ratio) / (x * x * Math.Sqrt(Rest)));
    }

    /// <summary>
    /// Pull of the fibres, N·r/(R·cosα) with N the force a length along the meridian: p·R/(2·cosα0) at every radius. Source: Zickel 1962.
    /// </summary>
    /// <param name="pressure">Pressure inside; 0 to 2000 bar.</param>
    /// <exception cref="InvalidDesignException">The dome isn't valid.</exception>
    /// <exception cref="OutOfRangeException">The pressure is out of range.</exception>
    public ForcePerLength FibreLoad(GaugePressure pressure)
    {
        InvalidDesignException.ThrowIfAny("Isotensoid dome", Validate());
        return ForcePerLength.FromNewtonsPerMeter(ModeInput.Pressure(pressure) * Radius.Meters / (2 * Math.Sqrt(Rest)));
    }

    private double Check(Length radius)
    {
        InvalidDesignException.ThrowIfAny("Isotensoid dome", Validate());
        return new ValidRange<Length>(InnermostRadius, Radius)
            .Check(radius, "radius on the dome", "Further in the shape would bend the other way; a fitting takes over there.") / Radius;
    }
}
