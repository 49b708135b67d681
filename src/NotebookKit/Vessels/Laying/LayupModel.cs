using NotebookKit.Materials.Solids;
using NotebookKit.Provenance;
using NotebookKit.Quantities;
using NotebookKit.Vessels.Design;
using UnitsNet;
using UnitsNet.Units;

namespace NotebookKit.Vessels.Laying;

/// <summary>Lays the plies of a vessel one over the other.</summary>
internal static class LayupModel
{
    /// <summary>Overlap wanted over the overlap at which mean shear comes to the resin's strength [-]; common practice, no
    /// source.</summary>
    private const double OverlapReserve = 3;

    /// <summary>Length of liner and wraps: the straight part and the reach of both joints.</summary>
    public static Length WallLength(PressureVessel vessel) => vessel.Length + vessel.NozzleEnd.Reach + vessel.ForwardEnd.Reach;

    public static Layup Lay(PressureVessel vessel, IReadOnlyList<Finding> validation)
    {
        var plies = new PlyGeometry[vessel.Plies.Count];
        var under = vessel.Liner.OuterDiameter;
        for (var i = 0; i < plies.Length; i++)
        {
            plies[i] = LayPly(vessel, vessel.Plies[i], under);
            under = plies[i].OuterDiameter;
        }

        var bore = vessel.Liner.Bore;
        var wallLength = WallLength(vessel).Meters;
        var liner = vessel.Liner.Material is { } material
            ? Math.PI * (vessel.Liner.Bore.Meters + vessel.Liner.Wall.Meters) * vessel.Liner.Wall.Meters * wallLength *
                material.Density.Value.KilogramsPerCubicMeter
            : 0;
        double nozzle = vessel.NozzleEnd.MassOf(bore).Kilograms, forward = vessel.ForwardEnd.MassOf(bore).Kilograms;
        var plyMass = plies.Sum(p => p.FibreMass.Kilograms + p.ResinMass.Kilograms);
        var wallCentre = (vessel.Length.Meters + vessel.ForwardEnd.Reach.Meters - vessel.NozzleEnd.Reach.Meters) / 2;
        var moment = (liner + plyMass) * wallCentre
            - nozzle * vessel.NozzleEnd.Closure.DepthInside(bore).Meters / 2
            + forward * (vessel.Length.Meters + vessel.ForwardEnd.Closure.DepthInside(bore).Meters / 2);
        var total = liner + plyMass + nozzle + forward;
        List<Finding> findings = [.. validation, .. plies.SelectMany(p => p.Findings)];
        findings.AddRange(vessel.OwnValues);
        return new Layup(
            vessel, plies, Mass.FromGrams(1000 * liner), Mass.FromGrams(1000 * (nozzle + forward)),
                Length.FromMillimeters(total > 0 ? 1000 * moment / total : 0), findings);
    }

    public static Working Work(Layup layup)
    {
        var steps = new List<WorkingStep>();
        foreach (var ply in layup.Plies)
        {
            if (ply.Fit is { } fit)
            {
                var braid = fit.Braid;
                steps.Add(new(
                    $"Angle of {braid.Name}", @"\sin\theta = \frac{D}{D_0}\,\sin\theta_0",
                    $"{Mm(ply.InnerDiameter)} / {Mm(braid.NominalDiameter)} × sin {braid.NominalAngle.Show()}", $"{fit.Angle.Show()}",
                        VesselSources.Braiding));
                steps.Add(new(
                    $"Areal weight of {braid.Name}", @"w = \frac{N\,\lambda}{\pi D\cos\theta}",
                    $"{braid.Carriers} × {Digits.Round(braid.Yarn.Value.KilogramsPerMeter * 1e6)} tex / (π × "
                        + $"{Mm(ply.InnerDiameter + ply.Thickness)} × cos {fit.Angle.Show()})",
                    ply.ArealWeight.Show(), VesselSources.Braiding));
            }

            if (FibreOf(ply.Ply) is { } fibre)
            {
                steps.Add(new(
                    $"Thickness of {ply.Ply.Name}", @"t = \frac{w}{\rho_f\,V_f}",
                        $"{ply.ArealWeight.Show()} / ({fibre.Density.Value.Show(4)} × {ply.FibreFraction.Show()})",
                    Mm(ply.Thickness), new Source("", "mass of fibre over density and volume fraction", null)));
            }
        }

        return new Working(layup.Title, steps);
    }

