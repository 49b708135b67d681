using NotebookKit.Flight.Design;
using NotebookKit.Numerics.Fits;
using NotebookKit.Provenance;
using NotebookKit.Quantities;
using UnitsNet;

namespace NotebookKit.Evidence.FlightFits;

/// <summary>What several flights say together: the drag they share, how it differs from flight to flight, and what is each flight's
/// own.</summary>
/// <remarks>Source: as <see cref="FlightLogs"/>.</remarks>
public sealed record JointFlightFit : Result
{
    private readonly RandomEffects _drag;
    private readonly RandomEffects? _fill;

    internal JointFlightFit(FlightLogs logs, RandomEffects drag, IReadOnlyList<SharedFlight> flights, IReadOnlyList<Finding> findings)
    {
        (Logs, _drag, Flights) = (logs, drag, flights);
        var fitted = flights.Where(f => f.FillErrorBar > 0).ToList();
        if (fitted.Count >= 2)
            _fill = RandomEffects.Of([.. fitted.Select(f => f.FillOffsetBar)], [.. fitted.Select(f => f.FillErrorBar)]);
        Findings = _fill is { } fill && Math.Abs(fill.Mean) > fill.HalfWidth
            ? [.. findings, EvidenceFindings.FillReadsOff(fill.Mean, fill.HalfWidth)] : findings;
    }

    /// <summary>The logs that were fitted.</summary>
    public FlightLogs Logs { get; }

    /// <summary>What is each flight's own, in the order of the logs.</summary>
    public IReadOnlyList<SharedFlight> Flights { get; }

    /// <summary>Factor on the drag the vehicle was given that the flights share [-].</summary>
    public double DragFactor => Math.Exp(_drag.Mean);

    /// <summary>Ends of the 95 % interval of the shared factor [-].</summary>
    public (double Low, double High) DragInterval => Around(_drag.HalfWidth);

    /// <summary>Ends of the interval that holds the factor of the next flight in 95 % [-].</summary>
    public (double Low, double High) NextFlightInterval => Around(_drag.NextHalfWidth);

    /// <summary>How far the factor differs from flight to flight, one standard deviation as a share of it; 0 where the flights differ no
    /// more than their logs leave open.</summary>
    public Ratio BetweenFlights => Ratio.FromPercent(100 * Math.Sqrt(_drag.BetweenVariance));

    /// <summary>By how much the effective fill pressures are above what the gauge read, on average; none where the gauge was
    /// trusted.</summary>
    public Pressure? FillOffset => _fill is { } fill ? Pressure.FromBars(fill.Mean) : null;

    /// <summary>Half of the 95 % interval of that; none where the gauge was trusted.</summary>
    public Pressure? FillOffsetUncertainty => _fill is { } fill ? Pressure.FromBars(fill.HalfWidth) : null;

    /// <summary>The flights that lie apart from what the others say.</summary>
    public IReadOnlyList<string> Disagreeing => [.. Flights.Where(f => f.Disagrees).Select(f => f.Log.Name)];

    /// <summary>What the vehicle is to fly with from now on: the shared factor, and the band of the next flight.</summary>
    public DragCalibration Calibration
    {
        get
        {
            var (low, high) = NextFlightInterval;
            return new(DragFactor * (Logs.Flights[0].Vehicle.DragCalibration?.Factor ?? 1),
                Ratio.FromPercent(Math.Min(90, 100 * Math.Max(high / DragFactor - 1, 1 - low / DragFactor))),
                new Source("", $"fitted to {string.Join(", ", Flights.Select(f => f.Log.Name))}", null,
                    $"95 % interval of the next flight, {Flights.Count} flights", SourceKind.Measured));
        }
    }

    /// <inheritdoc/>
    public override string Title => $"{Logs.Flights[0].Vehicle.Name}, drag shared by {Flights.Count} flights";

