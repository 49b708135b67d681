using NotebookKit.Provenance;
using NotebookKit.Quantities;
using NotebookKit.Vessels.Design;
using NotebookKit.Vessels.Ends;
using NotebookKit.Vessels.Laminates;
using NotebookKit.Vessels.Laying;
using NotebookKit.Vessels.Shells;
using UnitsNet;
using UnitsNet.Units;

namespace NotebookKit.Vessels.Bursting;

/// <summary>Breaks a vessel: its wall ply by ply, its ends part by part.</summary>
internal static class BurstModel
{
    public static LayerFactors MeanFactors(PressureVessel vessel) => new(vessel.Fabrication.Efficiency.DecimalFractions);

    public static BurstPrediction Predict(PressureVessel vessel, Layup layup, FailureCriterion criterion)
    {
        var wall = new VesselWall(layup);
        var engine = wall.NewEngine();
        wall.Set(engine, MeanFactors(vessel), criterion);
        var trace = new List<WallEvent>(8);
        var outcome = engine.Run(trace);
        var layers = engine.Layers.ToArray();
        var verdict = Judge(wall, engine, criterion, MeanFactors(vessel), outcome, layers);
        if (verdict.Without.Count > 0) trace.Add(new WallEvent(verdict.Outcome.BurstLineLoad, verdict.Outcome.Mode, verdict.Outcome.Ply));
        var context = wall.Context(layers);
        var sure = Math.Min(EndModel.SurePascals(vessel.NozzleEnd, context), EndModel.SurePascals(vessel.ForwardEnd, context));
        return new BurstPrediction(layup, criterion, wall, layers, verdict, trace, Ends(vessel, context), sure);
    }

    /// <summary>The most that the wall holds, whole or with some of its plies counted as carrying nothing.</summary>
    private static WallVerdict Judge(VesselWall wall, WallEngine engine, FailureCriterion criterion, in LayerFactors factors,
        in WallOutcome whole, ReadOnlySpan<WallLayer> layers)
    {
        var netting = NettingPascals(layers, wall);
        var best = new WallVerdict(whole, LowOf(wall, engine, criterion, factors, whole, netting, 0), netting,
            IsLeaning(whole, netting, wall), []);
        for (var i = 0; i < wall.Inner.Count; i++)
        {
            var inner = wall.Inner[i];
            inner.Set(engine, factors, criterion);
            var ownNetting = NettingPascals(engine.Layers, inner);
            var needed = ownNetting > best.LowPascals ? 0 : best.Outcome.BurstLineLoad / wall.Radius;
            var outcome = engine.Run(null, needed * inner.Radius);
            var low = Math.Max(best.LowPascals, LowOf(inner, engine, criterion, factors, outcome, ownNetting, best.LowPascals));
            netting = Math.Max(netting, ownNetting);
            if (outcome.BurstLineLoad / inner.Radius > best.Outcome.BurstLineLoad / wall.Radius)
            {
                var isLeaning = IsLeaning(outcome, ownNetting, inner);
                outcome.BurstLineLoad *= wall.Radius / inner.Radius;
                outcome.FirstPlyFailureLineLoad = whole.FirstPlyFailureLineLoad;
                best = new WallVerdict(outcome, low, netting, isLeaning, [.. wall.Plies.Except(inner.Plies)]);
            }
            else
            {
                best = best with { LowPascals = low, NettingPascals = netting };
            }
        }

        return best;
    }

    /// <summary>What a wall may be rated on [Pa]; not followed further where it can't come above a value.</summary>
    private static double LowOf(VesselWall wall, WallEngine engine, FailureCriterion criterion, in LayerFactors factors,
        in WallOutcome outcome, double nettingPascals, double beyond)
    {
        var most = LowPascals(wall, outcome, null, nettingPascals);
        if (!wall.LeansOnPlastic || most <= beyond) return most;
        wall.SetWithoutLiner(engine, factors, criterion);
        return LowPascals(wall, outcome, engine.Run(), nettingPascals);
    }

