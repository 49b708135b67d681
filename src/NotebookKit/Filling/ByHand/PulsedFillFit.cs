using NotebookKit.Filling.Balances;
using NotebookKit.Filling.Restrictors;
using NotebookKit.Numerics.Fits;
using NotebookKit.Provenance;
using NotebookKit.Quantities;
using UnitsNet;

namespace NotebookKit.Filling.ByHand;

/// <summary>Restrictor, heat to the wall and leak as a log shows them, and what the log can't tell apart.</summary>
/// <remarks>Source: as <see cref="PulsedFillLog"/>.</remarks>
public sealed record PulsedFillFit : Result
{
    // Two unknowns that move together as closely as that stand for one.
    private const double Inseparable = 0.95;

    private readonly CurveFit _fit;

    internal PulsedFillFit(PulsedFillLog log, CurveFit fit, IReadOnlyList<Finding> findings)
    {
        (Log, _fit) = (log, fit);
        Predicted = new("Fitted pressure", "bar gauge", fit.Fitted);
        Findings = [.. findings, .. Say()];
    }

    /// <summary>The log that was fitted.</summary>
    public PulsedFillLog Log { get; }

    /// <summary>Sonic conductance of everything between supply and vessel.</summary>
    public SonicConductance Conductance => SonicConductance.FromLitresPerSecondBar(Math.Exp(_fit.Parameters[0]));

    /// <summary>Lower end of its 95 % confidence interval.</summary>
    public SonicConductance ConductanceLow => SonicConductance.FromLitresPerSecondBar(Math.Exp(_fit.Parameters[0] - _fit.HalfWidths[0]));

    /// <summary>Upper end of its 95 % confidence interval.</summary>
    public SonicConductance ConductanceHigh => SonicConductance.FromLitresPerSecondBar(Math.Exp(_fit.Parameters[0] + _fit.HalfWidths[0]));

    /// <summary>Mean film coefficient of the wall.</summary>
    public HeatTransferCoefficient Film => HeatTransferCoefficient.FromWattsPerSquareMeterKelvin(Math.Exp(_fit.Parameters[1]));

    /// <summary>Sonic conductance of the leak; 0 where the log shows none.</summary>
    public SonicConductance Leak => SonicConductance.FromLitresPerSecondBar(_fit.Parameters[2] / 1000);

    /// <summary>The most that the leak may be, by its 95 % confidence interval.</summary>
    public SonicConductance LeakHigh => SonicConductance.FromLitresPerSecondBar((_fit.Parameters[2] + _fit.HalfWidths[2]) / 1000);

    /// <summary>Whether the log shows a leak: its 95 % confidence interval doesn't reach down to none.</summary>
    public bool ShowsLeak => _fit.Parameters[2] - _fit.HalfWidths[2] > 0;

    /// <summary>Fall of pressure by the leak at the last reading, gas at one temperature. Source: ISO 6358-1, choked flow; ideal
    /// gas.</summary>
    public PressureChangeRate LeakRate
    {
        get
        {
            var fill = Log.Fill;
            var pascals = (1e5 * Log.Pressure[Log.Pressure.Count - 1]) + fill.Ambient.Pascals;
            var flow = new SonicRestrictor(Leak, 0.3).Conductance.CubicMetresPerSecondPascal * pascals * FlowCapacity.ReferenceDensity;
            return PressureChangeRate.FromPascalsPerSecond(flow * fill.Gas.GasConstant.JoulesPerKilogramKelvin * fill.Temperature.Kelvins
                / fill.GasVolume.CubicMeters);
        }
    }

    /// <summary>How closely two unknowns hang together in this log [-], −1 to 1: of conductance (0), film (1) and leak (2).</summary>
    /// <param name="one">One; 0 to 2.</param>
    /// <param name="other">The other; 0 to 2.</param>
    /// <exception cref="OutOfRangeException">A number is outside 0 to 2.</exception>
    public double Correlation(int one, int other)
    {
        ValidRange<double> three = new(0, 2);
        three.Check(one, "first unknown", "0 is the conductance, 1 the film, 2 the leak.");
        three.Check(other, "second unknown", "0 is the conductance, 1 the film, 2 the leak.");
        return _fit.Correlation[one, other];
    }

