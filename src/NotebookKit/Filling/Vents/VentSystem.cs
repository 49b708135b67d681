using NotebookKit.Filling.Balances;
using NotebookKit.Filling.Restrictors;
using NotebookKit.Materials.Fluids;
using NotebookKit.Numerics.Ode;

namespace NotebookKit.Filling.Vents;

/// <summary>A vessel vented: gas mass, gas temperature, wall temperature, and the warmth of the water that stays, where it is
/// followed.</summary>
internal readonly struct VentSystem(GasLaw law, IRestrictor restrictor, FlowScale scale, double gasM3, double outsidePa, double ambientK)
    : IOdeSystem
{
    public const int Mass = 0, Kelvins = 1, Wall = 2, WaterWarmth = 3, Unknowns = 4;

    /// <summary>The path of heat; none where the gas gets none.</summary>
    public HeatPath? Heat { get; init; }

    /// <summary>Water that stays below the gas, m³.</summary>
    public double WaterM3 { get; init; }

    /// <summary>Whether the gas keeps its temperature.</summary>
    public bool Isothermal { get; init; }

    public int Dimension => Unknowns;

    public GasPoint Gas(ReadOnlySpan<double> y) => law.At(y[Kelvins], y[Mass] / gasM3);

    /// <summary>Temperature of the water, K; that of the start where it isn't followed.</summary>
    public double WaterKelvins(ReadOnlySpan<double> y) => WaterBath.Kelvins(y[WaterWarmth], WaterM3, ambientK);

    public void Derivatives(double t, ReadOnlySpan<double> y, Span<double> dydt)
    {
        dydt.Clear();
        if (!(y[Mass] > 0 && y[Kelvins] > 1 && y[Kelvins] < 5000))
        {
            dydt[Mass] = double.NaN;
            return;
        }

        var gas = Gas(y);
        var flow = scale.At(gas.Pascals) * restrictor.KilogramsPerSecond(gas.Pascals, gas.Kelvins, outsidePa, law.Gas);
        dydt[Mass] = -flow;
        if (Isothermal) return;
        double heat = 0, fromWater = 0;
        if (Heat is { } path)
        {
            heat = path.ToGas(gas, y[Wall], 0, gas.Kelvins);
            fromWater = path.FromWater(gas, WaterKelvins(y), WaterM3, 0, gas.Kelvins);
            dydt[Wall] = path.WallRate(heat, y[Wall], ambientK);
            dydt[WaterWarmth] = -fromWater;
        }

        dydt[Kelvins] = VesselBalance.TemperatureRate(gas, gasM3, 0, 0, flow, heat + fromWater);
    }
}
