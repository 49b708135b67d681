using System.Runtime.CompilerServices;
using NotebookKit.Numerics.Functions;

namespace NotebookKit.Propulsion.Flow;

/// <summary>
/// An expansion without heat as a table over x = ln(v/v₀), v the volume of a kilogram: pressure, temperature and energy given up, going on
/// past the last entry with that entry's exponent.
/// </summary>
internal sealed class ExpansionTable
{
    private readonly EvenTable _logPressure;
    private readonly EvenTable _logTemperature;
    private readonly EvenTable _energy;
    private readonly double _end;
    private readonly double _endLogPressure;
    private readonly double _endLogTemperature;
    private readonly double _endEnergy;
    private readonly double _endWork;

    /// <summary>Creates the table from entries at even steps of x.</summary>
    /// <param name="startVolume">v₀ [m³/kg].</param>
    /// <param name="step">Step of x [-].</param>
    /// <param name="entries">ln p, −d ln p/dx, ln T, −d ln T/dx, energy given up [J/kg] of each entry.</param>
    public ExpansionTable(double startVolume, double step, IReadOnlyList<(double LogPressure, double Exponent, double LogTemperature,
        double Cooling, double Energy)> entries)
    {
        StartVolume = startVolume;
        var n = entries.Count;
        double[] logPressure = new double[n], pressureSlope = new double[n], logTemperature = new double[n],
            temperatureSlope = new double[n];
        double[] energy = new double[n], energySlope = new double[n];
        for (var i = 0; i < n; i++)
        {
            var (p, exponent, t, cooling, w) = entries[i];
            (logPressure[i], pressureSlope[i], logTemperature[i], temperatureSlope[i], energy[i]) = (p, -exponent, t, -cooling, w);
            energySlope[i] = Math.Exp(p + i * step) * startVolume;
        }

        _logPressure = new(step, logPressure, pressureSlope);
        _logTemperature = new(step, logTemperature, temperatureSlope);
        _energy = new(step, energy, energySlope);
        _end = (n - 1) * step;
        _endLogPressure = logPressure[^1];
        _endLogTemperature = logTemperature[^1];
        _endEnergy = energy[^1];
        _endWork = energySlope[^1];
        EndExponent = -pressureSlope[^1];
    }

    private ExpansionTable(ReadOnlySpan<ExpansionTable> tables, ReadOnlySpan<double> weights)
    {
        for (var k = 0; k < tables.Length; k++)
        {
            var (table, weight) = (tables[k], weights[k]);
            StartVolume += weight * table.StartVolume;
            EndExponent += weight * table.EndExponent;
            _endLogPressure += weight * table._endLogPressure;
            _endLogTemperature += weight * table._endLogTemperature;
            _endEnergy += weight * table._endEnergy;
            _endWork += weight * table._endWork;
        }

        _end = tables[0]._end;
        _logPressure = EvenTable.Blend(tables, t => t._logPressure, weights);
        _logTemperature = EvenTable.Blend(tables, t => t._logTemperature, weights);
        _energy = EvenTable.Blend(tables, t => t._energy, weights);
    }

    /// <summary>The weighted sum of tables with as many entries each.</summary>
    public static ExpansionTable Blend(ReadOnlySpan<ExpansionTable> tables, ReadOnlySpan<double> weights) => new(tables, weights);

    /// <summary>Where the entries end.</summary>
    public double End => _end;

    /// <summary>v₀ [m³/kg].</summary>
    public double StartVolume { get; }

    /// <summary>The exponent held past the last entry [-].</summary>
    public double EndExponent { get; }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public double LogPressure(double x) => x <= _end ? _logPressure.At(x) : _endLogPressure - EndExponent * (x - _end);

    /// <summary>Logarithm of the pressure, and the isentropic exponent [-], at one look.</summary>
    public double LogPressure(double x, out double exponent)
    {
        if (x <= _end)
        {
            var log = _logPressure.At(x, out var slope);
            exponent = -slope;
            return log;
        }

        exponent = EndExponent;
        return _endLogPressure - EndExponent * (x - _end);
    }

    /// <summary>Pressure [Pa].</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public double Pressure(double x) => Math.Exp(LogPressure(x));

    /// <summary>Isentropic exponent, −d ln p/dx [-].</summary>
    public double Exponent(double x) => x <= _end ? -_logPressure.SlopeAt(x) : EndExponent;

    /// <summary>Fall of temperature, −d ln T/dx [-].</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public double Cooling(double x) => x <= _end ? -_logTemperature.SlopeAt(x) : EndExponent - 1;

    /// <summary>Temperature [K].</summary>
    public double Temperature(double x) =>
        Math.Exp(x <= _end ? _logTemperature.At(x) : _endLogTemperature - (EndExponent - 1) * (x - _end));

    /// <summary>Internal energy given up since x = 0 [J/kg].</summary>
    public double EnergyGivenUp(double x) =>
        x <= _end
            ? _energy.At(x)
            : _endEnergy + _endWork * (1 - Math.Exp(-(EndExponent - 1) * (x - _end))) / (EndExponent - 1);

    /// <summary>Enthalpy given up since another point of the table [J/kg].</summary>
    public double EnthalpyDrop(double from, double to) =>
        EnergyGivenUp(to) - EnergyGivenUp(from) + (Math.Exp(LogPressure(from) + from) - Math.Exp(LogPressure(to) + to)) * StartVolume;

    /// <summary>Where the pressure has fallen to a value, found from a nearby point.</summary>
    public double AtPressure(double logPressurePa, double guess)
    {
        var x = guess;
        for (var i = 0; i < 30; i++)
        {
            var step = (LogPressure(x, out var exponent) - logPressurePa) / exponent;
            x += step;
            // What is left goes with the square of the step: rounding.
            if (Math.Abs(step) < 1e-8) break;
        }

        return x;
    }
}
