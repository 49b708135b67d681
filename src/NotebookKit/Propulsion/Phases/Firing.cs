using NotebookKit.Numerics.Ode;
using NotebookKit.Propulsion.Flow;

namespace NotebookKit.Propulsion.Phases;

/// <summary>
/// Runs the phases on a mount: launch tube, start of the jet, water, gas. The same code fires a vessel on a stand and carries one up.
/// Allocates nothing unless an observer does.
/// </summary>
internal static class Firing
{
    /// <summary>Far longer than any vessel of this trade takes to empty [s].</summary>
    public const double LongestS = 36_000;

    /// <summary>
    /// Jet over bore area from which the lag of the column is no longer small beside the emptying: lag over emptying time is 2 φ², and the
    /// established jet is good to its third power.
    /// </summary>
    private const double WideNozzle = 0.05;

    /// <summary>Share of the water that is left to the established jet behind a wide nozzle, where the equation turns singular.</summary>
    private const double LastWater = 1e-4;

    /// <summary>Fires from rest at height 0.</summary>
    public static void Run<TMount, TAir, TObserver>(
        in FiringSetup setup, TMount mount, TAir air, ref FiringObservers<TObserver> observers,
        bool withLedger, OdeSettings settings, ref FiringEnd end)
        where TMount : struct, IMount
        where TAir : struct, IAirPhase<TAir>
        where TObserver : struct, IOdeObserver
    {
        var expansion = setup.ClosedGas;
        end.EndPressure = setup.PressurePa;
        end.EndTemperature = setup.TemperatureK;
        if (setup.TubeStrokeM > 0)
        {
            Tube(setup, expansion, mount, ref observers.Tube, withLedger, settings, ref end);
            if (end.Failed) return;
            if (end.TopReached)
            {
                StopOnTube(setup, expansion, ref end);
                return;
            }
        }

        end.EndGasKg = setup.GasKg;
        end.JetStartTime = end.EstablishedTime = end.HandOverTime = end.EndTime;
        var aboard = expansion.ForStartVolume(setup.StartM3 * setup.AboardShare);
        if (setup.HasWater)
        {
            Water(setup, aboard, mount, ref observers, withLedger, settings, ref end);
            if (end.Failed) return;
        }

        Span<double> start = stackalloc double[air.Core];
        start[0] = end.EndHeight;
        start[1] = end.EndSpeed;
        air.Begin(start, end.EndGasKg, end.EndPressure, end.EndTemperature);
        // Gas that stays beside water has the water's room to spare: its energy isn't that of a vessel full of gas.
        end.StartEnergy = end.WaterLeftKg > 0 ? ClosedEnergy(setup, aboard, setup.GasKg, end.WaterOutVolume) : air.InternalEnergy(start);
        end.EndEnergy = end.StartEnergy;
        // On a launch tube all gas works; what a hollow tube held stays behind after.
        end.ClosedEnergyGivenUp = aboard.EnergyGivenUp(end.HadWater ? end.WaterOutVolume : setup.GasM3)
            + (setup.TubeHollowM3 > 0 ? expansion.EnergyGivenUp(setup.GasM3 + setup.TubeHollowM3) - aboard.EnergyGivenUp(setup.GasM3) : 0);
        if (end.TopReached || end.WaterSpent) return;
        Air(setup, air.Carrying(end.WaterLeftKg, withLedger), start, ref observers.Air, settings, ref end);
    }

    /// <summary>A vehicle that comes to rest on its tube: nothing has left it.</summary>
    private static void StopOnTube(in FiringSetup setup, ClosedGasLaw expansion, ref FiringEnd end)
    {
        var volume = setup.StartM3 + setup.TubeAreaM2 * end.EndHeight;
        end.StoppedOnTube = true;
        end.EndGasKg = setup.StartGasKg;
        end.WaterLeftKg = setup.WaterKg;
        end.StartEnergy = end.EndEnergy = ClosedEnergy(setup, expansion, setup.StartGasKg, volume);
        end.ClosedEnergyGivenUp = expansion.EnergyGivenUp(volume);
    }

    /// <summary>Internal energy [J] of the closed gas at a volume, on the zero of the phase that lets it out.</summary>
    private static double ClosedEnergy(in FiringSetup setup, ClosedGasLaw law, double kilograms, double volumeM3) =>
        setup.Tables.Gas is null
            ? law.Pressure(volumeM3) * volumeM3 / (setup.Gamma - 1)
            : kilograms * setup.Tables.StartEnergy - law.EnergyGivenUp(volumeM3);