    /// <inheritdoc/>
    public override ModelCard Model => new(
        "Flights fitted together, with scatter from flight to flight",
        [
            "Shared by the flights: one factor on the drag, which differs a little from flight to flight with wind, tilt and finish.",
            "Each flight's own: effective fill pressure, moment of launch, zero of the height, scatter of the altimeter.",
            "Every flight by itself as a single fit; its interval takes readings as independent, and what that leaves out shows as scatter "
                + "from flight to flight.",
        ],
        "Two to thirty flights of one shape, each as a single fit allows.",
        [
            new("R. DerSimonian, N. Laird", "Meta-analysis in clinical trials, Controlled Clinical Trials 7, 177", 1986, "",
                SourceKind.Unverified),
            new("G. Knapp, J. Hartung", "Improved tests for a random effects meta-regression, Statistics in Medicine 22, 2693", 2003, "",
                SourceKind.Unverified),
            new("J. P. T. Higgins, S. G. Thompson, D. J. Spiegelhalter", "A re-evaluation of random-effects meta-analysis, J. R. Statist. "
                + "Soc. A 172, 137", 2009, "", SourceKind.Unverified),
            PressureHeight.Source,
        ]);

    /// <inheritdoc/>
    public override ResultStatus Status => HasError ? ResultStatus.Failed : ResultStatus.Completed;

    /// <inheritdoc/>
    public override IReadOnlyList<ResultLine> Lines =>
    [
        new("Shared drag", $"{Digits.Round(DragFactor)} times the assumed drag", $"95 %: {Between(DragInterval)}"),
        new("Drag from flight to flight", $"{Digits.Round(BetweenFlights.Percent, 2)} %",
            $"one standard deviation; the next flight, 95 %: {Between(NextFlightInterval)} times"),
        .. FillOffset is { } offset ? new ResultLine[] { new("Effective fill pressure less gauge", $"{Digits.Round(offset.Bars, 2)} bar",
            $"± {Digits.Round(FillOffsetUncertainty!.Value.Bars, 2)} bar, the mean of the flights") } : [],
        .. Flights.Select(f => new ResultLine(f.Log.Name, $"{Digits.Round(f.OwnDragFactor)} times by itself",
            $"95 %: {Between(f.OwnDragInterval)}; with the shared drag a fill as of {Digits.Round(f.EffectiveFillPressure.Bar)} bar gauge"
            + (f.Log.TrustGauge ? ", as the gauge read" : $" ± {Digits.Round(f.EffectiveFillPressureUncertainty.Bars, 2)} bar")
            + $", launch at {Digits.Round(f.LaunchAt.Seconds, 4)} s{(f.Disagrees ? "; disagrees" : "")}")),
    ];

    /// <inheritdoc/>
    public override IReadOnlyList<Caution> Cautions => Provenance.Cautions.ForFlight;

    /// <inheritdoc/>
    public override Working Working => new(Title,
    [
        new("Scatter from flight to flight", @"\tau^2 = \max\left(0, \frac{Q - (k - 1)}{\sum w_i - \sum w_i^2 / \sum w_i}\right),\quad "
            + @"Q = \sum w_i (\ln f_i - \overline{\ln f})^2,\quad w_i = 1/s_i^2", $"k = {_drag.Count}, Q = "
            + $"{Digits.Round(_drag.Heterogeneity)}",
            $"τ = {Digits.Round(Math.Sqrt(_drag.BetweenVariance), 2)}", Model.Sources[0]),
        new("Shared drag", @"\ln f = \frac{\sum w_i^* \ln f_i}{\sum w_i^*},\quad w_i^* = \frac{1}{s_i^2 + \tau^2}",
            string.Join(", ", Flights.Select(f => Digits.Round(f.OwnDragFactor))), $"f = {Digits.Round(DragFactor)}", Model.Sources[0]),
    ]);

    private (double Low, double High) Around(double half) => (Math.Exp(_drag.Mean - half), Math.Exp(_drag.Mean + half));

    private static string Between((double Low, double High) ends) => $"{Digits.Round(ends.Low)} to {Digits.Round(ends.High)}";
}
