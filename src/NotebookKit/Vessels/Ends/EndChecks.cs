using NotebookKit.Provenance;
using NotebookKit.Quantities;
using NotebookKit.Vessels.Design;
using NotebookKit.Vessels.Ends.Modes;
using UnitsNet;
using UnitsNet.Units;

namespace NotebookKit.Vessels.Ends;

/// <summary>Second answers beside those that an end is rated on, for its shown working; none of them sets a pressure.</summary>
internal static class EndChecks
{
    public static IEnumerable<WorkingStep> Work(VesselEnd end, EndContext context, Angle? sleeve)
    {
        var bore = Length.FromMeters(context.Bore);
        return end.Closure switch
        {
            FlatClosure flat => OfPlate(flat, bore),
            DomedClosure { IsDuctile: true } dome => [.. OfBoss(dome, end.Fitting, bore), .. OfSleeve(dome, end, bore, sleeve)],
            DomedClosure dome => OfSleeve(dome, end, bore, sleeve),
            _ => [],
        };
    }

    private static IEnumerable<WorkingStep> OfPlate(FlatClosure flat, Length bore)
    {
        var plate = new AnnularPlate(bore / 2, flat.Opening / 2, flat.Wall, flat.Material.Modulus.Value,
            flat.Material.PoissonRatio.Value, PlateRim.Supported);
        if (Fails(plate.Validate())) yield break;
        yield return new("Cross-check: first yield of the plate by its four edge conditions", @"w = A + B r^2 + C\ln r + F r^2\ln r + "
            + @"\frac{p\,r^4}{64\,D}", $"{flat.Material.YieldStrength.Value.Show()}, the pressure on the face counted (Tresca)",
            plate.FirstYield(flat.Material.YieldStrength.Value).ToString(), VesselSources.Plates);
    }

    private static IEnumerable<WorkingStep> OfBoss(DomedClosure dome, Fitting? fitting, Length bore)
    {
        if (fitting is not ThreadedFitting { Boss: { } boss } thread) yield break;
        var strength = dome.Material.YieldStrength.Value;
        var shell = Length.FromMillimeters(1000 * RimLimit.CrownRadius(dome, bore.Meters)) - dome.Wall / 2;
        var opening = new OpeningReinforcement(OpenedShell.Sphere, shell, dome.Wall, boss, thread.Nominal, strength);
        if (Fails(opening.Validate()) || RimLimit.FirstYield(dome, bore.Meters, fitting) is not { } yields) yield break;
        // No higher than shell and boss hold without an opening, where the rule ends.
        double s = strength.Pascals, t = dome.Wall.Meters, tn = opening.BossWall.Meters;
        var most = 0.99 * Math.Min(2 * s * t / (shell.Meters + 0.2 * t), s * tn / (thread.Nominal.Meters / 2 + 0.6 * tn));
        var areas = opening.AreasAt(GaugePressure.FromPascals(Math.Min(most, yields.Pascals)));
        yield return new($"Cross-check: area replaced at {areas.Pressure}", @"A_1 + A_2 \ge A = d\,t_r",
            $"{Mm2(areas.InWall)} in the dome and {Mm2(areas.InBoss)} in the boss against {Mm2(areas.Removed)} taken out",
            areas.IsEnough ? "replaced" : $"short by {Mm2(areas.Missing)}", ModeSources.Openings);
    }

    private static IEnumerable<WorkingStep> OfSleeve(DomedClosure dome, VesselEnd end, Length bore, Angle? sleeve)
    {
        if (!end.CarriesSleeves || sleeve is not { } angle || angle.Degrees is < 1 or > 89) yield break;
        Length outer = bore / 2 + dome.Wall, hole = dome.Opening / 2;
        if (Math.Abs(dome.Depth / bore - 0.5) < 1e-6)
        {
            var path = SleevePath.OverHemisphere(outer, angle, hole);
            var wound = hole > Length.Zero && hole < outer * Math.Sin(angle.Radians)
                ? $"; wound without slipping along {Geodesic.TurnRadius(outer, angle).Show()} at the least" : "";
            yield return new("Cross-check: path of the sleeve over the dome", @"\frac{\sin\theta}{r} = const.",
                $"{angle.Show()} at the equator, yarn of {path.Yarn.Show()} on a meridian of {path.Meridian.Show()}",
                $"{path.NarrowAngle.Show()} at the hole, {path.Turn.Show()} around{wound}", ModeSources.SleeveLaw);
        }

        var shape = new Isotensoid(outer, hole);
        if (Fails(shape.Validate()) || !(hole > Length.Zero)) yield break;
        yield return new("Cross-check: depth of a dome that pulls all yarns alike", @"z(r)\ \text{by netting along geodesics}",
            $"radius {outer.Show()}, opening {dome.Opening.Show()}",
            $"{shape.Height().Show()}, this dome {(dome.Depth + dome.Wall).Show()}", ModeSources.Isotensoid);
    }

    private static bool Fails(IReadOnlyList<Finding> findings) => findings.Any(f => f.Severity == FindingSeverity.Error);

    private static string Mm2(Area area) => area.ToUnit(AreaUnit.SquareMillimeter).Show();
}
