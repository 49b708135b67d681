using NotebookKit.Numerics.Ode;
using NotebookKit.Propulsion.Flow;
using NotebookKit.Propulsion.Phases;

namespace NotebookKit.Propulsion.Firings;

/// <summary>Fires with all states recorded, and turns them into rows when those are asked for.</summary>
internal struct FiringRows<TMount>(OdeSettings settings) : IFiringRunner<TMount>
    where TMount : struct, IMount
{
    private const int PointsPerStep = 4;

    public FiringEnd End = new();

    /// <summary>Writes the rows.</summary>
    public Action<List<FiringRow>>? Writer;

    public void Run<TAir>(in FiringSetup setup, TMount mount, TAir air)
        where TAir : struct, IAirPhase<TAir>
    {
        // The budget behind each phase's unknowns is wanted at its end alone.
        var tube = new TrajectoryBuilder(TubePhase<TMount>.Core);
        var start = new TrajectoryBuilder(StartPhase<TMount>.Core);
        var water = new TrajectoryBuilder(WaterPhase<TMount>.Core);
        var gas = new TrajectoryBuilder(air.Core);
        var observers = new FiringObservers<TrajectoryRecorder>
        {
            Tube = new(tube, PointsPerStep), Start = new(start, PointsPerStep), Water = new(water, PointsPerStep),
                Air = new(gas, PointsPerStep),
        };
        Firing.Run(setup, mount, air, ref observers, withLedger: true, settings, ref End);

        End.Available = setup.ClosedGas.Available(setup.PressurePa - setup.GaugePa);
        var (fired, own) = (this, setup);
        Writer = rows => fired.Write(rows, own, mount, air, tube, start, water, gas);
    }

    private readonly void Write<TAir>(List<FiringRow> rows, in FiringSetup setup, TMount mount, TAir air, TrajectoryBuilder tube,
        TrajectoryBuilder start, TrajectoryBuilder water, TrajectoryBuilder gas)
        where TAir : struct, IAirPhase<TAir>
    {
        var expansion = setup.ClosedGas;
        AddTube(rows, setup, expansion, mount, tube);
        var aboard = expansion.ForStartVolume(setup.StartM3 * setup.AboardShare);
        if (End.HadWater) AddWater(rows, setup, aboard, mount, start, water);
        if (End.HadAir) AddAir(rows, air.Carrying(End.WaterLeftKg, false), setup, aboard, gas);
    }

    private static void AddTube(List<FiringRow> rows, in FiringSetup setup, ClosedGasLaw expansion, TMount mount, TrajectoryBuilder tube)
    {
        if (tube.Count == 0) return;
        var phase = Firing.TubePhaseOf(setup, expansion, mount, withLedger: false);
        Span<double> slope = stackalloc double[2];
        Span<double> y = [0, 0];
        for (var i = -1; i < tube.Count; i++)
        {
            if (i >= 0) tube.State(i)[..2].CopyTo(y);
            phase.Derivatives(0, y, slope);
            rows.Add(new(
                FiringStage.Tube, i < 0 ? 0 : tube.Time(i), y[0], y[1], slope[1], phase.Thrust(y), phase.Pressure(y[0]),
                    phase.Temperature(y[0]),
                setup.WaterKg, setup.StartGasKg, 0));
        }
    }

    private readonly void AddWater(List<FiringRow> rows, in FiringSetup setup, ClosedGasLaw expansion, TMount mount,
        TrajectoryBuilder start, TrajectoryBuilder water)
    {
        var phase = Firing.WaterPhaseOf(setup, expansion, mount, withLedger: false);
        Span<double> slope = stackalloc double[WaterPhase<TMount>.Core];
        Span<double> first = [setup.TubeStrokeM, double.IsNaN(End.TubeEndTime) ? 0 : End.TubeEndSpeed, setup.GasM3, 0];
        for (var i = -1; start.Count > 0 && i < start.Count; i++)
        {
            var y = i < 0 ? first : start.State(i);
            phase.Starting(y[0], y[1], y[2], y[3], out var now);
            var acceleration = mount.IsHeld ? 0 : (now.Thrust - now.Drag) / now.Mass - mount.Gravity;
            rows.Add(new(
                i < 0 || start.Time(i) < End.EstablishedTime ? FiringStage.Start : FiringStage.Water,
                    i < 0 ? End.JetStartTime : start.Time(i), y[0], y[1], acceleration, now.Thrust, now.Pressure,
                    expansion.Temperature(y[2]),
                phase.WaterKg(y[2]), setup.GasKg, y[3] * setup.WaterJet.JetAreaM2 * phase.Density));
        }

        if (start.Count > 0) start.State(start.Count - 1)[..3].CopyTo(first);
        for (var i = -1; water.Count > 0 && i < water.Count; i++)
        {
            var y = i < 0 ? first[..3] : water.State(i)[..3];
            phase.Derivatives(0, y, slope);
            phase.Jet(y, out var pressure, out var thrust);
            rows.Add(new(
                FiringStage.Water, i < 0 ? End.HandOverTime : water.Time(i), y[0], y[1], slope[1], thrust, pressure,
                    expansion.Temperature(y[2]),
                phase.WaterKg(y[2]), setup.GasKg, slope[2] * phase.Density));
        }
    }

    private readonly void AddAir<TAir>(List<FiringRow> rows, TAir phase, in FiringSetup setup, ClosedGasLaw closed, TrajectoryBuilder gas)
        where TAir : struct, IAirPhase<TAir>
    {
        Span<double> slope = stackalloc double[phase.Core];
        Span<double> first = stackalloc double[phase.Core];
        first[0] = End.HadWater ? End.WaterOutHeight : setup.TubeStrokeM;
        first[1] = End.HadWater ? End.WaterOutSpeed : End.TubeEndSpeed;
        var volume = End.HadWater ? End.WaterOutVolume : setup.GasM3;
        phase.Begin(first, setup.GasKg, closed.Pressure(volume), closed.Temperature(volume));
        for (var i = -1; i < gas.Count; i++)
        {
            var y = i < 0 ? first : gas.State(i)[..phase.Core];
            phase.Derivatives(0, y, slope);
            var flow = phase.MassFlow(y, out var thrust);
            var time = i >= 0 ? gas.Time(i) : End.HadWater ? End.WaterOutTime : End.JetStartTime;
            rows.Add(new(
                FiringStage.Gas, time, y[0], y[1], slope[1], thrust, phase.Pressure(y), phase.Temperature(y), End.WaterLeftKg, y[2], flow));
        }
    }
}
