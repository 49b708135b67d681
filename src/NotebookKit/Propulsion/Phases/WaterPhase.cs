using NotebookKit.Numerics.Ode;

namespace NotebookKit.Propulsion.Phases;

/// <summary>
/// Water leaving, quasi-steady. Unknowns: height [m], speed [m/s], gas volume [m³]; then, where the state is long enough, the ledger:
/// impulse [N s], gas work, work against the air outside, jet energy, head work [J].
/// </summary>
internal readonly struct WaterPhase<TExpansion, TMount>(
    WaterJet jet, TExpansion expansion, TMount mount, double chamberM3, double gasMassKg, bool withHead, bool withLedger) : IOdeSystem
    where TExpansion : struct, IExpansionLaw
    where TMount : struct, IMount
{
    public const int Core = 3, Ledger = 5;

    public int Dimension => withLedger ? Core + Ledger : Core;

    public double Density => jet.Density;

    public double ChamberM3 => chamberM3;

    public TExpansion Expansion => expansion;

    public TMount Mount => mount;

    public double WaterKg(double gasVolumeM3) => jet.Density * Math.Max(0, chamberM3 - gasVolumeM3);

    public void Derivatives(double t, ReadOnlySpan<double> y, Span<double> dydt)
    {
        var gasVolume = y[2];
        var pressure = expansion.Pressure(gasVolume);
        var ambient = mount.Surroundings(y[0], y[1], true, out var drag);
        var mass = mount.DryMassKg + gasMassKg + jet.Density * (chamberM3 - gasVolume);
        var speed = JetSpeed(pressure - ambient, gasVolume, drag, mass);
        var flow = jet.JetAreaM2 * speed;
        var thrust = jet.Density * flow * speed;

        if (mount.IsHeld)
        {
            dydt[0] = 0;
            dydt[1] = 0;
        }
        else
        {
            dydt[0] = y[1];
            dydt[1] = (thrust - drag) / mass - mount.Gravity;
        }

        dydt[2] = flow;
        if (dydt.Length == Core) return;

        dydt[3] = thrust;
        dydt[4] = pressure * flow;
        dydt[5] = ambient * flow;
        dydt[6] = 0.5 * jet.Density * speed * speed * flow;
        dydt[7] = withHead ? jet.Density * Column(gasVolume) * (mount.IsHeld ? mount.Gravity : (thrust - drag) / mass) * flow : 0;
    }

    /// <summary>Jet speed [m/s], pressure [Pa] and thrust [N] of a state.</summary>
    public double Jet(ReadOnlySpan<double> y, out double pressurePa, out double thrustN)
    {
        pressurePa = expansion.Pressure(y[2]);
        var ambient = mount.Surroundings(y[0], y[1], true, out var drag);
        var mass = mount.DryMassKg + gasMassKg + jet.Density * (chamberM3 - y[2]);
        var speed = JetSpeed(pressurePa - ambient, y[2], drag, mass);
        thrustN = jet.Density * jet.JetAreaM2 * speed * speed;
        return speed;
    }

    private double JetSpeed(double difference, double gasVolume, double drag, double mass)
    {
        if (!withHead) return jet.Speed(difference);
        var column = Column(gasVolume);
        return mount.IsHeld ? jet.SpeedHeld(difference, column, mount.Gravity) : jet.SpeedFree(difference, column, drag, mass);
    }

    private double Column(double gasVolume) => Math.Max(0, chamberM3 - gasVolume) / jet.BoreAreaM2;
}
