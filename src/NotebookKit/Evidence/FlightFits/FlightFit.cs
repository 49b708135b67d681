using NotebookKit.Flight.Design;
using NotebookKit.Flight.Flights;
using NotebookKit.Provenance;
using NotebookKit.Quantities;
using UnitsNet;

namespace NotebookKit.Evidence.FlightFits;

/// <summary>What a flight log says about drag and push, with what it can and can't tell.</summary>
/// <remarks>Source: as <see cref="FlightLog"/>.</remarks>
public sealed record FlightFit : Result
{
    private readonly FlightFitNumbers _fit;

    internal FlightFit(FlightLog log, FlightFitNumbers fit, int[] used, IReadOnlyList<Finding> findings)
    {
        (Log, _fit) = (log, fit);
        Time = log.Time with { Values = [.. used.Select(i => log.Time[i])] };
        Logged = new("Height, logged", "m", [.. used.Select(i => log.Height[i])]);
        Predicted = new("Height, fitted", "m", fit.Fitted);
        var meant = log.Vehicle.Fly(log.Site);
        AsMeant = new("Height, as planned", "m", [.. Time.Values.Select(t => FlightFitting.HeightAt(meant, t - fit.Parameters[2]))]);
        Findings = [.. findings, .. Say()];
    }

    /// <summary>The log that was fitted.</summary>
    public FlightLog Log { get; }

    /// <summary>The log's clock over the readings that were used, from before launch to the top.</summary>
    public Series Time { get; }

    /// <summary>Logged height at those times.</summary>
    public Series Logged { get; }

    /// <summary>Fitted height at those times.</summary>
    public Series Predicted { get; }

    /// <summary>Height as it was predicted before the flight, from the fitted moment of launch.</summary>
    public Series AsMeant { get; }

    /// <summary>Logged less fitted height at those times.</summary>
    public Series Residual => new("Logged minus fitted", "m", [.. Logged.Values.Zip(Predicted.Values, (a, b) => a - b)]);

    /// <summary>Factor on the drag the vehicle was given [-].</summary>
    public double DragFactor => Math.Exp(_fit.Parameters[0]);

    /// <summary>Ends of the 95 % interval of the factor on drag [-].</summary>
    public (double Low, double High) DragInterval => (Math.Exp(_fit.Parameters[0] - _fit.HalfWidths[0]),
        Math.Exp(_fit.Parameters[0] + _fit.HalfWidths[0]));

    /// <summary>Fill pressure that the push looks like; compare it with what the gauge read.</summary>
    public GaugePressure EffectiveFillPressure => _fit.Parameters[1].BarGauge();

    /// <summary>Half of the 95 % interval of that pressure.</summary>
    public Pressure EffectiveFillPressureUncertainty => Pressure.FromBars(_fit.HalfWidths[1]);

    /// <summary>Moment of launch on the log's clock.</summary>
    public Duration LaunchAt => Duration.FromSeconds(_fit.Parameters[2]);

    /// <summary>Scatter of the logged height about the fit, one standard deviation.</summary>
    public Length Scatter => Length.FromMeters(_fit.Scatter);

    /// <summary>Correlation of drag and push in the fit [-]; near 1 the log can't tell more drag from more fill pressure.</summary>
    public double Correlation => _fit.Correlation;

    /// <summary>What the vehicle is to fly with from now on.</summary>
    public DragCalibration Calibration
    {
        get
        {
            var (low, high) = DragInterval;
            return new(DragFactor * (Log.Vehicle.DragCalibration?.Factor ?? 1),
                Ratio.FromPercent(Math.Min(90, 100 * Math.Max(high / DragFactor - 1, 1 - low / DragFactor))),
                new Source("", $"fitted to {Log.Name}", null, $"95 % interval, {Time.Count} readings", SourceKind.Measured));
        }
    }

    /// <inheritdoc/>
    public override string Title => $"{Log.Vehicle.Name}, drag and effective fill pressure fitted to {Log.Name}";

    /// <inheritdoc/>
    public override ModelCard Model => new(
        "Least squares of the flight model",
        [
            "Independent readings of the altimeter with one scatter, in air whose temperature falls by 6.5 K a kilometre from "
                + "that at the pad.",
            "One factor on the drag at every speed; the thrust is that of a fill at another pressure; mass, water and nozzle as given.",
            "From before launch to apogee; the way down isn't used. The sensor reads at once what the air is; a vent hole in the wrong "
                + "place shows as drag.",
        ],
        "Flights of 10 m and more, factors on drag of 0.25 to 4, effective fill pressure of half to one and a half times "
        + "the fill pressure, no more than the rating.",
        [new("G. A. F. Seber, C. J. Wild", "Nonlinear Regression", 1989, "chapter 5", SourceKind.Unverified), PressureHeight.Source]);

