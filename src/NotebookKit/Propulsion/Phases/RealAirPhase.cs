using NotebookKit.Propulsion.Flow;

namespace NotebookKit.Propulsion.Phases;

/// <summary>Real gas leaving without heat: all that is inside stays on one isentrope, so its mass says everything.</summary>
internal struct RealAirPhase<TMount>(
    IsentropeJet jet, TMount mount, double areaM2, double chamberM3, double startEnergy, double waterAboardKg, bool withLedger)
    : IAirPhase<RealAirPhase<TMount>>
    where TMount : struct, IMount
{
    public int Core => 3;

    public int Dimension => withLedger ? 3 + AirBudget.Length : 3;

    public bool IsHeld => mount.IsHeld;

    public RealAirPhase<TMount> Carrying(double waterKg, bool ledger) => new(jet, mount, areaM2, chamberM3, startEnergy, waterKg, ledger);

    public void Begin(Span<double> y, double gasKg, double pressurePa, double temperatureK) => y[2] = gasKg;

    public double Pressure(ReadOnlySpan<double> y) => jet.Table.Pressure(Position(y));

    public double Temperature(ReadOnlySpan<double> y) => jet.Table.Temperature(Position(y));

    public double Ambient(ReadOnlySpan<double> y) => mount.Ambient(y[0]);

    public double ChokedBy(ReadOnlySpan<double> y, double ambientPa)
    {
        var x = Position(y);
        return jet.CriticalRatio(x) * jet.Table.Pressure(x) - ambientPa;
    }

    public double MassFlow(ReadOnlySpan<double> y, out double thrustN)
    {
        var x = Position(y);
        return jet.MassFlow(x, jet.Table.Pressure(x), areaM2, Ambient(y), out thrustN);
    }

    public double InternalEnergy(ReadOnlySpan<double> y) => y[2] * (startEnergy - jet.Table.EnergyGivenUp(Position(y)));

    public void Derivatives(double t, ReadOnlySpan<double> y, Span<double> dydt)
    {
        var x = Position(y);
        var pressure = jet.Table.Pressure(x);
        var ambient = mount.Surroundings(y[0], y[1], true, out var drag);
        var flow = jet.MassFlow(x, pressure, areaM2, ambient, out var thrust);
        AirBudget.Move(mount, y, dydt, thrust, drag, mount.DryMassKg + waterAboardKg + y[2]);
        dydt[2] = -flow;
        if (dydt.Length == 3) return;

        var enthalpy = startEnergy - jet.Table.EnergyGivenUp(x) + pressure * chamberM3 / y[2];
        AirBudget.Book(dydt[3..], thrust, drag, y[1], flow, enthalpy, 0, jet.ExitSpeed(x, pressure, ambient));
    }

    private double Position(ReadOnlySpan<double> y) => Math.Log(chamberM3 / (y[2] * jet.Table.StartVolume));
}
