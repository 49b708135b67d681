using NotebookKit.Materials.Fluids;
using NotebookKit.Numerics;
using NotebookKit.Provenance;
using NotebookKit.Quantities;
using UnitsNet;

namespace NotebookKit.Filling.Restrictors;

/// <summary>Two restrictors one behind the other, as a hose and the valve at its end; gas comes to rest between them.</summary>
/// <remarks>The pressure between them is the one at which both pass the same mass; temperature at rest is the same throughout. Source:
/// energy and mass balance of an ideal gas.</remarks>
/// <param name="First">The one the gas meets first.</param>
/// <param name="Second">The one behind it; a chain of its own for three and more.</param>
public sealed record RestrictorChain(IRestrictor First, IRestrictor Second) : IRestrictor
{
    /// <inheritdoc/>
    public double CriticalRatio => ((IRestrictor)this).CriticalRatioFor(Gas.Air);

    /// <inheritdoc/>
    public Area EffectiveArea
    {
        get
        {
            var gas = Gas.Air;
            var flow = ((IRestrictor)this).KilogramsPerSecond(1e6, 293.15, 1, gas);
            return Area.FromSquareMeters(flow * Math.Sqrt(gas.GasConstant.JoulesPerKilogramKelvin * 293.15) / (1e6 *
                gas.ChokedFlowFactor)).ToUnit(UnitsNet.Units.AreaUnit.SquareMillimeter);
        }
    }

    /// <inheritdoc/>
    public SonicConductance Conductance => FlowCapacity.ConductanceOf(EffectiveArea);

    /// <inheritdoc/>
    public IReadOnlyList<Finding> Validate() => [.. First.Validate(), .. Second.Validate()];

    /// <summary>Both, in order.</summary>
    public override string ToString() => $"{First}, then {Second}";

    double IRestrictor.CriticalRatioFor(Gas gas)
    {
        // While the second part is choked nothing behind it is felt; the pressure between is then a fixed share of the one ahead.
        const double upstream = 1e6;
        return Between(upstream, 293.15, 1, gas) / upstream * Second.CriticalRatioFor(gas);
    }

    double IRestrictor.KilogramsPerSecond(double upstreamPa, double upstreamK, double downstreamPa, Gas gas) =>
        downstreamPa >= upstreamPa ? 0 : Second.KilogramsPerSecond(Between(upstreamPa, upstreamK, downstreamPa, gas), upstreamK,
            downstreamPa, gas);

    private double Between(double upstreamPa, double upstreamK, double downstreamPa, Gas gas)
    {
        var function = new Excess(this, upstreamPa, upstreamK, downstreamPa, gas);
        // Pressures so nearly equal that neither part passes anything.
        return BracketedRoot.TrySolve(ref function, downstreamPa, upstreamPa, upstreamPa * 1e-13, out var root) ? root.Root : downstreamPa;
    }

    private readonly struct Excess(RestrictorChain chain, double upstreamPa, double upstreamK, double downstreamPa, Gas gas)
        : IScalarFunction
    {
        public double Value(double x) =>
            chain.First.KilogramsPerSecond(upstreamPa, upstreamK, x, gas) - chain.Second.KilogramsPerSecond(x, upstreamK, downstreamPa,
                gas);
    }
}
