using NotebookKit.Filling.Balances;
using NotebookKit.Filling.Fills;
using NotebookKit.Filling.Restrictors;
using NotebookKit.Numerics.Fits;
using NotebookKit.Provenance;
using NotebookKit.Quantities;
using UnitsNet;

namespace NotebookKit.Filling.Measured;

/// <summary>A restrictor as a fill log shows it, with what the log can and can't tell.</summary>
/// <remarks>Source: as <see cref="FillLog"/>.</remarks>
public sealed record FillFit : Result
{
    private readonly CurveFit _fit;

    internal FillFit(FillLog log, CurveFit fit, IReadOnlyList<Finding> findings)
    {
        (Log, _fit) = (log, fit);
        Predicted = new("Fitted pressure", "bar gauge", fit.Fitted);
        Findings = [.. findings, .. Say()];
    }

    /// <summary>The log that was fitted.</summary>
    public FillLog Log { get; }

    /// <summary>Effective sonic conductance of everything between regulator and vessel.</summary>
    public SonicConductance Conductance => SonicConductance.FromLitresPerSecondBar(Math.Exp(_fit.Parameters[0]));

    /// <summary>Lower end of the 95 % confidence interval of the conductance.</summary>
    public SonicConductance ConductanceLow => SonicConductance.FromLitresPerSecondBar(Math.Exp(_fit.Parameters[0] - _fit.HalfWidths[0]));

    /// <summary>Upper end of the 95 % confidence interval of the conductance.</summary>
    public SonicConductance ConductanceHigh => SonicConductance.FromLitresPerSecondBar(Math.Exp(_fit.Parameters[0] + _fit.HalfWidths[0]));

    /// <summary>Time on the log's clock at which the valve was opened.</summary>
    public Duration OpenedAt => Duration.FromSeconds(_fit.Parameters[1]);

    /// <summary>Pressure at which the valve was shut.</summary>
    public GaugePressure ShutAt => _fit.Parameters[3].BarGauge();

    /// <summary>Mean film coefficient of the wall.</summary>
    public HeatTransferCoefficient Film => HeatTransferCoefficient.FromWattsPerSquareMeterKelvin(Math.Exp(_fit.Parameters[2]));

    /// <summary>The restrictor to compute with from now on.</summary>
    public SonicRestrictor Restrictor => new(Conductance, Math.Clamp(Log.Fill.Restrictor.CriticalRatio, 0, 0.7));

    /// <summary>The fill with what was fitted put in: run it for any other target.</summary>
    public PadFill Fill => Log.Fill with { Restrictor = Restrictor, Heat = FillHeat.Wall,
        Wall = Log.Fill.WallOrPlain with { Film = Film, FilmFactor = 1 } };

    /// <summary>Scatter of the gauge about the fit, one standard deviation.</summary>
    public Pressure Scatter => Pressure.FromBars(_fit.Scatter);

    /// <summary>Fitted pressure at the log's times.</summary>
    public Series Predicted { get; }

    /// <summary>Reading less fit at the log's times.</summary>
    public Series Residual => new("Reading minus fit", "bar", [.. Log.Pressure.Values.Zip(Predicted.Values, (a, b) => a - b)]);

    /// <inheritdoc/>
    public override string Title => "Restrictor fitted to a fill log";

    /// <inheritdoc/>
    public override ModelCard Model => new(
        "Least squares of the fill model",
        ["Independent readings with one scatter.", "Valve opened at once and shut at once.", "One film coefficient throughout.",
            "Critical ratio and supply pressure as given."],
        "Logs that rise by at least 1 bar.",
        [new("G. A. F. Seber, C. J. Wild", "Nonlinear Regression", 1989, "chapters 2 and 5"), FillingSources.Charging,
            FillingSources.Iso6358]);

    /// <inheritdoc/>
    public override ResultStatus Status => _fit.Settled ? ResultStatus.Completed : ResultStatus.Failed;

    /// <inheritdoc/>
    public override IReadOnlyList<ResultLine> Lines =>
    [
        new("Sonic conductance", Conductance.ToString(), "95 %: ± " + Digits.Round(
            (ConductanceHigh.LitresPerSecondBar - ConductanceLow.LitresPerSecondBar) / 2, 2)),
        new("Hole of that conductance", $"{Digits.Round(FlowCapacity.DrillFor(Conductance).Millimeters)} mm", "Cd 0.8"),
        new("Valve opened at", $"{Digits.Round(OpenedAt.Seconds)} s", $"± {Digits.Round(_fit.HalfWidths[1], 2)} s"),
        new("Film coefficient of the wall", $"{Digits.Round(Film.WattsPerSquareMeterKelvin, 2)} W/(m²·K)",
            $"95 %: {Digits.Round(Math.Exp(_fit.Parameters[2] - _fit.HalfWidths[2]), 2)} to "
            + $"{Digits.Round(Math.Exp(_fit.Parameters[2] + _fit.HalfWidths[2]), 2)}"),
        new("Valve shut at", $"{Digits.Round(ShutAt.Bar)} bar gauge", $"± {Digits.Round(_fit.HalfWidths[3], 2)} bar"),
        new("Scatter", $"{Digits.Round(Scatter.Bars, 2)} bar"),
    ];

    /// <inheritdoc/>
    public override IReadOnlyList<Caution> Cautions => Provenance.Cautions.ForFilling;

    /// <inheritdoc/>
    public override Working Working => new(Title,
    [
        new("Conductance", @"\min_{C,\,t_0,\,h,\,p_2} \sum_i (p_i - p(t_i;\,C,\,t_0,\,h,\,p_2))^2",
            $"{Log.Time.Count} readings, scatter {Digits.Round(Scatter.Bars, 2)} bar", Conductance.ToString(),
            new("D. W. Marquardt", "An algorithm for least-squares estimation of nonlinear parameters, J. SIAM 11, 431", 1963)),
    ]);

    private IEnumerable<Finding> Say()
    {
        if (!_fit.Settled) yield return FillingFindings.FitDidNotSettle();
        if (_fit.HalfWidths[2] > 0.7)
            yield return FillingFindings.LogCannotTellFilmCoefficient();
        yield return FillingFindings.LogCannotTellCriticalRatio();
    }
}
