using System.Runtime.CompilerServices;

namespace NotebookKit.Propulsion.Flow;

/// <summary>The air jet of a converging nozzle as numbers: what leaves and what it pushes with.</summary>
/// <remarks>Source: one-dimensional isentropic flow, NACA Report 1135 (1953); choked below the critical pressure ratio.</remarks>
internal readonly struct AirJet
{
    private readonly double _flowFactor;
    private readonly double _thrustFactor;
    private readonly double _energyFactor;
    private readonly double _exponent;

    public AirJet(double areaM2, double gasConstant, double heatCapacityRatio)
    {
        AreaM2 = areaM2;
        GasConstant = gasConstant;
        Gamma = heatCapacityRatio;
        var half = 2 / (Gamma + 1);
        CriticalRatio = Math.Pow(half, Gamma / (Gamma - 1));
        _flowFactor = areaM2 * Math.Sqrt(Gamma / gasConstant) * Math.Pow(half, (Gamma + 1) / (2 * (Gamma - 1)));
        _thrustFactor = areaM2 * 2 * Math.Pow(half, 1 / (Gamma - 1));
        _energyFactor = 2 * Gamma / (Gamma - 1) * gasConstant;
        _exponent = (Gamma - 1) / Gamma;
    }

    public double AreaM2 { get; }

    public double GasConstant { get; }

    public double Gamma { get; }

    /// <summary>Ambient over gas pressure at or below which the throat is sonic [-].</summary>
    public double CriticalRatio { get; }

    /// <summary>Mass flow [kg/s] and thrust [N].</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public double MassFlow(double pressurePa, double temperatureK, double ambientPa, out double thrustN)
    {
        if (ambientPa <= CriticalRatio * pressurePa)
        {
            thrustN = _thrustFactor * pressurePa - AreaM2 * ambientPa;
            return _flowFactor * pressurePa / Math.Sqrt(temperatureK);
        }

        return Unchoked(pressurePa, temperatureK, ambientPa, out thrustN);
    }

    /// <summary>Speed at the exit plane [m/s].</summary>
    public double ExitSpeed(double pressurePa, double temperatureK, double ambientPa)
    {
        if (ambientPa <= CriticalRatio * pressurePa) return Math.Sqrt(2 * Gamma / (Gamma + 1) * GasConstant * temperatureK);
        return ambientPa >= pressurePa ? 0 : Math.Sqrt(_energyFactor * temperatureK * (1 - Math.Pow(ambientPa / pressurePa, _exponent)));
    }

    private double Unchoked(double pressurePa, double temperatureK, double ambientPa, out double thrustN)
    {
        if (!(ambientPa < pressurePa))
        {
            thrustN = 0;
            return 0;
        }

        var exitTemperature = temperatureK * Math.Pow(ambientPa / pressurePa, _exponent);
        var speed = Math.Sqrt(_energyFactor * (temperatureK - exitTemperature));
        var flow = AreaM2 * ambientPa / (GasConstant * exitTemperature) * speed;
        thrustN = flow * speed;
        return flow;
    }
}