    /// <summary>Scatter of the gauge about the fit, one standard deviation.</summary>
    public Pressure Scatter => Pressure.FromBars(_fit.Scatter);

    /// <summary>Fitted pressure at the log's times.</summary>
    public Series Predicted { get; }

    /// <inheritdoc/>
    public override string Title => "Restrictor, heat and leak fitted to a pulsed fill";

    /// <inheritdoc/>
    public override ModelCard Model => new("Least squares of the network model",
        ["Independent readings with one scatter; the valve opens and shuts at once, at the times given.",
            "One film coefficient throughout; a leak of gas to the open air, choked as a hole is.",
                "Critical ratio, supply and the wall's heat capacity as given: a wall that holds less heat than said looks like a leak."],
        "Logs that rise by at least 1 bar.",
        [new("G. A. F. Seber, C. J. Wild", "Nonlinear Regression", 1989, "chapters 2 and 5"), FillingSources.Charging,
            FillingSources.Iso6358]);

    /// <inheritdoc/>
    public override ResultStatus Status => _fit.Settled ? ResultStatus.Completed : ResultStatus.Failed;

    /// <inheritdoc/>
    public override IReadOnlyList<ResultLine> Lines =>
    [
        new("Sonic conductance", Conductance.ToString(), $"95 %: {ConductanceLow} to {ConductanceHigh}"),
        new("Film coefficient of the wall", $"{Digits.Round(Film.WattsPerSquareMeterKelvin, 2)} W/(m²·K)",
            $"95 %: {Digits.Round(Math.Exp(_fit.Parameters[1] - _fit.HalfWidths[1]), 2)} to "
            + $"{Digits.Round(Math.Exp(_fit.Parameters[1] + _fit.HalfWidths[1]), 2)}"),
        new("Leak", ShowsLeak ? Leak.ToString() : "none shown", $"95 %: {LeakHigh} at the most; "
            + $"{Digits.Round(LeakRate.PascalsPerSecond * 60 / 1e5, 2)} bar a minute at the last reading"),
        new("Scatter", $"{Digits.Round(Scatter.Bars, 2)} bar"),
    ];

    /// <inheritdoc/>
    public override IReadOnlyList<Caution> Cautions => Provenance.Cautions.ForFilling;

    /// <inheritdoc/>
    public override Working Working => new(Title,
    [
        new("Unknowns", @"\min_{C,\,h,\,C_l} \sum_i (p_i - p(t_i;\,C,\,h,\,C_l))^2",
            $"{Log.Time.Count} readings, scatter {Digits.Round(Scatter.Bars, 2)} bar", Conductance.ToString(),
            new("D. W. Marquardt", "An algorithm for least-squares estimation of nonlinear parameters, J. SIAM 11, 431", 1963)),
    ]);

    private IEnumerable<Finding> Say()
    {
        if (!_fit.Settled) yield return FillingFindings.FitDidNotSettle();
        string[] names = ["the conductance", "the heat to the wall", "the leak"];
        for (var i = 0; i < 3; i++)
        {
            for (var j = i + 1; j < 3; j++)
            {
                if (Math.Abs(_fit.Correlation[i, j]) > Inseparable)
                    yield return FillingFindings.LogCannotTellApart(names[i], names[j], _fit.Correlation[i, j]);
            }
        }

        if (_fit.HalfWidths[1] > 0.7) yield return FillingFindings.LogCannotTellFilmCoefficient();
        if (!ShowsLeak) yield return FillingFindings.LogShowsNoLeak(LeakHigh);
        else yield return FillingFindings.LogShowsLeak(Leak, LeakRate.PascalsPerSecond * 60 / 1e5);
        yield return FillingFindings.LogCannotTellCriticalRatio();
    }
}