    public static Fibre? FibreOf(Ply ply) => ply switch
    {
        BraidedSleeve sleeve => sleeve.Braid.Fibre,
        ClothWrap wrap => wrap.Cloth.Fibre,
        HoopWrap hoop => hoop.Tape.Fibre,
        _ => null,
    };

    private static PlyGeometry LayPly(PressureVessel vessel, Ply ply, Length under)
    {
        var fraction = ply.FibreFraction ?? vessel.Fabrication.FibreFraction;
        var resin = vessel.Resin.Density.Value.KilogramsPerCubicMeter;
        var d = under.Meters;
        var length = WallLength(vessel).Meters;
        switch (ply)
        {
            case BraidedSleeve sleeve:
            {
                var braid = sleeve.Braid;
                var fit = SleeveFit.Fit(braid, under);
                var fibre = braid.Fibre.Density.Value.KilogramsPerCubicMeter;
                var perLength = PlyThickness.SleeveMass(fit);
                var thickness = PlyThickness.Of(fit, fraction);
                var covered = length + vessel.NozzleEnd.SleeveReach(vessel.Liner.Bore).Meters
                    + vessel.ForwardEnd.SleeveReach(vessel.Liner.Bore).Meters;
                var mass = perLength * covered;
                return new PlyGeometry(
                    ply, under, fit.Angle, $"±{fit.Angle.Show()}", Millimetres(thickness),
                        AreaDensity.FromGramsPerSquareMeter(1000 * perLength / (Math.PI * (d + thickness))), fraction,
                    Millimetres(covered / fit.LengthFactor), null, Grams(mass), Grams(Resin(mass, fibre, fraction, resin)), fit,
                        FindFit(fit));
            }

            case ClothWrap wrap:
            {
                var fibre = wrap.Cloth.Fibre.Density.Value.KilogramsPerCubicMeter;
                var weight = wrap.Cloth.ArealWeight.Value.KilogramsPerSquareMeter;
                var thickness = PlyThickness.Of(wrap, fraction);
                var around = wrap.Turns * Math.PI * (d + thickness) + wrap.Overlap.Meters;
                var mass = weight * around * length;
                return new PlyGeometry(
                    ply, under, wrap.Lay == ClothLay.Bias ? Angle.FromDegrees(45) : null, wrap.Lay == ClothLay.Bias ? "±45°" : "0°/90°",
                    Millimetres(thickness), AreaDensity.FromGramsPerSquareMeter(1000 * wrap.Turns * weight), fraction, Millimetres(length),
                        Millimetres(around),
                    Grams(mass), Grams(Resin(mass, fibre, fraction, resin)), null, FindOverlap(vessel, wrap));
            }

            case HoopWrap hoop:
            {
                var fibre = hoop.Tape.Fibre.Density.Value.KilogramsPerCubicMeter;
                var weight = hoop.Tape.ArealWeight.Value.KilogramsPerSquareMeter;
                var thickness = PlyThickness.Of(hoop, fraction);
                var area = Math.PI * (d + thickness) * length * hoop.Layers;
                var angle = Angle.FromDegrees(hoop.AngleRadians(d) * 180 / Math.PI);
                return new PlyGeometry(
                    ply, under, angle, $"±{angle.Show()}", Millimetres(thickness),
                        AreaDensity.FromGramsPerSquareMeter(1000 * hoop.Layers * weight), fraction,
                    Millimetres(area / hoop.Tape.RollWidth.Meters), null, Grams(weight * area),
                        Grams(Resin(weight * area, fibre, fraction, resin)), null,
                    hoop.Layers % 2 == 0 ? [] : [VesselsFindings.OddLayersLeaveTwist(ply.Name, hoop.Layers)]);
            }

            default:
            {
                var veil = (VeilWrap)ply;
                var fibre = veil.Veil.FibreDensity.Value.KilogramsPerCubicMeter;
                var weight = veil.Turns * veil.Veil.ArealWeight.Value.KilogramsPerSquareMeter;
                var own = PlyThickness.FractionOf(veil);
                var thickness = PlyThickness.Of(veil);
                var mass = weight * Math.PI * (d + thickness) * length;
                return new PlyGeometry(
                    ply, under, null, "no strength counted", Millimetres(thickness), AreaDensity.FromGramsPerSquareMeter(1000 * weight),
                        own, Millimetres(length),
                    Millimetres(veil.Turns * Math.PI * (d + thickness)), Grams(mass), Grams(Resin(mass, fibre, own, resin)), null, []);
            }
        }
    }

