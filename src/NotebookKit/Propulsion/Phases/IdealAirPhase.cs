using NotebookKit.Propulsion.Flow;

namespace NotebookKit.Propulsion.Phases;

/// <summary>Ideal gas leaving. Own unknown: gas temperature [K].</summary>
/// <remarks>
/// Energy of the gas in the vessel: d(m cv T) = −cp T ṁ dt + dQ, which for no heat is the isentrope of what remains. A polytropic law of
/// exponent n is the same equation with n for γ; the heat that it implies is booked as heat.
/// </remarks>
internal struct IdealAirPhase<TMount>(AirJet jet, TMount mount, double chamberM3, double exponent, double waterAboardKg,
    bool withLedger)
    : IAirPhase<IdealAirPhase<TMount>>
    where TMount : struct, IMount
{
    public int Core => 4;

    public int Dimension => withLedger ? 4 + AirBudget.Length : 4;

    public bool IsHeld => mount.IsHeld;

    public IdealAirPhase<TMount> Carrying(double waterKg, bool ledger) => new(jet, mount, chamberM3, exponent, waterKg, ledger);

    public void Begin(Span<double> y, double gasKg, double pressurePa, double temperatureK)
    {
        y[2] = gasKg;
        y[3] = pressurePa * chamberM3 / (jet.GasConstant * gasKg);
    }

    public double Pressure(ReadOnlySpan<double> y) => y[2] * jet.GasConstant * y[3] / chamberM3;

    public double Temperature(ReadOnlySpan<double> y) => y[3];

    public double Ambient(ReadOnlySpan<double> y) => mount.Ambient(y[0]);

    public double ChokedBy(ReadOnlySpan<double> y, double ambientPa) => jet.CriticalRatio * Pressure(y) - ambientPa;

    public double MassFlow(ReadOnlySpan<double> y, out double thrustN) => jet.MassFlow(Pressure(y), y[3], Ambient(y), out thrustN);

    public double InternalEnergy(ReadOnlySpan<double> y) => y[2] * jet.GasConstant / (jet.Gamma - 1) * y[3];

    public void Derivatives(double t, ReadOnlySpan<double> y, Span<double> dydt)
    {
        double mass = y[2], temperature = y[3];
        var pressure = mass * jet.GasConstant * temperature / chamberM3;
        var ambient = mount.Surroundings(y[0], y[1], true, out var drag);
        var flow = jet.MassFlow(pressure, temperature, ambient, out var thrust);
        AirBudget.Move(mount, y, dydt, thrust, drag, mount.DryMassKg + waterAboardKg + mass);
        dydt[2] = -flow;
        dydt[3] = -(exponent - 1) * temperature * flow / mass;
        if (dydt.Length == 4) return;

        var cv = jet.GasConstant / (jet.Gamma - 1);
        AirBudget.Book(
            dydt[4..], thrust, drag, y[1], flow, jet.Gamma * cv * temperature, (jet.Gamma - exponent) * cv * temperature * flow,
            jet.ExitSpeed(pressure, temperature, ambient));
    }
}
