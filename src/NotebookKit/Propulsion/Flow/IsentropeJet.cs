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
    public IsentropeJet(ExpansionTable table, double lowestPa)
    {
        _table = table;
        var last = table.AtPressure(Math.Log(lowestPa), (table.LogPressure(0) - Math.Log(lowestPa)) / 1.4);
        var n = Math.Max(6, (int)Math.Ceiling(last / Step) + 2);
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

    public ExpansionTable Table => _table;

    /// <summary>Outside over inside pressure at and below which the throat is sonic [-].</summary>
    public double CriticalRatio(double x) => _critical.At(x);

    /// <summary>Mass flow [kg/s] and thrust [N] through an area, from the state x of the vessel.</summary>
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

        var speed = ExitSpeed(x, pressurePa, ambientPa, out var exit);
        var flow = areaM2 * speed / (_table.StartVolume * Math.Exp(exit));
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

    private double ExitSpeed(double x, double pressurePa, double ambientPa, out double exit)
    {
        var log = Math.Log(ambientPa);
        exit = _table.AtPressure(log, x + (Math.Log(pressurePa) - log) / _table.Exponent(x));
        return Math.Sqrt(2 * Math.Max(0, _table.EnthalpyDrop(x, exit)));
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
