using System.Runtime.CompilerServices;
using NotebookKit.Propulsion.Flow;

namespace NotebookKit.Propulsion.Phases;

/// <summary>Gas leaving a vessel without heat from its wall, for any path of flight: ideal by its exponent, or real on one
/// isentrope.</summary>
internal readonly struct GasOutflow(FiringSetup setup)
{
    private readonly AirJet _ideal = setup.AirJet;
    private readonly IsentropeJet? _real = setup.Tables.Jet;
    private readonly double _areaM2 = setup.AirAreaM2;
    private readonly double _chamberM3 = setup.ChamberM3;
    private readonly double _exponent = setup.AirExponent;

    /// <summary>Pressure [Pa] of a mass [kg] at a temperature [K]; of a real gas the mass says it all.</summary>
    public double Pressure(double massKg, double temperatureK) =>
        _real is null ? massKg * _ideal.GasConstant * temperatureK / _chamberM3 : _real.Table.Pressure(Position(massKg));

    /// <summary>Mass flow [kg/s], with pressure [Pa], thrust [N] and rate of temperature [K/s].</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public double MassFlow(double massKg, double temperatureK, double ambientPa, out double pressurePa, out double thrustN,
        out double kelvinRate)
    {
        double flow;
        if (_real is null)
        {
            pressurePa = massKg * _ideal.GasConstant * temperatureK / _chamberM3;
            flow = _ideal.MassFlow(pressurePa, temperatureK, ambientPa, out thrustN);
            kelvinRate = -(_exponent - 1) * temperatureK * flow / massKg;
            return flow;
        }

        var x = Position(massKg);
        pressurePa = _real.Table.Pressure(x);
        flow = _real.MassFlow(x, pressurePa, _areaM2, ambientPa, out thrustN);
        kelvinRate = -_real.Table.Cooling(x) * temperatureK * flow / massKg;
        return flow;
    }

    private double Position(double massKg) => Math.Log(_chamberM3 / (massKg * _real!.Table.StartVolume));
}
