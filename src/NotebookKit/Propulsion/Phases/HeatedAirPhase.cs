using NotebookKit.Materials.Fluids;
using NotebookKit.Propulsion.Flow;

namespace NotebookKit.Propulsion.Phases;

/// <summary>Real gas leaving while the wall gives it heat. Own unknowns: gas temperature and wall temperature [K].</summary>
/// <remarks>
/// m cv dT/dt = Q − ṁ T (∂p/∂T)/ρ, the first law for an open vessel in terms of temperature and density. Source: any textbook of
/// thermodynamics;
/// film coefficient of <see cref="WallWarming"/>.
/// </remarks>
internal struct HeatedAirPhase<TMount>(
    RealGas gas, WallLaw wall, TMount mount, double areaM2, double chamberM3, double energyZero, double waterAboardKg, bool withLedger)
    : IAirPhase<HeatedAirPhase<TMount>>
    where TMount : struct, IMount
{
    public int Core => 5;

    public int Dimension => withLedger ? 5 + AirBudget.Length : 5;

    public bool IsHeld => mount.IsHeld;

    public HeatedAirPhase<TMount> Carrying(double waterKg, bool ledger)
        => new(gas, wall, mount, areaM2, chamberM3, energyZero, waterKg, ledger);

    public void Begin(Span<double> y, double gasKg, double pressurePa, double temperatureK)
    {
        y[2] = gasKg;
        y[3] = temperatureK;
        y[4] = wall.StartKelvins;
    }

    public double Pressure(ReadOnlySpan<double> y) => gas.Point(y[3], y[2] / chamberM3).Pascals;

    public double Temperature(ReadOnlySpan<double> y) => y[3];

    public double Ambient(ReadOnlySpan<double> y) => mount.Ambient(y[0]);

    public double ChokedBy(ReadOnlySpan<double> y, double ambientPa) =>
        RealThroat.Sonic(gas, gas.Point(y[3], y[2] / chamberM3)).Pressure - ambientPa;

    public double MassFlow(ReadOnlySpan<double> y, out double thrustN) =>
        Jet(gas.Point(y[3], y[2] / chamberM3), Ambient(y), out thrustN, out _);

    public double InternalEnergy(ReadOnlySpan<double> y) => y[2] * (gas.Point(y[3], y[2] / chamberM3).Energy - energyZero);

    public void Derivatives(double t, ReadOnlySpan<double> y, Span<double> dydt)
    {
        var point = gas.Point(y[3], y[2] / chamberM3);
        var ambient = mount.Surroundings(y[0], y[1], true, out var drag);
        var flow = Jet(point, ambient, out var thrust, out var exit);
        AirBudget.Move(mount, y, dydt, thrust, drag, mount.DryMassKg + waterAboardKg + y[2]);
        var heat = wall.HeatToGas(gas, point, y[4]);
        dydt[2] = -flow;
        dydt[3] = (heat - flow * point.Kelvins * point.PressureByTemperature / point.Density) / (y[2] * point.Cv);
        dydt[4] = -heat * wall.PerHeatCapacity;
        if (dydt.Length == 5) return;
        AirBudget.Book(dydt[5..], thrust, drag, y[1], flow, point.Enthalpy - energyZero, heat, exit);
    }

    private double Jet(in GasPoint point, double ambient, out double thrust, out double exitSpeed)
    {
        if (!(point.Pascals > ambient))
        {
            thrust = exitSpeed = 0;
            return 0;
        }

        var sonic = RealThroat.Sonic(gas, point);
        if (ambient <= sonic.Pressure)
        {
            thrust = areaM2 * (sonic.Momentum - ambient);
            exitSpeed = (sonic.Momentum - sonic.Pressure) / sonic.Flux;
            return areaM2 * sonic.Flux;
        }

        var (density, speed) = RealThroat.Subsonic(gas, point, ambient);
        exitSpeed = speed;
        thrust = areaM2 * density * speed * speed;
        return areaM2 * density * speed;
    }
}
