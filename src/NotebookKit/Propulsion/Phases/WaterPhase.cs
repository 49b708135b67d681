using NotebookKit.Numerics.Ode;
using NotebookKit.Propulsion.Flow;

namespace NotebookKit.Propulsion.Phases;

/// <summary>
/// Water leaving with its jet established. Unknowns: height [m], speed [m/s], gas volume [m³]; then, where wanted, the budget: impulse [N
/// s], gas work, work against the air outside, jet energy, work of head and inertia of the column, jet energy seen from the ground, work
/// against drag [J].
/// </summary>
/// <remarks>
/// In the inertial mode the column's lag, some 1e-4 s, is short against the emptying: the jet follows its momentary equilibrium, corrected
/// twice by the rate at which that equilibrium itself changes. The error is of third order in lag over emptying time.
/// </remarks>
internal struct WaterPhase<TMount>(
    WaterJet jet, ClosedGasLaw expansion, TMount mount, double chamberM3, double gasMassKg, WaterJetMode mode, bool withLedger) : IOdeSystem
    where TMount : struct, IMount
{
    public const int Core = 3, Budget = 7;

    private const double Probe = 2e-6;

    public int Dimension => withLedger ? Core + Budget : Core;

    public double Density => jet.Density;

    public double ChamberM3 => chamberM3;

    public ClosedGasLaw Expansion => expansion;

    public TMount Mount => mount;

    public bool IsHeld => mount.IsHeld;

    /// <summary>Pressure of the gas at a volume [Pa].</summary>
    public double GasPa(double volumeM3) => expansion.Pressure(volumeM3);

    /// <summary>Pressure outside at a height [Pa].</summary>
    public double AmbientPa(double heightM) => mount.Ambient(heightM);

    public double WaterKg(double gasVolumeM3) => jet.Density * Math.Max(0, chamberM3 - gasVolumeM3);

    public void Derivatives(double t, ReadOnlySpan<double> y, Span<double> dydt)
    {
        var now = mode == WaterJetMode.Inertial ? Established(y[0], y[1], y[2]) : Equilibrium(y[0], y[1], y[2]);
        var flow = jet.JetAreaM2 * now.Speed;
        dydt[0] = mount.IsHeld ? 0 : y[1];
        dydt[1] = mount.IsHeld ? 0 : (now.Thrust - now.Drag) / now.Mass - mount.Gravity;
        dydt[2] = flow;
        if (dydt.Length == Core) return;
        Book(dydt[Core..], now, y[1], flow);
    }

    /// <summary>Jet speed [m/s], pressure [Pa] and thrust [N] of a state.</summary>
    public double Jet(ReadOnlySpan<double> y, out double pressurePa, out double thrustN)
    {
        var now = mode == WaterJetMode.Inertial ? Established(y[0], y[1], y[2]) : Equilibrium(y[0], y[1], y[2]);
        pressurePa = now.Pressure;
        thrustN = now.Thrust;
        return now.Speed;
    }

    /// <summary>The jet while it still starts: its speed is an unknown of its own, and its rate of change the answer [m/s²].</summary>
    public double Starting(double height, double speed, double gasVolume, double jetSpeed, out Moment now)
    {
        now = Surroundings(height, speed, gasVolume);
        var column = Column(gasVolume);
        var water = jet.Density * Math.Max(0, chamberM3 - gasVolume);
        double drive, resistance = jet.Density * column * jet.AreaRatio;
        if (mount.IsHeld)
        {
            drive = now.Pressure - now.Ambient + jet.Density * mount.Gravity * column - 0.5 * jet.Density * jet.Loss * jetSpeed * jetSpeed;
        }
        else
        {
            var push = jet.Density * jet.JetAreaM2 * jetSpeed * jetSpeed * (1 - jet.AreaRatio) - now.Drag;
            drive = now.Pressure - now.Ambient + jet.Density * column / now.Mass * push - 0.5 * jet.Density * jet.Loss * jetSpeed *
                jetSpeed;
            resistance *= 1 - water / now.Mass;
        }

        var rate = drive / resistance;
        now.Speed = jetSpeed;
        Finish(ref now, column, rate);
        return rate;
    }

    /// <summary>Books the flows of a moment into the mass budget.</summary>
    public void Book(Span<double> ledger, in Moment now, double speed, double flow)
    {
        ledger[0] = now.Thrust;
        ledger[1] = now.Pressure * flow;
        ledger[2] = now.Ambient * flow;
        ledger[3] = 0.5 * jet.Density * now.Speed * now.Speed * flow;
        ledger[4] = now.ColumnPressure * flow;
        ledger[5] = 0.5 * jet.Density * (speed - now.Speed) * (speed - now.Speed) * flow;
        ledger[6] = now.Drag * speed;
    }

    /// <summary>Equilibrium with the rate at which it changes fed back twice.</summary>
    private Moment Established(double height, double speed, double gasVolume)
    {
        var now = Equilibrium(height, speed, gasVolume);
        var flow = jet.JetAreaM2 * now.Speed;
        if (flow <= 0) return now;

        // One small step of the path ahead: two millionths of the gas volume.
        var step = Probe * gasVolume / flow;
        var acceleration = mount.IsHeld ? 0 : (now.Thrust - now.Drag) / now.Mass - mount.Gravity;
        double heightAhead = height + step * (mount.IsHeld ? 0 : speed), speedAhead = speed + step * acceleration,
            volumeAhead = gasVolume + step * flow;
        var first = Lagging(height, speed, gasVolume, now, step);
        var ahead = Lagging(heightAhead, speedAhead, volumeAhead, Equilibrium(heightAhead, speedAhead, volumeAhead), step);
        return Equilibrium(height, speed, gasVolume, (ahead.Speed - first.Speed) / step);
    }

    /// <summary>Equilibrium with the rate at which it changes fed back once.</summary>
    private Moment Lagging(double height, double speed, double gasVolume, in Moment now, double step)
    {
        var acceleration = mount.IsHeld ? 0 : (now.Thrust - now.Drag) / now.Mass - mount.Gravity;
        var ahead = Equilibrium(
            height + step * (mount.IsHeld ? 0 : speed), speed + step * acceleration, gasVolume + step * jet.JetAreaM2 * now.Speed);
        return Equilibrium(height, speed, gasVolume, (ahead.Speed - now.Speed) / step);
    }

    private Moment Equilibrium(double height, double speed, double gasVolume, double rate = 0)
    {
        var now = Surroundings(height, speed, gasVolume);
        var difference = now.Pressure - now.Ambient;
        if (mode == WaterJetMode.Plain)
        {
            now.Speed = jet.Speed(difference);
            now.Thrust = jet.Density * jet.JetAreaM2 * now.Speed * now.Speed;
            return now;
        }

        var column = Column(gasVolume);
        if (mode == WaterJetMode.Head)
        {
            now.Speed = mount.IsHeld ? jet.SpeedHeld(difference, column, mount.Gravity)
                : jet.SpeedFree(difference, column, now.Drag, now.Mass);
            now.Thrust = jet.Density * jet.JetAreaM2 * now.Speed * now.Speed;
            now.ColumnPressure = jet.Density * column * (mount.IsHeld ? mount.Gravity : (now.Thrust - now.Drag) / now.Mass);
            return now;
        }

        // ρ φ h u' = Δp + ρ h s − ρ K u²/2 with s the acceleration felt, solved for u² at a given u'.
        var inertia = jet.Density * column * jet.AreaRatio * rate;
        double push, resistance = 0.5 * jet.Density * jet.Loss;
        if (mount.IsHeld)
        {
            push = difference + jet.Density * mount.Gravity * column - inertia;
        }
        else
        {
            var water = jet.Density * Math.Max(0, chamberM3 - gasVolume);
            push = difference - jet.Density * column * now.Drag / now.Mass - inertia * (1 - water / now.Mass);
            resistance -= jet.Density * jet.Density * column * jet.JetAreaM2 * (1 - jet.AreaRatio) / now.Mass;
        }

        now.Speed = push > 0 && resistance > 0 ? Math.Sqrt(push / resistance) : 0;
        Finish(ref now, column, rate);
        return now;
    }

    private void Finish(ref Moment now, double column, double rate)
    {
        now.Thrust = jet.Density * jet.JetAreaM2 * (now.Speed * now.Speed * (1 - jet.AreaRatio) + column * rate);
        var felt = mount.IsHeld ? mount.Gravity : (now.Thrust - now.Drag) / now.Mass;
        now.ColumnPressure = jet.Density * column * (felt - jet.AreaRatio * rate);
    }

    private Moment Surroundings(double height, double speed, double gasVolume)
    {
        var ambient = mount.Surroundings(height, speed, true, out var drag);
        return new Moment
        {
            Pressure = expansion.Pressure(gasVolume),
            Ambient = ambient,
            Drag = drag,
            Mass = mount.DryMassKg + gasMassKg + jet.Density * (chamberM3 - gasVolume),
        };
    }

    private double Column(double gasVolume) => Math.Max(0, chamberM3 - gasVolume) / jet.BoreAreaM2;

    /// <summary>What acts at one moment, SI.</summary>
    internal struct Moment
    {
        public double Pressure, Ambient, Drag, Mass, Speed, Thrust, ColumnPressure;
    }
}
