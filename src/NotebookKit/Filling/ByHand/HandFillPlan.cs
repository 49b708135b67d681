using NotebookKit.Filling.Balances;
using NotebookKit.Filling.Fills;
using NotebookKit.Provenance;
using NotebookKit.Quantities;
using UnitsNet;

namespace NotebookKit.Filling.ByHand;

/// <summary>A fill by hand, step by step, with the gauge and the time to expect.</summary>
/// <remarks>Source: as <see cref="HandFill"/>.</remarks>
public sealed record HandFillPlan : Result
{
    private readonly HandRun _run;

    internal HandFillPlan(HandFill fill, IReadOnlyList<Finding> findings)
    {
        Fill = fill;
        _run = HandRun.Of(fill, 1, 1);
        if (_run.Trouble is { } trouble)
            throw new InvalidDesignException("Fill by hand", [FillingFindings.ActionCannotBeDone(trouble.Action + 1, trouble.Why)]);
        double c = fill.ConductanceSpread, h = fill.FilmSpread;
        List<HandRun> all = [_run];
        foreach (var conductance in (double[])[1 - c, 1 + c])
        {
            foreach (var film in (double[])[1 - h, 1 + h]) all.Add(HandRun.Of(fill, conductance, film));
        }

        Steps = [.. fill.Actions.Select((a, i) => Step(i, [.. all.Where(r => r.Seconds.Count > i)]))];
        var rows = _run.Rows(FillSimulation.SystemOf(fill.Followed)).ToList();
        Time = new("Time", "s", [.. rows.Select(r => r.Seconds)]);
        Pressure = new("Pressure", "bar gauge", [.. rows.Select(r => r.GaugePa / 1e5)]);
        Temperature = new("Gas temperature", "°C", [.. rows.Select(r => r.Kelvins - 273.15)]);
        Findings = [.. findings, .. all.Skip(1).Select(r => r.Trouble).OfType<(int Action, string Why)>().Take(1)
            .Select(t => FillingFindings.ActionMayFail(t.Action + 1, t.Why))];
    }

    /// <summary>The fill.</summary>
    public HandFill Fill { get; }

    /// <summary>The steps.</summary>
    public IReadOnlyList<HandStep> Steps { get; }

    /// <summary>Times.</summary>
    public Series Time { get; }

    /// <summary>Pressure at those times.</summary>
    public Series Pressure { get; }

    /// <summary>Temperature of the gas at those times.</summary>
    public Series Temperature { get; }

    /// <summary>Time until the last action is done.</summary>
    public Duration Duration => Steps[^1].After;

    /// <summary>Gauge reading then.</summary>
    public GaugePressure Gauge => Steps[^1].Gauge;

    /// <inheritdoc/>
    public override string Title => $"Fill by hand to {Gauge}";

    /// <inheritdoc/>
    public override ModelCard Model => new("Actions at a valve, run one after the other",
        ["The valve opens and shuts at once; heat passes to the wall by free convection.",
            $"A reading is explained by a conductance off by {Digits.Round(100 * Fill.ConductanceSpread)} %, a film coefficient off by "
                + $"{Digits.Round(100 * Fill.FilmSpread)} %, and a gauge off by {Fill.GaugeError.Show()}, at their corners."],
        "To 300 bar gauge; a dry port, or one whose water has gone in.",
        [FillingSources.Charging, .. Fill.Followed.WallOrPlain.Sources, Source.CommonPractice("by how much a restrictor and a gauge may "
            + "be off")]);

    /// <inheritdoc/>
    public override IReadOnlyList<ResultLine> Lines =>
    [
        .. Steps.Select(s => new ResultLine($"{s.Number}. {s.Action}", $"{s.Gauge} after {Digits.Round(s.After.Seconds)} s",
            $"{Digits.Round(s.Low.Bar)} to {Digits.Round(s.High.Bar)} bar gauge, in {Digits.Round(s.Shortest.Seconds)} to "
            + $"{Digits.Round(s.Longest.Seconds)} s. {s.WhenOff}")),
    ];

    /// <inheritdoc/>
    public override IReadOnlyList<Caution> Cautions => Provenance.Cautions.ForFilling;

    /// <inheritdoc/>
    public override Working Working => new(Title,
    [
        new("Every action", @"\frac{d(m\,u)}{dt} = \dot m\,h_s + Q", $"{Steps.Count} actions, five runs each", Gauge.ToString(),
            FillingSources.Charging),
    ]);

    private HandStep Step(int i, List<HandRun> runs)
    {
        double Took(HandRun r) => r.Seconds[i] - (i == 0 ? 0 : r.Seconds[i - 1]);
        var action = Fill.Actions[i];
        double error = Fill.GaugeError.Pascals, low = runs.Min(r => r.GaugesPa[i]) - error, high = runs.Max(r => r.GaugesPa[i]) + error;
        return new(i + 1, action, GaugePressure.FromPascals(_run.GaugesPa[i]), GaugePressure.FromPascals(low),
            GaugePressure.FromPascals(high),
            Duration.FromSeconds(Took(_run)), Duration.FromSeconds(runs.Min(Took)), Duration.FromSeconds(runs.Max(Took)),
            Duration.FromSeconds(_run.Seconds[i]), FillingFindings.WhenOff(action.Kind == HandActionKind.Hold,
                action.Kind == HandActionKind.Fit, GaugePressure.FromPascals(low)));
    }
}
