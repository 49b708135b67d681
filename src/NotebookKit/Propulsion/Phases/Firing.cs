using NotebookKit.Numerics.Ode;

namespace NotebookKit.Propulsion.Phases;

/// <summary>Runs the water phase and then the gas phase on a mount. The same code fires a vessel on a stand and carries one up.</summary>
internal static class Firing
{
    /// <summary>Far longer than any vessel of this trade takes to empty [s].</summary>
    public const double LongestS = 36_000;

    /// <summary>Fires from rest at height 0; allocates nothing unless an observer does.</summary>
    public static void Run<TExpansion, TMount, TWaterObserver, TAirObserver>(
        in FiringSetup setup, TExpansion expansion, TMount mount, ref TWaterObserver waterObserver, ref TAirObserver airObserver,
        bool withLedger, OdeSettings settings, ref FiringEnd end)
        where TExpansion : struct, IExpansionLaw
        where TMount : struct, IMount
        where TWaterObserver : struct, IOdeObserver
        where TAirObserver : struct, IOdeObserver
    {
        end.EndGasKg = setup.GasKg;
        end.EndTemperature = setup.TemperatureK;
        if (setup.HasWater)
        {
            Water(setup, expansion, mount, ref waterObserver, withLedger, settings, ref end);
            if (end.Failed || end.TopReached || end.WaterSpent) return;
        }

        Air(setup, mount, ref airObserver, withLedger, settings, ref end);
    }

    public static WaterPhase<TExpansion, TMount> WaterPhase<TExpansion, TMount>(in FiringSetup setup, TExpansion expansion, TMount mount, bool withLedger)
        where TExpansion : struct, IExpansionLaw
        where TMount : struct, IMount =>
        new(setup.WaterJet, expansion, mount, setup.ChamberM3, setup.GasKg, setup.WithHead, withLedger);

    public static AirPhase<TMount> AirPhase<TMount>(in FiringSetup setup, TMount mount, double waterAboardKg, bool withLedger)
        where TMount : struct, IMount =>
        new(setup.AirJet, mount, setup.ChamberM3, setup.AirExponent, waterAboardKg, withLedger);

    private static void Water<TExpansion, TMount, TObserver>(
        in FiringSetup setup, TExpansion expansion, TMount mount, ref TObserver observer, bool withLedger, OdeSettings settings, ref FiringEnd end)
        where TExpansion : struct, IExpansionLaw
        where TMount : struct, IMount
        where TObserver : struct, IOdeObserver
    {
        var phase = WaterPhase(setup, expansion, mount, withLedger);
        var events = new WaterEvents<TExpansion, TMount>(phase, setup.EndPressureRatio);
        var relative = settings.RelativeTolerance;
        Span<double> y = stackalloc double[phase.Dimension];
        Span<double> absolute = stackalloc double[phase.Dimension];
        y.Clear();
        y[2] = setup.GasM3;
        absolute.Fill(relative);
        absolute[2] = relative * setup.GasM3;

        var result = OdeDriver.Integrate(ref phase, ref events, ref observer, 0, LongestS, y, settings, absolute);
        end.HadWater = true;
        end.Account(result, "water phase");
        end.WaterSpent = result.TerminalEvent == WaterEvents<TExpansion, TMount>.Spent;
        end.TopReached = result.TerminalEvent == WaterEvents<TExpansion, TMount>.Top;
        end.WaterLeftKg = result.TerminalEvent == WaterEvents<TExpansion, TMount>.WaterOut ? 0 : phase.WaterKg(y[2]);
        end.WaterOutTime = end.EndTime = result.Time;
        end.WaterOutHeight = end.EndHeight = y[0];
        end.WaterOutSpeed = end.EndSpeed = y[1];
        end.WaterOutVolume = y[2];
        end.WaterOutPressure = expansion.Pressure(y[2]);
        end.WaterOutTemperature = end.EndTemperature = expansion.Temperature(y[2]);
        end.Offer(events.FastestTime, events.FastestSpeed, events.FastestHeight);
        end.Offer(result.Time, y[1], y[0]);
        if (!withLedger) return;
        end.Ledger.WaterImpulse = y[3];
        end.Ledger.GasWork = y[4];
        end.Ledger.OutsideWork = y[5];
        end.Ledger.WaterJetEnergy = y[6];
        end.Ledger.HeadWork = y[7];
    }

    private static void Air<TMount, TObserver>(
        in FiringSetup setup, TMount mount, ref TObserver observer, bool withLedger, OdeSettings settings, ref FiringEnd end)
        where TMount : struct, IMount
        where TObserver : struct, IOdeObserver
    {
        var phase = AirPhase(setup, mount, end.WaterLeftKg, withLedger);
        var events = new AirEvents<TMount>(phase, setup.AirJet.CriticalRatio, setup.EndPressureRatio);
        var relative = settings.RelativeTolerance;
        Span<double> y = stackalloc double[phase.Dimension];
        Span<double> absolute = stackalloc double[phase.Dimension];
        y.Clear();
        absolute.Fill(relative);
        y[0] = end.EndHeight;
        y[1] = end.EndSpeed;
        y[2] = end.EndGasKg;
        y[3] = end.EndTemperature;
        absolute[2] = 1e-2 * relative * y[2];
        absolute[3] = relative * 100;
        if (events.Value(AirEvents<TMount>.Spent, 0, y, y) <= 0) return;

        var choked = events.Value(AirEvents<TMount>.Unchoked, 0, y, y) > 0;
        var result = OdeDriver.Integrate(ref phase, ref events, ref observer, end.EndTime, end.EndTime + LongestS, y, settings, absolute);
        end.Account(result, "gas phase");
        end.TopReached = result.TerminalEvent == AirEvents<TMount>.Top;
        end.UnchokedTime = choked ? events.UnchokedTime : end.EndTime;
        end.EndTime = result.Time;
        end.EndHeight = y[0];
        end.EndSpeed = y[1];
        end.EndGasKg = y[2];
        end.EndTemperature = y[3];
        end.Offer(events.FastestTime, events.FastestSpeed, events.FastestHeight);
        end.Offer(result.Time, y[1], y[0]);
        if (!withLedger) return;
        end.Ledger.AirImpulse = y[4];
        end.Ledger.EnthalpyOut = y[5];
        end.Ledger.HeatIn = y[6];
        end.Ledger.AirJetEnergy = y[7];
    }
}
