using NotebookKit.Quantities;
using UnitsNet;

namespace NotebookKit.Evidence.FlightFits;

/// <summary>What is one flight's own where several are fitted together.</summary>
/// <remarks>Source: as <see cref="FlightLogs"/>.</remarks>
public sealed record SharedFlight
{
    private const double Normal95 = 1.959964;

    private readonly OneFlightNumbers _own, _shared;

    internal SharedFlight(FlightLog log, OneFlightNumbers own, OneFlightNumbers shared, bool disagrees) =>
        (Log, _own, _shared, Disagrees) = (log, own, shared, disagrees);

    /// <summary>The log.</summary>
    public FlightLog Log { get; }

    /// <summary>Factor on drag that this flight alone gives [-].</summary>
    public double OwnDragFactor => Math.Exp(_own.LogFactor);

    /// <summary>Ends of the 95 % interval of that factor [-].</summary>
    public (double Low, double High) OwnDragInterval =>
        (Math.Exp(_own.LogFactor - Normal95 * _own.FactorError), Math.Exp(_own.LogFactor + Normal95 * _own.FactorError));

    /// <summary>Fill pressure that the push looks like with the shared drag.</summary>
    public GaugePressure EffectiveFillPressure => _shared.FillBar.BarGauge();

    /// <summary>Half of the 95 % interval of that pressure, the shared drag taken as true.</summary>
    public Pressure EffectiveFillPressureUncertainty => Pressure.FromBars(Normal95 * _shared.FillErrorBar);

    /// <summary>Moment of launch on the log's clock.</summary>
    public Duration LaunchAt => Duration.FromSeconds(_shared.LaunchSeconds);

    /// <summary>Scatter of the logged height about the fit with the shared drag, one standard deviation.</summary>
    public Length Scatter => Length.FromMeters(_shared.ScatterMetres);

    /// <summary>Whether its drag lies apart from what the other flights say.</summary>
    public bool Disagrees { get; }

    internal double FillErrorBar => _shared.FillErrorBar;

    internal double FillOffsetBar => _shared.FillBar - Log.Vehicle.Charge.Pressure.Bar;

    internal int Readings => _own.Readings;
}