    /// <summary>
    /// Plies beneath a sleeve without which the vessel would hold more, since they widen the sleeve: the ply, what lies over it, and the
    /// vessel without it.
    /// </summary>
    public static IEnumerable<(int Ply, PlyGeometry Widened, BurstPrediction Without)> Widening(BurstPrediction prediction)
    {
        var (vessel, layup) = (prediction.Vessel, prediction.Layup);
        for (var i = 0; i < layup.Plies.Count - 1; i++)
        {
            if (layup.Plies.Skip(i + 1).FirstOrDefault(p => p.Fit is not null) is not { } widened) continue;
            Numerics.WorkRun.Current.ThrowIfStopped();
            var without = vessel with { Plies = [.. vessel.Plies.Where((_, k) => k != i)] };
            var findings = without.Validate();
            if (findings.Any(f => f.Severity == FindingSeverity.Error)) continue;
            var alone = Predict(without, LayupModel.Lay(without, findings), prediction.Criterion);
            // Under a thousandth nobody would lay it elsewhere.
            if (alone.Burst > 1.001 * prediction.Burst || alone.Low > 1.001 * prediction.Low) yield return (i, widened, alone);
        }
    }

    /// <summary>Netting analysis of the wall, with a metal liner at its yield; a plastic one isn't counted [Pa]. 0 without plies.</summary>
    public static double NettingPascals(ReadOnlySpan<WallLayer> layers, VesselWall wall) =>
        layers.Length == 0 ? 0 : WallFailure.NettingLoad(layers, WallLoad.ClosedTube, wall.MetalLinerForce) / wall.Radius;

    /// <summary>What a wall may be rated on [Pa]: its burst, less where netting or the fibres without a plastic liner hold less.</summary>
    public static double LowPascals(VesselWall wall, in WallOutcome outcome, in WallOutcome? withoutLiner, double nettingPascals)
    {
        var burst = outcome.BurstLineLoad / wall.Radius;
        if (wall.Count == 0) return burst;
        return Math.Min(Math.Min(burst, nettingPascals), withoutLiner is { } alone ? alone.BurstLineLoad / wall.Radius : burst);
    }

    /// <summary>The same for a sample, both ends of its band [Pa]; the engine is left with the whole wall in it.</summary>
    public static (double Low, double High) Band(VesselWall wall, WallEngine engine, in LayerFactors factors, double linerFactor = 1)
    {
        double low = 0, high = 0;
        foreach (var inner in wall.Inner)
        {
            var (innerLow, innerHigh) = BandOfOne(inner, engine, factors, linerFactor, low, high);
            (low, high) = (Math.Max(low, innerLow), Math.Max(high, innerHigh));
        }

        var (wholeLow, wholeHigh) = BandOfOne(wall, engine, factors, linerFactor, low, high);
        return (Math.Max(low, wholeLow), Math.Max(high, wholeHigh));
    }

    /// <summary>The same of one wall, its inner ones not looked at; not followed further where neither end can come above what is
    /// known.</summary>
    public static (double Low, double High) BandOfOne(VesselWall wall, WallEngine engine, in LayerFactors factors, double linerFactor = 1,
        double low = 0, double high = 0)
    {
        wall.Set(engine, factors, FailureCriterion.MaximumStress, linerFactor);
        var netting = NettingPascals(engine.Layers, wall);
        var outcome = engine.Run(null, netting > low ? 0 : high * wall.Radius);
        var most = LowPascals(wall, outcome, null, netting);
        if (!wall.LeansOnPlastic || most <= low) return (most, outcome.BurstLineLoad / wall.Radius);
        wall.SetWithoutLiner(engine, factors, FailureCriterion.MaximumStress);
        return (LowPascals(wall, outcome, engine.Run(), netting), outcome.BurstLineLoad / wall.Radius);
    }

    /// <summary>Whether the wall leans on more than its fibres as laid and its liner.</summary>
    public static bool IsLeaning(in WallOutcome outcome, double nettingPascals, VesselWall wall) =>
        wall.Count > 0 && WallFailure.IsLeaning(outcome, nettingPascals * wall.Radius);

    /// <summary>Bursts and leaks of both ends.</summary>
    public static List<PartMargin> Ends(PressureVessel vessel, in EndContext context)
    {
        var parts = new List<PartMargin>(12);
        foreach (var mode in EndModel.Modes(vessel.NozzleEnd, context)) parts.Add(Margin("nozzle end", mode));
        foreach (var mode in EndModel.Modes(vessel.ForwardEnd, context)) parts.Add(Margin("forward end", mode));
        return parts;
    }

