using NotebookKit.Filling.Balances;
using NotebookKit.Filling.Restrictors;
using NotebookKit.Materials.Fluids;
using NotebookKit.Numerics.Ode;

namespace NotebookKit.Filling.Vents;

/// <summary>A vessel vented: gas mass, gas temperature, wall temperature.</summary>
internal readonly struct VentSystem(GasLaw law, IRestrictor restrictor, FlowScale scale, double gasM3, double outsidePa, double ambientK)
    : IOdeSystem
{
    public const int Mass = 0, Kelvins = 1, Wall = 2, Unknowns = 3;

    /// <summary>The path of heat; none where the gas gets none.</summary>
    public HeatPath? Heat { get; init; }

    /// <summary>Whether the gas keeps its temperature.</summary>
    public bool Isothermal { get; init; }

    public int Dimension => Unknowns;

    public GasPoint Gas(ReadOnlySpan<double> y) => law.At(y[Kelvins], y[Mass] / gasM3);

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
        var heat = Heat is { } path ? path.ToGas(gas, y[Wall], 0, gas.Kelvins) : 0;
        dydt[Kelvins] = VesselBalance.TemperatureRate(gas, gasM3, 0, 0, flow, heat);
        if (Heat is { } wall) dydt[Wall] = wall.WallRate(heat, y[Wall], ambientK);
    }
}
