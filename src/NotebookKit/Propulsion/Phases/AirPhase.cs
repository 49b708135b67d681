using NotebookKit.Numerics.Ode;

namespace NotebookKit.Propulsion.Phases;

/// <summary>
/// Gas leaving. Unknowns: height [m], speed [m/s], gas mass [kg], gas temperature [K]; then, where the state is long enough, the ledger:
/// impulse [N s], enthalpy carried out, heat taken in, kinetic energy of the jet at the exit [J].
/// </summary>
/// <remarks>
/// Energy of the gas in the vessel: d(m cv T) = −cp T ṁ dt + dQ, which for no heat is the isentrope of what remains. A polytropic law of
/// exponent n is the same equation with n for γ; the heat that it implies is booked as heat.
/// </remarks>
internal readonly struct AirPhase<TMount>(
    AirJet jet, TMount mount, double chamberM3, double exponent, double waterAboardKg, bool withLedger) : IOdeSystem
    where TMount : struct, IMount
{
    public const int Core = 4, Ledger = 4;

    public int Dimension => withLedger ? Core + Ledger : Core;

    public TMount Mount => mount;

    public double Pressure(ReadOnlySpan<double> y) => y[2] * jet.GasConstant * y[3] / chamberM3;

    public void Derivatives(double t, ReadOnlySpan<double> y, Span<double> dydt)
    {
        double mass = y[2], temperature = y[3];
        var pressure = mass * jet.GasConstant * temperature / chamberM3;
        var ambient = mount.Surroundings(y[0], y[1], true, out var drag);
        var flow = jet.MassFlow(pressure, temperature, ambient, out var thrust);

        if (mount.IsHeld)
        {
            dydt[0] = 0;
            dydt[1] = 0;
        }
        else
        {
            dydt[0] = y[1];
            dydt[1] = (thrust - drag) / (mount.DryMassKg + waterAboardKg + mass) - mount.Gravity;
        }

        dydt[2] = -flow;
        dydt[3] = -(exponent - 1) * temperature * flow / mass;
        if (dydt.Length == Core) return;

        var cv = jet.GasConstant / (jet.Gamma - 1);
        dydt[4] = thrust;
        dydt[5] = jet.Gamma * cv * temperature * flow;
        dydt[6] = (jet.Gamma - exponent) * cv * temperature * flow;
        var exit = jet.ExitSpeed(pressure, temperature, ambient);
        dydt[7] = 0.5 * exit * exit * flow;
    }

    /// <summary>Mass flow [kg/s], pressure [Pa] and thrust [N] of a state.</summary>
    public double Jet(ReadOnlySpan<double> y, out double pressurePa, out double thrustN)
    {
        pressurePa = Pressure(y);
        var ambient = mount.Surroundings(y[0], y[1], true, out _);
        return jet.MassFlow(pressurePa, y[3], ambient, out thrustN);
    }
}
