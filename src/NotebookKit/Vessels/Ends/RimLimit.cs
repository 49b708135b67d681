using NotebookKit.Provenance;
using NotebookKit.Quantities;
using NotebookKit.Vessels.Design;
using NotebookKit.Vessels.Ends.Modes;
using UnitsNet;

namespace NotebookKit.Vessels.Ends;

/// <summary>
/// The rim of an opening in a dome of ductile metal at its limit: pressure on the area next to the opening against what the metal there
/// takes at its yield, as far as √(2R·t) from the opening and, in a boss, √(d·t) out of it.
/// </summary>
/// <remarks>
/// Source: pressure-area method, EN 13445-3, clause 9, and AD 2000 B9 (unverified). Yield of the rim and of a dome that doesn't yield
/// before it breaks: <see cref="RimAtOpening"/>.
/// </remarks>
internal static class RimLimit
{
    public const string Formula = @"p = \frac{\sigma_y}{A_p/A_f + 1/2},\ A_p = \frac{R\,(a+l)}{2},\ A_f = l\,t + A_{boss}";

    public static Source Source { get; } = new("CEN", "EN 13445-3, pressure-area method", null, "clause 9", SourceKind.Unverified);

    public static double Pascals(DomedClosure dome, double bore, Fitting? fitting)
    {
        double r = CrownRadius(dome, bore), t = dome.Wall.Meters, a = dome.Opening.Meters / 2;
        var reach = Math.Min(Math.Sqrt(2 * r * t), Math.PI / 2 * r - a);
        double metal = reach * t, pressed = r * (a + reach) / 2;
        if (fitting is ThreadedFitting { Boss: { } outer } thread)
        {
            // Half of the thread's depth counts as gone; the boss is of the dome's metal.
            var wall = Math.Max((outer.Meters - thread.Nominal.Meters) / 2, 0);
            var height = Math.Min(Math.Sqrt((thread.Nominal.Meters + wall) * wall), thread.Engagement.Meters);
            metal += wall * Math.Max(height - t, 0);
        }

        return dome.Material.YieldStrength.Value.Pascals / (pressed / metal + 0.5);
    }

    /// <summary>First yield at the rim, or first break of a dome that doesn't yield [Pa]; none where the rim is no rim of a dome.</summary>
    public static GaugePressure? FirstYield(DomedClosure dome, double bore, Fitting? fitting)
    {
        var (radius, wall) = (CrownRadius(dome, bore), dome.Wall.Meters);
        var rim = new RimAtOpening(Millimetres(radius), Millimetres(Math.Min(wall, radius / 5)), dome.Opening / 2,
            dome.Material.YieldStrength.Value, Math.Min(dome.Material.PoissonRatio.Value, 0.49))
        {
            PointDistance = dome.Laminate is null ? null : Length.FromMillimeters(1),
        };
        // A boss thickens the rim, by up to the five times that the model takes.
        if (fitting is ThreadedFitting { Boss: { } boss } thread && thread.Engagement > rim.Wall && boss > dome.Opening)
        {
            rim = rim with
            {
                RimWall = UnitMath.Min(thread.Engagement, rim.Wall * 5),
                RimReach = UnitMath.Min((boss - dome.Opening) / 2, rim.SphereRadius),
            };
        }

        return rim.Validate().Any(f => f.Severity == FindingSeverity.Error) ? null : rim.Allows().FromStress;
    }

    /// <summary>Radius of the middle of the wall at the crown [m].</summary>
    public static double CrownRadius(DomedClosure dome, double bore)
    {
        double a = (bore + dome.Wall.Meters) / 2, b = dome.Depth.Meters + dome.Wall.Meters / 2;
        return a * a / b;
    }

    private static Length Millimetres(double metres) => Length.FromMillimeters(1000 * metres);
}