    public static WaterPhase<TMount> WaterPhaseOf<TMount>(in FiringSetup setup, ClosedGasLaw expansion, TMount mount, bool withLedger)
        where TMount : struct, IMount =>
        new(setup.WaterJet, expansion, mount, setup.ChamberM3, setup.GasKg, setup.Mode, withLedger);

    public static TubePhase<TMount> TubePhaseOf<TMount>(in FiringSetup setup, ClosedGasLaw expansion, TMount mount, bool withLedger)
        where TMount : struct, IMount =>
        new(expansion, mount, setup.StartM3, setup.TubeAreaM2, setup.TubeStrokeM, mount.DryMassKg + setup.WaterKg + setup.StartGasKg,
            withLedger);

    private static void Tube<TMount, TObserver>(
        in FiringSetup setup, ClosedGasLaw expansion, TMount mount, ref TObserver observer, bool withLedger, OdeSettings settings,
            ref FiringEnd end)
        where TMount : struct, IMount
        where TObserver : struct, IOdeObserver
    {
        var phase = TubePhaseOf(setup, expansion, mount, withLedger);
        var events = phase;
        Span<double> y = stackalloc double[phase.Dimension];
        Span<double> absolute = stackalloc double[phase.Dimension];
        y.Clear();
        absolute.Fill(settings.RelativeTolerance);
        var result = OdeDriver.Integrate(ref phase, ref events, ref observer, 0, LongestS, y, settings, absolute);
        end.Account(result, "launch tube");
        end.TopReached = result.TerminalEvent == 1;
        end.TubeEndTime = end.EndTime = result.Time;
        end.TubeEndSpeed = end.EndSpeed = y[1];
        end.EndHeight = y[0];
        end.EndPressure = phase.Pressure(y[0]);
        end.EndTemperature = phase.Temperature(y[0]);
        end.Offer(result.Time, y[1], y[0]);
        if (withLedger) end.Budget.AddTube(y[TubePhase<TMount>.Core..]);
    }

    private static void Water<TMount, TObserver>(
        in FiringSetup setup, ClosedGasLaw expansion, TMount mount, ref FiringObservers<TObserver> observers, bool withLedger,
            OdeSettings settings, ref FiringEnd end)
        where TMount : struct, IMount
        where TObserver : struct, IOdeObserver
    {
        const int core = WaterPhase<TMount>.Core;
        var phase = WaterPhaseOf(setup, expansion, mount, withLedger);
        var relative = settings.RelativeTolerance;
        Span<double> y = stackalloc double[phase.Dimension];
        Span<double> absolute = stackalloc double[phase.Dimension];
        y.Clear();
        y[0] = end.EndHeight;
        y[1] = end.EndSpeed;
        y[2] = setup.GasM3;
        absolute.Fill(relative);
        absolute[2] = relative * setup.GasM3;
        end.HadWater = true;
        if (setup.Mode == WaterJetMode.Inertial)
        {
            var way = StartJet(setup, phase, y, ref observers.Start, withLedger, settings, ref end);
            if (end.Failed) return;
            if (way is WaterEvents<TMount>.Spent or WaterEvents<TMount>.Top)
            {
                EndWater(way, phase, expansion, y, ref end);
                return;
            }
        }

        var events = new WaterEvents<TMount>(phase, setup.EndPressureRatio, setup.ChamberM3);
        var result = OdeDriver.Integrate(ref phase, ref events, ref observers.Water, end.EndTime, end.EndTime + LongestS, y, settings,
            absolute);
        end.Account(result, "water phase");
        end.EndTime = result.Time;
        end.Offer(events.FastestTime, events.FastestSpeed, events.FastestHeight);
        if (withLedger) end.Budget.AddWater(y[core..]);
        EndWater(result.TerminalEvent, phase, expansion, y, ref end);
    }

    private static void EndWater<TMount>(int way, WaterPhase<TMount> phase, ClosedGasLaw expansion, ReadOnlySpan<double> y,
        ref FiringEnd end)
        where TMount : struct, IMount
    {
        end.WaterSpent = way == WaterEvents<TMount>.Spent;
        end.TopReached = way == WaterEvents<TMount>.Top;
        end.WaterLeftKg = way == WaterEvents<TMount>.WaterOut ? 0 : phase.WaterKg(y[2]);
        end.WaterOutTime = end.EndTime;
        end.WaterOutHeight = end.EndHeight = y[0];
        end.WaterOutSpeed = end.EndSpeed = y[1];
        end.WaterOutVolume = y[2];
        end.EndPressure = expansion.Pressure(y[2]);
        end.EndTemperature = expansion.Temperature(y[2]);
        end.Offer(end.EndTime, y[1], y[0]);
    }

