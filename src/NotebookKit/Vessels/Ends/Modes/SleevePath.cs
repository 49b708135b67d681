using MathNet.Numerics.Integration;
using NotebookKit.Provenance;
using NotebookKit.Quantities;
using UnitsNet;

namespace NotebookKit.Vessels.Ends.Modes;

/// <summary>
/// Path of a braided sleeve's yarns over an end that narrows. A sleeve keeps sinθ/r, so its braid angle falls towards a narrow end; a
/// yarn wound without slipping keeps r·sinα instead, so its angle rises: see <see cref="Geodesic"/>.
/// </summary>
/// <param name="Meridian">Length of the end's surface along its meridian.</param>
/// <param name="Yarn">Length of a yarn on it.</param>
/// <param name="Turn">Angle around the axis that a yarn goes through on it.</param>
/// <param name="WideAngle">Braid angle at the wide end.</param>
/// <param name="NarrowAngle">Braid angle at the narrow end.</param>
/// <remarks>Source: sinθ/D constant, Head, Ko and Pastore, Handbook of Industrial Braiding (unverified); lengths by integration along
/// the meridian.</remarks>
public sealed record SleevePath(Length Meridian, Length Yarn, Angle Turn, Angle WideAngle, Angle NarrowAngle)
{
    /// <summary>
    /// Over a hemisphere, from its equator to a hole. Source: sleeve law; for no hole the yarn is R·K(sinθ0), the complete elliptic
    /// integral.
    /// </summary>
    /// <param name="radius">Radius of the hemisphere, R; 0.01 to 2000 mm.</param>
    /// <param name="atEquator">Braid angle at the equator, θ0; 1° to 89°.</param>
    /// <param name="hole">Radius of the hole; 0 to below the hemisphere's radius.</param>
    /// <exception cref="OutOfRangeException">An input is out of range.</exception>
    public static SleevePath OverHemisphere(Length radius, Angle atEquator, Length hole)
    {
        var r = ModeInput.Size(radius, "radius of the hemisphere", "Half the vessel's diameter.");
        var sine = Math.Sin(Braid(atEquator));
        var narrow = new ValidRange<Length>(0.Millimetres(), radius * 0.999)
            .Check(hole, "radius of the hole in the dome", "A hole has to leave a dome around it.").Meters / r;
        var low = Math.Asin(narrow);
        var yarn = r * GaussLegendreRule.Integrate(phi => 1 / Math.Sqrt(1 - Math.Pow(sine * Math.Sin(phi), 2)), low, Math.PI / 2, 100);
        return Of(r * (Math.PI / 2 - low), yarn, sine / r, atEquator, sine * narrow);
    }

    /// <summary>Over a cone. Source: sleeve law; the yarn's integral has a closed form.</summary>
    /// <param name="wide">Diameter at the wide end; 0.01 to 2000 mm.</param>
    /// <param name="narrow">Diameter at the narrow end; above 0, below the wide one.</param>
    /// <param name="halfAngle">Angle between the cone's side and its axis; 0.1° to 89.9°.</param>
    /// <param name="atWide">Braid angle at the wide end; 1° to 89°.</param>
    /// <exception cref="OutOfRangeException">An input is out of range.</exception>
    public static SleevePath OverCone(Length wide, Length narrow, Angle halfAngle, Angle atWide)
    {
        var r = ModeInput.Size(wide, "diameter of the cone's wide end", "Measure over the wide end.") / 2;
        var end = new ValidRange<Length>(wide * 0.001, wide * 0.999)
            .Check(narrow, "diameter of the cone's narrow end", "A cone narrows from its wide end.").Meters / 2;
        var slope = Math.Sin(new ValidRange<Angle>(0.1.Degrees(), 89.9.Degrees())
            .Check(halfAngle, "half angle of the cone", "Measure it between side and axis.").Radians);
        var angle = Braid(atWide);
        var rate = Math.Sin(angle) / r;
        return Of((r - end) / slope, (angle - Math.Asin(rate * end)) / (rate * slope), rate, atWide, rate * end);
    }

    // sinθ/r is constant, so the turn is that constant times the yarn.
    private static SleevePath Of(double meridian, double yarn, double rate, Angle wide, double narrowSine) => new(
        Length.FromMillimeters(1000 * meridian), Length.FromMillimeters(1000 * yarn), Angle.FromDegrees(rate * yarn * 180 / Math.PI), wide,
        Angle.FromDegrees(Math.Asin(narrowSine) * 180 / Math.PI));

    private static double Braid(Angle angle) =>
        new ValidRange<Angle>(1.Degrees(), 89.Degrees())
            .Check(angle, "braid angle", "Measure it from the vessel's axis on the finished diameter.").Radians;
}