    /// <summary>First yield of the closures of both ends and of their rims.</summary>
    public static List<PartMargin> Yields(PressureVessel vessel)
    {
        var bore = vessel.Liner.Bore.Meters;
        return
        [
            .. EndModel.Yields(vessel.NozzleEnd, bore).Select(m => Margin("nozzle end", m)),
            .. EndModel.Yields(vessel.ForwardEnd, bore).Select(m => Margin("forward end", m)),
        ];
    }

    private static PartMargin Margin(string end, in EndMode mode) =>
        new($"{end}, {mode.Name}", GaugePressure.FromPascals(mode.Pascals), mode.Cause) { Kind = mode.Kind };

    public static CrossChecks Check(BurstPrediction prediction)
    {
        var wall = prediction.Wall;
        double strength, inner, outer;
        if (prediction.Layers.Length == 0)
        {
            strength = wall.Liner.YieldStrength;
            (inner, outer) = (wall.InnerRadius, wall.OuterRadius);
        }
        else
        {
            double u1 = 0, u4 = 0, strain = double.PositiveInfinity, thickness = 0;
            foreach (var l in prediction.Layers)
            {
                var q = PlaneStiffness.Of(l.E1, l.E2, l.G12, l.Nu12);
                u1 += (3 * q.S11 + 3 * q.S22 + 2 * q.S12 + 4 * q.S66) / 8 * l.Thickness;
                u4 += (q.S11 + q.S22 + 6 * q.S12 - 4 * q.S66) / 8 * l.Thickness;
                strain = Math.Min(strain, l.Strength.Xt / l.E1);
                thickness += l.Thickness;
            }

            strength = (u1 * u1 - u4 * u4) / u1 / thickness * strain;
            inner = wall.Radius - thickness / 2;
            outer = wall.Radius + thickness / 2;
        }

        var stress = Pressure.FromMegapascals(strength / 1e6);
        return new CrossChecks(
            prediction.Netting,
            ThinCylinder.PressureFor(stress, Length.FromMeters(2 * inner), Length.FromMeters(outer - inner)),
            ThickCylinder.PressureFor(stress, Length.FromMeters(inner), Length.FromMeters(outer)),
            stress);
    }

    public static Working Work(BurstPrediction prediction)
    {
        var vessel = prediction.Vessel;
        var wall = prediction.Wall;
        var radius = $"{Digits.Round(1000 * wall.Radius)} mm";
        var steps = new List<WorkingStep>();
        for (var i = 0; i < prediction.Layers.Length; i++) AddPly(steps, prediction, prediction.Layers[i]);
        if (prediction.Layers.Length > 0)
        {
            var load = prediction.WallBurst.AsDifference().ToUnit(PressureUnit.Megapascal);
            steps.Add(new(
                "Mean hoop stress in the plies at the wall's burst", @"\sigma_h = \frac{p\,R}{t}",
                    $"{load.Show()} × {radius} / {Digits.Round(1000 * wall.Thickness)} mm",
                Pressure.FromMegapascals(prediction.WallBurst.Pascals * wall.Radius / wall.Thickness / 1e6).Show(),
                    VesselSources.ThinWall));
            steps.Add(new(
                "Netting analysis", @"p = \frac{1}{R}\min\left(\sum\sigma_f t_f\sin^2\theta,\ 2\sum\sigma_f t_f\cos^2\theta\right)",
                string.Join(" + ", prediction.Layers.Select(l => $"{Digits.Round(l.NettingStrength * l.Thickness / 1000)} N/mm at "
                    + $"{Digits.Round(l.Angle * 180 / Math.PI)}°"))
                + (wall.MetalLinerForce > 0 ? $", {Digits.Round(wall.MetalLinerForce / 1000)} N/mm of metal liner at its yield" : "")
                    + $", R = {radius}",
                prediction.Netting.ToString(), VesselSources.Netting));
        }

        foreach (var step in prediction.Steps)
            steps.Add(new(Words(step.Mode), @"p = N_h/R", $"{step.Ply}, {prediction.Criterion}", step.Pressure.ToString(),
                VesselSources.Jones));
        var context = wall.Context(prediction.Layers);
        AddEnd("Nozzle end", vessel.NozzleEnd);
        AddEnd("Forward end", vessel.ForwardEnd);
        steps.Add(new("Weakest part", @"p_b = \min_i p_i", string.Join("; ",
            prediction.Parts.Select(p => $"{p.Name} {Digits.Round(p.Burst.Bar)} bar")), prediction.Burst.ToString(),
            VesselSources.Equilibrium));
        return new Working(prediction.Title, steps);

        void AddEnd(string name, VesselEnd end)
        {
            foreach (var mode in EndModel.Yields(end, vessel.Liner.Bore.Meters).Concat(EndModel.Modes(end, context)))
            {
                steps.Add(new($"{name}: {mode.Name}", mode.Formula,
                    $"{mode.Cause}; {end.Closure.Material.YieldStrength.Value.Show()}, wall {end.Closure.Wall.Show()}, bore "
                        + $"{vessel.Liner.Bore.Show()}",
                    GaugePressure.FromPascals(mode.Pascals).ToString(), mode.Source));
            }

            steps.Add(new($"{name}: thrust at the burst", @"F = p\,\frac{\pi d^2}{4}",
                $"{prediction.Burst} × π/4 × ({vessel.Liner.Bore.Show()})²",
                Force.FromNewtons(prediction.Burst.Pascals * Math.PI / 4 * context.Bore * context.Bore).Show(), VesselSources.Equilibrium));
            foreach (var joint in end.Joints) steps.AddRange(joint.Work(context).Select(s => s with { What = $"{name}: {s.What}" }));
            steps.AddRange(EndChecks.Work(end, context, prediction.Layup.Plies.FirstOrDefault(p => p.Fit is not null)?.Angle)
                .Select(s => s with { What = $"{name}: {s.What}" }));
        }
    }