    /// <summary>
    /// Lets the water column gather speed, then hands on. Behind a narrow nozzle the lag is soon nothing beside the emptying and the
    /// established jet takes over; behind a wide one the whole equation is followed until next to no water is left.
    /// </summary>
    private static int StartJet<TMount, TObserver>(
        in FiringSetup setup, WaterPhase<TMount> water, Span<double> y, ref TObserver observer, bool withLedger, OdeSettings settings,
            ref FiringEnd end)
        where TMount : struct, IMount
        where TObserver : struct, IOdeObserver
    {
        const int core = StartPhase<TMount>.Core;
        var phase = new StartPhase<TMount>(water, setup.WaterJet.JetAreaM2, withLedger);
        var isWide = setup.WaterJet.AreaRatio > WideNozzle;
        var last = setup.ChamberM3 - (isWide ? LastWater * (setup.ChamberM3 - setup.GasM3) : 0);
        var events = new WaterEvents<TMount>(water, setup.EndPressureRatio, last);
        Span<double> state = stackalloc double[phase.Dimension];
        Span<double> absolute = stackalloc double[phase.Dimension];
        state.Clear();
        y[..3].CopyTo(state);
        absolute.Fill(settings.RelativeTolerance);
        absolute[2] = settings.RelativeTolerance * setup.GasM3;
        end.EstablishedTime = end.EndTime + StartPhase<TMount>.TimeConstants * TimeConstant(setup, end);
        var until = isWide ? end.EndTime + LongestS : end.EstablishedTime;
        var result = OdeDriver.Integrate(ref phase, ref events, ref observer, end.EndTime, until, state, settings, absolute);
        end.Account(result, "start of the jet", isWide || result.Status == OdeStatus.EndedByEvent);
        end.EndTime = end.HandOverTime = result.Time;
        end.Offer(events.FastestTime, events.FastestSpeed, events.FastestHeight);
        state[..3].CopyTo(y);
        if (withLedger) end.Budget.AddWater(state[core..]);
        return result.TerminalEvent;
    }

    private static double TimeConstant(in FiringSetup setup, in FiringEnd end)
    {
        // The jet can't gain on a spent pressure; the gauge pressure at release sets the pace.
        var jet = setup.WaterJet;
        var column = setup.WaterKg / (jet.Density * jet.BoreAreaM2);
        var speed = Math.Max(1, jet.Speed(end.EndPressure - setup.PressurePa + setup.GaugePa));
        return 2 * jet.AreaRatio * column / (speed * jet.Loss);
    }

    private static void Air<TAir, TObserver>(
        in FiringSetup setup, TAir phase, ReadOnlySpan<double> start, ref TObserver observer, OdeSettings settings, ref FiringEnd end)
        where TAir : struct, IAirPhase<TAir>
        where TObserver : struct, IOdeObserver
    {
        var events = new AirEvents<TAir>(phase, setup.EndPressureRatio);
        var relative = settings.RelativeTolerance;
        Span<double> y = stackalloc double[phase.Dimension];
        Span<double> absolute = stackalloc double[phase.Dimension];
        y.Clear();
        start.CopyTo(y);
        absolute.Fill(relative);
        absolute[2] = 1e-2 * relative * y[2];
        for (var i = 3; i < phase.Core; i++) absolute[i] = 100 * relative;
        if (events.Value(AirEvents<TAir>.Spent, 0, y, y) <= 0) return;

        var choked = phase.ChokedBy(y, phase.Ambient(y)) > 0;
        var result = OdeDriver.Integrate(ref phase, ref events, ref observer, end.EndTime, end.EndTime + LongestS, y, settings, absolute);
        end.Account(result, "gas phase");
        end.HadAir = true;
        end.TopReached = result.TerminalEvent == AirEvents<TAir>.Top;
        end.UnchokedTime = choked ? events.UnchokedTime : end.EndTime;
        end.EndTime = result.Time;
        end.EndHeight = y[0];
        end.EndSpeed = y[1];
        end.EndGasKg = y[2];
        end.EndPressure = phase.Pressure(y);
        end.EndTemperature = phase.Temperature(y);
        end.EndEnergy = phase.InternalEnergy(y);
        end.Offer(events.FastestTime, events.FastestSpeed, events.FastestHeight);
        end.Offer(result.Time, y[1], y[0]);
        if (phase.Dimension > phase.Core) end.Budget.AddAir(y[phase.Core..]);
    }
}
