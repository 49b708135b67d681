using NotebookKit.Provenance;
using NotebookKit.Quantities;
using NotebookKit.Vessels.Design;
using UnitsNet;

namespace NotebookKit.Vessels.Ends;

/// <summary>What closures hold before they yield. Source: <see cref="YieldPressure"/> names one for each shape.</summary>
public static class ClosureVerbs
{
    /// <summary>Pressure at which a closure's own wall yields.</summary>
    /// <param name="closure">The closure.</param>
    /// <param name="bore">Inner diameter of the vessel; above 0.</param>
    /// <exception cref="InvalidDesignException">Nothing is known of the strength of such a closure.</exception>
    /// <remarks>
    /// A flat one is taken as held at its rim without being clamped, which errs low: σ = 3(3 + ν)/8·p·r²/t² at the middle. A hole at the
    /// middle, whose fitting hangs on its edge, about doubles it: 3p/(4t²)·((3 + ν)a² + (1 − ν)b²). Source: Timoshenko and
    /// Woinowsky-Krieger, Theory of Plates and
    /// Shells, §16, §17. A
    /// domed one has the membrane stress at crown and equator, von Mises. Source: Roark, Formulas for Stress and Strain; Timoshenko.
    /// </remarks>
    public static GaugePressure YieldPressure(this Closure closure, Length bore)
    {
        ArgumentNullException.ThrowIfNull(closure);
        return GaugePressure.FromPascals(closure.YieldPascals(bore.Meters));
    }

    /// <summary>The same in SI [Pa].</summary>
    internal static double YieldPascals(this Closure closure, double bore) => closure switch
    {
        FlatClosure flat => PlateStrength.YieldPascals(flat, bore),
        DomedClosure dome => OfDome(dome, bore),
        // Around at the wide end p·r/(t·cos α), half of it along: von Mises leaves √3/2 of the former.
        ConicalClosure cone => cone.Material.YieldStrength.Value.Pascals * cone.Wall.Meters * Math.Cos(cone.HalfAngle.Radians)
            / (Math.Sqrt(0.75) * (bore + cone.Wall.Meters) / 2),
        _ => throw Unknown(closure),
    };

    /// <summary>Formula of <see cref="YieldPressure"/>, for the shown working.</summary>
    internal static (string Formula, Source Source) YieldFormula(this Closure closure) => closure switch
    {
        FlatClosure => (closure.Opening.Meters > 0 ? PlateStrength.YieldFormula : PlateStrength.WholeYieldFormula, VesselSources.Plates),
        ConicalClosure => (@"p = \frac{2}{\sqrt{3}}\,\frac{\sigma_y\,t\cos\alpha}{r}", VesselSources.Domes),
        DomedClosure => (
            @"p = \sigma_y\,/\max\left(\frac{a^2}{2\,b\,t},\ \sqrt{s_\varphi^2 - s_\varphi s_h + s_h^2}\right),\ s_\varphi = "
                + @"\frac{a}{2\,t},\ s_h = \frac{a}{t}\left(1-\frac{a^2}{2\,b^2}\right)", VesselSources.Domes),
        _ => throw Unknown(closure),
    };

    private static double OfDome(DomedClosure dome, double bore)
    {
        double a = (bore + dome.Wall.Meters) / 2, b = dome.Depth.Meters + dome.Wall.Meters / 2, t = dome.Wall.Meters;
        double along = a / (2 * t), hoop = a / t * (1 - a * a / (2 * b * b)), crown = a * a / (2 * b * t);
        return dome.Material.YieldStrength.Value.Pascals / Math.Max(crown, Math.Sqrt(along * along - along * hoop + hoop * hoop));
    }

    private static InvalidDesignException Unknown(Closure closure) =>
        new(closure.Shape, [VesselsFindings.ClosureIsNotModelled(closure.Shape)]);
}