    private static void AddPly(List<WorkingStep> steps, BurstPrediction prediction, in WallLayer layer)
    {
        var ply = prediction.Layup.Plies[layer.Ply];
        if (LayupModel.FibreOf(ply.Ply) is not { } fibre) return;
        var resin = prediction.Vessel.Resin;
        var vf = ply.FibreFraction.DecimalFractions;
        var name = $"{prediction.Layup.NameOf(layer.Ply)} at {Digits.Round(layer.Angle * 180 / Math.PI)}°";
        steps.Add(new(
            $"Stiffness along the fibres, {name}", @"E_1 = E_f V_f + E_m (1-V_f)",
            $"{fibre.LongitudinalModulus.Value.Show()} × {Digits.Round(vf)} + {resin.Modulus.Value.Show()} × {Digits.Round(1 - vf)}",
                Gpa(layer.E1), VesselSources.Kaw with { Where = "Eq. 3.34" }));
        steps.Add(new(
            $"Strength along the fibres, {name}", @"X_t = \eta\,\sigma_f\left(V_f + \frac{E_m}{E_f}(1-V_f)\right)",
            $"{prediction.Vessel.Fabrication.Efficiency.Show()} × {fibre.TensileStrength.Value.Show()} × ({Digits.Round(vf)} + "
                + $"{Digits.Round(resin.Modulus.Value / fibre.LongitudinalModulus.Value)} × {Digits.Round(1 - vf)})",
            Mpa(layer.Strength.Xt), VesselSources.Kaw with { Where = "Eq. 3.163, with the fabrication efficiency" }));
        steps.Add(new(
            $"Stiffness across and in shear, {name}", @"E_2 = \frac{E_m}{1-\sqrt{V_f}\,(1-E_m/E_{2f})},\quad G_{12} = "
                + @"\frac{G_m}{1-\sqrt{V_f}\,(1-G_m/G_f)}",
            $"Em {resin.Modulus.Value.Show()}, E2f {fibre.TransverseModulus.Value.Show()}, Gf {fibre.ShearModulus.Value.Show()}, Vf "
                + $"{Digits.Round(vf)}",
            $"{Gpa(layer.E2)}, {Gpa(layer.G12)}", VesselSources.Chamis));
    }

    private static string Words(FailureMode mode) => mode switch
    {
        FailureMode.Matrix => "Resin cracks",
        FailureMode.FibreTension => "Fibres break",
        FailureMode.FibreCompression => "Fibres buckle",
        FailureMode.LinerYield => "Liner yields",
        FailureMode.LinerTear => "Liner tears",
        _ => "Wall bulges without end",
    };

    private static string Mpa(double pascals) => Pressure.FromMegapascals(pascals / 1e6).Show();

    private static string Gpa(double pascals) => Pressure.FromGigapascals(pascals / 1e9).Show();
}
