using NotebookKit.Filling.Restrictors;
using NotebookKit.Materials.Fluids;
using NotebookKit.Numerics;

namespace NotebookKit.Filling.Networks;

/// <summary>
/// What a restrictor or a chain of them passes, over the pressure ratio, as a polynomial that is quick to read: flow × √T/p is a function
/// of that ratio alone for every restrictor here.
/// </summary>
/// <remarks>Source: Chebyshev interpolation of flow/√(1 − r) between the critical ratio and 1, where both are smooth; chains by equal mass
/// flow, as <see cref="RestrictorChain"/>.</remarks>
internal sealed class FlowCurve
{
    /// <summary>Share of the pressure ahead below which the flow is taken as in proportion to the drop, so that it dies away smoothly:
    /// a fill comes to the last thousandth of the supply a little later than by the square root.</summary>
    public const double LinearBelow = 1e-3;

    private const int Terms = 28;

    private readonly double[] _terms = new double[Terms];
    private readonly double _choked, _critical, _widest, _atLinear;

    private FlowCurve(Func<double, double> passes, double critical)
    {
        (_critical, _choked) = (critical, passes(0.999 * critical));
        _widest = Math.Sqrt(1 - critical);
        Span<double> values = stackalloc double[Terms];
        for (var k = 0; k < Terms; k++)
        {
            var x = 0.5 * _widest * (1 + Math.Cos(Math.PI * (k + 0.5) / Terms));
            values[k] = passes(1 - x * x) / x;
        }

        for (var j = 0; j < Terms; j++)
        {
            var sum = 0.0;
            for (var k = 0; k < Terms; k++) sum += values[k] * Math.Cos(Math.PI * j * (k + 0.5) / Terms);
            _terms[j] = (j == 0 ? 1.0 : 2.0) / Terms * sum;
        }

        _atLinear = Raw(1 - LinearBelow);
    }

    /// <summary>The curve of a restrictor, a chain taken apart.</summary>
    public static FlowCurve Of(IRestrictor restrictor, Gas gas)
    {
        if (restrictor is RestrictorChain chain) return Of(chain.First, gas).Then(Of(chain.Second, gas));
        const double pascals = 1e6, kelvins = 293.15;
        var scale = Math.Sqrt(kelvins) / pascals;
        return new(r => scale * restrictor.KilogramsPerSecond(pascals, kelvins, r * pascals, gas), restrictor.CriticalRatioFor(gas));
    }

    /// <summary>The curve of this one with another behind it.</summary>
    public FlowCurve Then(FlowCurve behind)
    {
        // Choked behind: the pressure between stands still. Choked ahead: until the pressure between has come up to where it isn't.
        var between = Between(behind, 0);
        var critical = between > _critical ? between * behind._critical : _critical * behind.RatioOf(_choked / _critical);
        return new(r => between > _critical && r <= critical ? between * behind._choked : r <= critical ? _choked
            : behind.Through(Between(behind, r), r), critical);
    }

    /// <summary>Mass flow, kg/s, from a pressure and temperature ahead to a pressure behind.</summary>
    public double Flow(double upstreamPa, double upstreamK, double downstreamPa)
    {
        if (downstreamPa >= upstreamPa) return 0;
        var ratio = downstreamPa / upstreamPa;
        return upstreamPa / Math.Sqrt(upstreamK) * (1 - ratio < LinearBelow ? _atLinear * (1 - ratio) / LinearBelow : Raw(ratio));
    }

    private double Through(double ahead, double behind) => ahead * Raw(behind / ahead);

    private double Raw(double ratio)
    {
        if (ratio <= _critical) return _choked;
        if (ratio >= 1) return 0;
        var x = Math.Sqrt(1 - ratio);
        var twice = 2 * (2 * x / _widest - 1);
        double one = 0, two = 0;
        for (var j = Terms - 1; j > 0; j--) (one, two) = (twice * one - two + _terms[j], one);
        return x * (0.5 * twice * one - two + _terms[0]);
    }

    // The ratio at which it passes that much, above its critical one.
    private double RatioOf(double passes) =>
        BracketedRoot.TrySolve(r => Raw(r) - passes, _critical, 1, 0, out var root) ? root.Root : _critical;

    // Pressure between both, over that ahead.
    private double Between(FlowCurve behind, double ratio) =>
        BracketedRoot.TrySolve(p => Raw(p) - behind.Through(p, ratio), Math.Max(ratio, 1e-9), 1, 0, out var root) ? root.Root : ratio;
}
