using System.Runtime.CompilerServices;
using NotebookKit.Numerics;
using NotebookKit.Numerics.Functions;

namespace NotebookKit.Propulsion.Flow;

/// <summary>The gas jet of a converging nozzle for a gas that stays on one tabulated isentrope, in the vessel and on its way out.</summary>
/// <remarks>Source: energy equation u² = 2 Δh along the isentrope; sonic where u² = κ p v.</remarks>
internal sealed class IsentropeJet
{
    private const double Step = 0.05;

    private readonly ExpansionTable _table;
    private readonly EvenTable _logFlux;
    private readonly EvenTable _momentum;
    private readonly EvenTable _critical;

    /// <summary>Tabulates the sonic jet for every state of the vessel down to a pressure.</summary>
    /// <param name="table">The isentrope.</param>
    /// <param name="lowestPa">Pressure down to which there have to be entries [Pa].</param>
    /// <param name="least">Number of entries at least.</param>
    public IsentropeJet(ExpansionTable table, double lowestPa, int least = 6)
    {
        _table = table;
        var last = table.AtPressure(Math.Log(lowestPa), (table.LogPressure(0) - Math.Log(lowestPa)) / 1.4);
        var n = Math.Max(least, (int)Math.Ceiling(last / Step) + 2);
        Entries = n;
        double[] flux = new double[n], momentum = new double[n], critical = new double[n];
        var run = WorkRun.Current;
        for (var i = 0; i < n; i++)
        {
            run.ThrowIfStopped();
            var x = i * Step;
            var throat = Throat(x);
            double volume = table.StartVolume * Math.Exp(throat), pressure = table.Pressure(throat);
            var speed = Math.Sqrt(table.Exponent(throat) * pressure * volume);
            var here = table.Pressure(x);
            flux[i] = Math.Log(speed / volume);
            momentum[i] = (speed * speed / volume + pressure) / here;
            critical[i] = pressure / here;
        }

        _logFlux = new(Step, flux, Slopes(flux));
        _momentum = new(Step, momentum, Slopes(momentum));
        _critical = new(Step, critical, Slopes(critical));
    }

    private IsentropeJet(ExpansionTable table, ReadOnlySpan<IsentropeJet> jets, ReadOnlySpan<double> weights)
    {
        _table = table;
        Entries = jets[0].Entries;
        _logFlux = EvenTable.Blend(jets, j => j._logFlux, weights);
        _momentum = EvenTable.Blend(jets, j => j._momentum, weights);
        _critical = EvenTable.Blend(jets, j => j._critical, weights);
    }

    /// <summary>The weighted sum of jets with as many entries each, on the sum of their isentropes.</summary>
    public static IsentropeJet Blend(ExpansionTable table, ReadOnlySpan<IsentropeJet> jets, ReadOnlySpan<double> weights) =>
        new(table, jets, weights);

    public ExpansionTable Table => _table;

    /// <summary>Number of states tabulated.</summary>
    public int Entries { get; }

    /// <summary>Outside over inside pressure at and below which the throat is sonic [-].</summary>
    public double CriticalRatio(double x) => _critical.At(x);

    /// <summary>Mass flow [kg/s] and thrust [N] through an area, from the state x of the vessel.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public double MassFlow(double x, double pressurePa, double areaM2, double ambientPa, out double thrustN)
    {
        if (ambientPa <= _critical.At(x) * pressurePa)
        {
            thrustN = areaM2 * (_momentum.At(x) * pressurePa - ambientPa);
            return areaM2 * Math.Exp(_logFlux.At(x));
        }

        if (!(ambientPa < pressurePa))
        {
            thrustN = 0;
            return 0;
        }

        var speed = ExitSpeed(x, pressurePa, ambientPa, out var volume);
        var flow = areaM2 * speed / volume;
        thrustN = flow * speed;
        return flow;
    }

    /// <summary>Speed at the exit plane [m/s].</summary>
    public double ExitSpeed(double x, double pressurePa, double ambientPa)
    {
        if (ambientPa <= _critical.At(x) * pressurePa)
        {
            var throat = Throat(x);
            return Math.Sqrt(_table.Exponent(throat) * Math.Exp(_table.LogPressure(throat) + throat) * _table.StartVolume);
        }

        return ambientPa < pressurePa ? ExitSpeed(x, pressurePa, ambientPa, out _) : 0;
    }

    /// <summary>Speed [m/s] and volume of a kilogram [m³/kg] at the exit plane, where the pressure is that outside.</summary>
    private double ExitSpeed(double x, double pressurePa, double ambientPa, out double volume)
    {
        var log = Math.Log(ambientPa);
        var exit = _table.AtPressure(log, x + (_table.LogPressure(x, out var exponent) - log) / exponent);
        volume = _table.StartVolume * Math.Exp(exit);
        var work = pressurePa * _table.StartVolume * Math.Exp(x) - ambientPa * volume;
        var drop = _table.EnergyGivenUp(exit) - _table.EnergyGivenUp(x) + work;
        return Math.Sqrt(2 * Math.Max(0, drop));
    }

    /// <summary>Where the flow from a state at rest reaches the speed of sound: secant on 2 Δh − κ p v.</summary>
    private double Throat(double x)
    {
        var gamma = _table.Exponent(x);
        var at = x + Math.Log((gamma + 1) / 2) / (gamma - 1);
        for (var i = 0; i < 60; i++)
        {
            // d(2Δh)/dx = 2 κ p v and d(κ p v)/dx ≈ −(κ − 1) κ p v.
            var square = _table.Exponent(at) * Math.Exp(_table.LogPressure(at) + at) * _table.StartVolume;
            var step = (square - 2 * _table.EnthalpyDrop(x, at)) / ((gamma + 1) * square);
            at += step;
            if (Math.Abs(step) < 1e-12) break;
        }

        return at;
    }

    // Differences of fourth order inside, of second order at the ends.
    private static double[] Slopes(double[] v)
    {
        var n = v.Length;
        var slopes = new double[n];
        for (var i = 2; i < n - 2; i++) slopes[i] = (v[i - 2] - 8 * v[i - 1] + 8 * v[i + 1] - v[i + 2]) / (12 * Step);
        slopes[0] = (-25 * v[0] + 48 * v[1] - 36 * v[2] + 16 * v[3] - 3 * v[4]) / (12 * Step);
        slopes[1] = (-3 * v[0] - 10 * v[1] + 18 * v[2] - 6 * v[3] + v[4]) / (12 * Step);
        slopes[^1] = (25 * v[^1] - 48 * v[^2] + 36 * v[^3] - 16 * v[^4] + 3 * v[^5]) / (12 * Step);
        slopes[^2] = (3 * v[^1] + 10 * v[^2] - 18 * v[^3] + 6 * v[^4] - v[^5]) / (12 * Step);
        return slopes;
    }
}
