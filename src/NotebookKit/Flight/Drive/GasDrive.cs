using System.Runtime.CompilerServices;
using NotebookKit.Propulsion.Phases;

namespace NotebookKit.Flight.Drive;

/// <summary>Gas leaving. Unknowns: gas mass [kg], gas temperature [K]. The equations are those of a firing.</summary>
internal readonly struct GasDrive(FiringSetup setup, double waterLeftKg, double thrustFactor) : IDrive
{
    private readonly GasOutflow _outflow = new(setup);
    private readonly double _endRatio = setup.EndPressureRatio;

    public int Unknowns => 2;

    public bool IsJetOn => true;

    public int Ends => 1;

    public double ContentsKg(ReadOnlySpan<double> own) => waterLeftKg + own[0];

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public DriveState Run(double ambientPa, double resistanceN, double speedMps, double dryKg, ReadOnlySpan<double> own,
        Span<double> ownRates)
    {
        var flow = _outflow.MassFlow(own[0], own[1], ambientPa, out var pressure, out var thrust, out var kelvinRate);
        ownRates[0] = -flow;
        ownRates[1] = kelvinRate;
        return new(thrustFactor * thrust, waterLeftKg, own[0], flow, pressure);
    }

    public double End(int way, double ambientPa, ReadOnlySpan<double> own) => _outflow.Pressure(own[0], own[1]) - (_endRatio * ambientPa);
}
