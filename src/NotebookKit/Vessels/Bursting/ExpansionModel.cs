using NotebookKit.Provenance;
using NotebookKit.Quantities;
using NotebookKit.Vessels.Design;
using NotebookKit.Vessels.Laminates;
using NotebookKit.Vessels.Laying;
using UnitsNet;

namespace NotebookKit.Vessels.Bursting;

/// <summary>Holds a vessel at a pressure and reads its strain.</summary>
internal static class ExpansionModel
{
    public static VesselExpansion At(PressureVessel vessel, Layup layup, GaugePressure pressure)
    {
        var wall = new VesselWall(layup);
        var engine = wall.NewEngine();
        wall.Set(engine, BurstModel.MeanFactors(vessel), FailureCriterion.MaximumStress);
        var trace = new List<WallEvent>();
        var burst = engine.Run(trace).BurstLineLoad / wall.Radius;
        // Where the plies alone hold more than with a stiff ply over them that breaks first, they are followed once it has.
        var most = burst;
        foreach (var inner in wall.Inner.TakeWhile(_ => pressure.Pascals >= burst))
        {
            wall = inner;
            wall.Set(engine, BurstModel.MeanFactors(vessel), FailureCriterion.MaximumStress);
            trace.Clear();
            burst = engine.Run(trace).BurstLineLoad / wall.Radius;
            most = Math.Max(most, burst);
        }

        if (!(pressure.Pascals >= 0 && pressure.Pascals < burst))
        {
            throw new OutOfRangeException("pressure", pressure.ToString(), "0 bar gauge", $"below {GaugePressure.FromPascals(most)}",
                "The wall bursts there by this prediction.");
        }

        var load = pressure.Pascals * wall.Radius;
        var sound = trace[0].LineLoad >= load;
        WallState state;
        if (sound) state = engine.Sound(load);
        else if (!engine.TryHold(load, out state)) throw new OutOfRangeException("pressure", pressure.ToString(), "0 bar gauge",
            $"below {GaugePressure.FromPascals(burst)}", "The wall bursts there by this prediction.");

        var plies = new List<PlyLoading>();
        for (var i = 0; i < wall.Count; i++)
        {
            var layer = engine.Layers[i];
            var (along, across, shear) = engine.Stress(i, state);
            var use = along >= 0 ? along / layer.Strength.Xt : -along / layer.Strength.Xc;
            plies.Add(new PlyLoading(
                layup.NameOf(layer.Ply), Angle.FromDegrees(layer.Angle * 180 / Math.PI),
                new PlyStress(Mpa(along), Mpa(across), Mpa(shear)), Ratio.FromPercent(100 * use), engine.IsCracked(i)));
        }

        var steps = trace.Where(e => e.LineLoad < load).Select(e => new BurstStep(
            GaugePressure.FromPascals(e.LineLoad / wall.Radius), e.Mode,
            e.Mode is FailureMode.LinerYield or FailureMode.LinerTear ? "liner" : e.Ply >= 0 ? layup.NameOf(e.Ply) : "wall"));
        return new VesselExpansion(vessel, pressure, TubeStrain.Of(state.Hoop, state.Axial), plies, sound, [.. steps],
            ForcePerLength.FromNewtonsPerMeter(load));
    }

    private static Pressure Mpa(double pascals) => Pressure.FromMegapascals(pascals / 1e6);
}