    /// <summary>
    /// Shear in the overlap while one layer of cloth pulls around as hard as its fibres can: σ_f η w_h/ρ_f over the overlap's length.
    /// Source: balance of forces; the mean over the length, its ends shear more.
    /// </summary>
    private static List<Finding> FindOverlap(PressureVessel vessel, ClothWrap wrap)
    {
        var cloth = wrap.Cloth;
        var warp = cloth.WarpShare.DecimalFractions;
        // On the bias both directions pull, each with the square of cos 45° around.
        var around = wrap.Lay switch { ClothLay.WarpAxial => 1 - warp, ClothLay.WarpAround => warp, _ => 0.5 };
        var pull = cloth.Fibre.TensileStrength.Value.Pascals * vessel.Fabrication.Efficiency.DecimalFractions * around
            * cloth.ArealWeight.Value.KilogramsPerSquareMeter / cloth.Fibre.Density.Value.KilogramsPerCubicMeter;
        var resin = vessel.Resin.ShearStrength.Value;
        var needed = Length.FromMillimeters(1000 * pull / resin.Pascals);
        if (wrap.Overlap >= OverlapReserve * needed) return [];
        return [VesselsFindings.LapIsShort(
            wrap.Name, wrap.Overlap, pull, resin, Length.FromMillimeters(Math.Ceiling(OverlapReserve * needed.Millimeters)), OverlapReserve,
            wrap.Overlap < needed)];
    }

    private static List<Finding> FindFit(SleeveFit fit)
    {
        var findings = new List<Finding>();
        if (fit.IsJammed)
        {
            findings.Add(fit.FreeDiameters is { } free
                ? VesselsFindings.BraidIsJammed(
                    fit.Braid.Name, fit.Angle, Mm(fit.YarnPitch), Mm(fit.Braid.YarnWidth.Value), Mm(free.Smallest), Mm(free.Largest))
                : VesselsFindings.BraidIsJammedAtEveryAngle(fit.Braid.Name, fit.Braid.Carriers, Mm(fit.Braid.YarnWidth.Value)));
        }

        if (fit.Coverage.Percent < 90)
            findings.Add(VesselsFindings.BraidLeavesGaps(fit.Braid.Name, fit.Coverage, Mm(fit.Diameter)));
        return findings;
    }

    private static double Resin(double fibreMass, double fibreDensity, Ratio fraction, double resinDensity) =>
        fibreMass / fibreDensity * (1 - fraction.DecimalFractions) / fraction.DecimalFractions * resinDensity;

    private static Length Millimetres(double metres) => Length.FromMillimeters(1000 * metres);

    private static Mass Grams(double kilograms) => Mass.FromGrams(1000 * kilograms);

    private static string Mm(Length length) => length.ToUnit(LengthUnit.Millimeter).Show();
}
