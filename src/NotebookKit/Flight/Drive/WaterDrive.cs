using System.Runtime.CompilerServices;
using NotebookKit.Propulsion.Flow;
using NotebookKit.Propulsion.Phases;

namespace NotebookKit.Flight.Drive;

/// <summary>Water leaving, quasi-steady. Unknown: gas volume [m³]. The equations are those of a firing,
/// <see cref="WaterPhase{TMount}"/>.</summary>
internal readonly struct WaterDrive(FiringSetup setup, double thrustFactor) : IDrive
{
    public const int WaterOut = 0, Spent = 1;

    private readonly WaterJet _jet = setup.WaterJet;
    private readonly ClosedGasLaw _expansion = setup.ClosedGas.ForStartVolume(setup.StartM3 * setup.AboardShare);
    private readonly double _chamberM3 = setup.ChamberM3;
    private readonly double _gasKg = setup.GasKg;
    private readonly double _endRatio = setup.EndPressureRatio;
    private readonly bool _withHead = setup.WithHead;

    public int Unknowns => 1;

    public bool IsJetOn => true;

    public int Ends => 2;

    public double ContentsKg(ReadOnlySpan<double> own) => _gasKg + (_jet.Density * (_chamberM3 - own[0]));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public DriveState Run(double ambientPa, double resistanceN, double speedMps, double dryKg, ReadOnlySpan<double> own,
        Span<double> ownRates)
    {
        var left = _chamberM3 - own[0];
        var pressure = _expansion.Pressure(own[0]);
        var difference = pressure - ambientPa;
        var speed = _withHead
            ? _jet.SpeedFree(difference, Math.Max(0, left) / _jet.BoreAreaM2, resistanceN, dryKg + ContentsKg(own))
            : _jet.Speed(difference);
        var flow = _jet.JetAreaM2 * speed;
        ownRates[0] = flow;
        return new(thrustFactor * _jet.Density * flow * speed, _jet.Density * left, _gasKg, _jet.Density * flow, pressure);
    }

    public double End(int way, double ambientPa, ReadOnlySpan<double> own) =>
        way == WaterOut ? _chamberM3 - own[0] : _expansion.Pressure(own[0]) - (_endRatio * ambientPa);

    public double Temperature(double volumeM3) => _expansion.Temperature(volumeM3);

    public double WaterKg(double volumeM3) => _jet.Density * Math.Max(0, _chamberM3 - volumeM3);
}
