using NotebookKit.Provenance;
using NotebookKit.Quantities;
using NotebookKit.Vessels.Design;
using NotebookKit.Vessels.Shells;
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
    /// middle raises
    /// the stress at its edge to about twice that of the whole plate. Source: Timoshenko and Woinowsky-Krieger, Theory of Plates and
    /// Shells, §16, §17. A
    /// domed one has the membrane stress at crown and equator, von Mises. Source: Roark, Formulas for Stress and Strain; Timoshenko.
    /// </remarks>
    public static GaugePressure YieldPressure(this Closure closure, Length bore)
    {
        ArgumentNullException.ThrowIfNull(closure);
        return closure switch
        {
            FlatClosure flat => OfPlate(flat, bore),
            DomedClosure dome => new EllipsoidalDome(bore / 2 + dome.Wall / 2, dome.Depth + dome.Wall / 2,
                dome.Wall).PressureFor(dome.Material.YieldStrength.Value),
            _ => throw Unknown(closure),
        };
    }

    /// <summary>Formula of <see cref="YieldPressure"/>, for the shown working.</summary>
    internal static (string Formula, Source Source) YieldFormula(this Closure closure) => closure switch
    {
        FlatClosure => (
            closure.Opening.Meters > 0 ? @"p = \frac{1}{2}\,\frac{8}{3\,(3+\nu)}\,\sigma_y\left(\frac{t}{r}\right)^2"
                : @"p = \frac{8}{3\,(3+\nu)}\,\sigma_y\left(\frac{t}{r}\right)^2",
            VesselSources.Plates),
        DomedClosure => (
            @"p = \sigma_y\,/\max\left(\frac{a^2}{2\,b\,t},\ \sqrt{s_\varphi^2 - s_\varphi s_h + s_h^2}\right),\ s_\varphi = "
                + @"\frac{a}{2\,t},\ s_h = \frac{a}{t}\left(1-\frac{a^2}{2\,b^2}\right)", VesselSources.Domes),
        _ => throw Unknown(closure),
    };

    private static GaugePressure OfPlate(FlatClosure plate, Length bore)
    {
        var ratio = plate.Wall.Meters / (bore.Meters / 2);
        // A small hole at the middle of a plate in even bending doubles the stress at its edge: Timoshenko and Woinowsky-Krieger, §17.
        double hole = plate.Opening.Meters > 0 ? 2 : 1;
        return GaugePressure.FromPascals(plate.Material.YieldStrength.Value.Pascals * 8 / (3 * (3
            + plate.Material.PoissonRatio.Value)) * ratio * ratio / hole);
    }

    private static InvalidDesignException Unknown(Closure closure) =>
        new(closure.Shape, [VesselsFindings.ClosureIsNotModelled(closure.Shape)]);
}
