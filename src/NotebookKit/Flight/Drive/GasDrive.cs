using NotebookKit.Propulsion.Phases;

namespace NotebookKit.Flight.Drive;

/// <summary>Gas leaving. Unknowns: gas mass [kg], gas temperature [K]. The equations are those of a firing, <see cref="AirPhase{TMount}"/>.</summary>
internal readonly struct GasDrive(FiringSetup setup, double waterLeftKg, double thrustFactor) : IDrive
{
    private readonly AirJet _jet = setup.AirJet;
    private readonly double _chamberM3 = setup.ChamberM3;
    private readonly double _exponent = setup.AirExponent;
    private readonly double _endRatio = setup.EndPressureRatio;

    public int Unknowns => 2;

    public bool IsJetOn => true;

    public int Ends => 1;

    public double ContentsKg(ReadOnlySpan<double> own) => waterLeftKg + own[0];

    public DriveState Run(double ambientPa, double resistanceN, double dryKg, ReadOnlySpan<double> own, Span<double> ownRates)
    {
        var pressure = Pressure(own);
        var flow = _jet.MassFlow(pressure, own[1], ambientPa, out var thrust);
        ownRates[0] = -flow;
        ownRates[1] = -(_exponent - 1) * own[1] * flow / own[0];
        return new(thrustFactor * thrust, waterLeftKg, own[0], flow, pressure);
    }

    public double End(int way, double ambientPa, ReadOnlySpan<double> own) => Pressure(own) - (_endRatio * ambientPa);

    private double Pressure(ReadOnlySpan<double> own) => own[0] * _jet.GasConstant * own[1] / _chamberM3;
}
