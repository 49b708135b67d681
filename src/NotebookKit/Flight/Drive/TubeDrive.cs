using NotebookKit.Propulsion.Flow;
using NotebookKit.Propulsion.Phases;

namespace NotebookKit.Flight.Drive;

/// <summary>Riding up a launch tube, gas pushing as on a piston. Unknown: gas volume [m³]. The equations are those of a firing,
/// <see cref="TubePhase{TMount}"/>.</summary>
internal readonly struct TubeDrive(FiringSetup setup, double thrustFactor) : IDrive
{
    private readonly ClosedGasLaw _gas = setup.ClosedGas;
    private readonly double _areaM2 = setup.TubeAreaM2;
    private readonly double _endM3 = setup.StartM3 + (setup.TubeAreaM2 * setup.TubeStrokeM);
    private readonly double _waterKg = setup.WaterKg;
    private readonly double _gasKg = setup.StartGasKg;

    public int Unknowns => 1;

    public bool IsJetOn => false;

    public int Ends => 1;

    public double ContentsKg(ReadOnlySpan<double> own) => _waterKg + _gasKg;

    public DriveState Run(double ambientPa, double resistanceN, double speedMps, double dryKg, ReadOnlySpan<double> own,
        Span<double> ownRates)
    {
        var pressure = _gas.Pressure(own[0]);
        ownRates[0] = _areaM2 * speedMps;
        return new(thrustFactor * _areaM2 * (pressure - ambientPa), _waterKg, _gasKg, 0, pressure);
    }

    public double End(int way, double ambientPa, ReadOnlySpan<double> own) => _endM3 - own[0];
}