    /// <inheritdoc/>
    public override ResultStatus Status => _fit.Settled ? ResultStatus.Completed : ResultStatus.Failed;

    /// <inheritdoc/>
    public override IReadOnlyList<ResultLine> Lines =>
    [
        new("Drag", $"{Digits.Round(DragFactor)} times the assumed drag",
            $"95 %: {Digits.Round(DragInterval.Low)} to {Digits.Round(DragInterval.High)}"),
        Log.TrustGauge
            ? new("Effective fill pressure", $"as of {Log.Vehicle.Charge.Pressure}", "as the gauge read; not fitted")
            : new("Effective fill pressure", $"as of {Digits.Round(EffectiveFillPressure.Bar)} bar gauge",
                $"± {Digits.Round(EffectiveFillPressureUncertainty.Bars, 2)} bar; the gauge read {Log.Vehicle.Charge.Pressure}"),
        new("Launch", $"at {Digits.Round(LaunchAt.Seconds, 4)} s on the log's clock", $"± {Digits.Round(1000 * _fit.HalfWidths[2], 2)} ms"),
        new("Apogee, logged", $"{Digits.Round(Logged.Values.Max())} m", $"planned: {Digits.Round(AsMeant.Values.Max())} m"),
        new("Scatter", $"{Digits.Round(Scatter.Meters, 2)} m", "of the altimeter about the fit"),
        .. Log.TrustGauge ? [] : new ResultLine[] { new("Correlation of drag and effective fill pressure", Digits.Round(Correlation, 2),
            "correlation; 1 would mean that the log can't tell them apart") },
    ];

    /// <inheritdoc/>
    public override IReadOnlyList<Caution> Cautions => Provenance.Cautions.ForFlight;

    /// <inheritdoc/>
    public override Working Working => new(Title,
    [
        new("Height from pressure", @"h = \frac{T_0}{L}\left[1 - \left(\frac{p}{p_0}\right)^{R L/g}\right]",
            $"T₀ = {Digits.Round((Log.Temperature ?? Log.Site.Temperature).Kelvins, 4)} K, p₀ = "
            + $"{Digits.Round(Log.GroundBar * 1000, 5)} hPa", $"up to {Digits.Round(Logged.Values.Max())} m", PressureHeight.Source),
        new("Drag and effective fill pressure", @"\min_{f,\,p,\,t_0,\,h_0} \sum_i (h_i - h_0 - h(t_i - t_0;\,f,\,p))^2",
            $"{Time.Count} readings, {_fit.Evaluations} flights",
            $"f = {Digits.Round(DragFactor)}, p = {Digits.Round(EffectiveFillPressure.Bar)} bar gauge",
            new("D. W. Marquardt", "An algorithm for least-squares estimation of nonlinear parameters, J. SIAM 11, 431", 1963, "",
            SourceKind.Unverified)),
    ]);

    private IEnumerable<Finding> Say()
    {
        if (!_fit.Settled) yield return EvidenceFindings.FitDidNotSettle();
        var (low, high) = DragInterval;
        if (high / low > 2) yield return EvidenceFindings.LogCannotTellDragWell(low, high);
        if (Math.Abs(Correlation) > 0.95) yield return EvidenceFindings.LogCannotTellDragFromPush();
        var off = EffectiveFillPressure.Bar - Log.Vehicle.Charge.Pressure.Bar;
        if (Math.Abs(off) > EffectiveFillPressureUncertainty.Bars + 0.03 * Log.Vehicle.Charge.Pressure.Bar)
            yield return EvidenceFindings.PushDiffersFromGauge(Math.Abs(off), off);
        if (PatternInResiduals() > 0.5) yield return EvidenceFindings.ResidualsAreNotChance();
        yield return EvidenceFindings.OneFlightIsNotEnough();
    }

    // Correlation of each residual with the next.
    private double PatternInResiduals()
    {
        var r = Residual.Values;
        double own = r.Sum(v => v * v), next = r.Zip(r.Skip(1), (a, b) => a * b).Sum();
        return own > 0 ? next / own : 0;
    }
}

/// <summary>Numbers of a flight fit: ln of the factor on drag, fill pressure [bar gauge], moment of launch [s], zero of the height
/// [m].</summary>
internal sealed record FlightFitNumbers(double[] Parameters, double[] HalfWidths, double Correlation, double[] Fitted, double Scatter,
    bool Settled, int Evaluations);
