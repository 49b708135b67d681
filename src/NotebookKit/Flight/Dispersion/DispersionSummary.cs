using NotebookKit.Numerics.Functions;
using NotebookKit.Provenance;

namespace NotebookKit.Flight.Dispersion;

/// <summary>
/// A dispersion of any number of flights of which none is kept: moments, extremes, quantiles with their error, the ellipse of the landings
/// and how often a rule is broken. The same flights as <see cref="DispersionResult"/> has, in the memory of a thousand. Sensitivities want
/// all flights at hand: they are of the result. Source: see <see cref="Model"/>.
/// </summary>
public sealed record DispersionSummary : Result
{
    internal DispersionSummary(DispersionPlan plan, FlightTally tally, IReadOnlyList<BinCounts> bins)
    {
        Plan = plan;
        var layout = DispersionLayout.For(plan.Stages);
        Inputs = [.. layout.Inputs.Select((c, i) => Column(c, i))];
        Outputs = [.. layout.Outputs.Select((c, i) => Column(c, layout.Inputs.Count + i))];
        (Failed, Unparted) = (tally.Failed, tally.Unparted);
        Landings = Spread(tally.Landings);
        BoosterLandings = Spread(tally.Boosters);
        var flown = plan.Flights - Failed;
        if (plan.Ceiling is not null && flown > 0) AboveCeiling = Likelihood.Of(tally.AboveCeiling, flown);
        if (plan.Field is not null && tally.Landings.Count > 0) OffField = Likelihood.Of(tally.OffField, (int)tally.Landings.Count);
        if (plan.Field is not null && tally.Boosters.Count > 0)
            BoosterOffField = Likelihood.Of(tally.BoostersOffField, (int)tally.Boosters.Count);

        ColumnSummary Column((string Name, string Unit) heading, int i) => new(heading.Name, heading.Unit, tally.Moments[i], bins[i]);
    }

    /// <summary>What was flown.</summary>
    public DispersionPlan Plan { get; }

    /// <summary>What the flights differed by.</summary>
    public IReadOnlyList<ColumnSummary> Inputs { get; }

    /// <summary>What came of it, over the flights that have it.</summary>
    public IReadOnlyList<ColumnSummary> Outputs { get; }

    /// <summary>Height of the top [m].</summary>
    public ColumnSummary Apogee => Outputs[FlightOutputs.Apogee];

    /// <summary>Landing to the east of the pad [m].</summary>
    public ColumnSummary East => Outputs[FlightOutputs.East];

    /// <summary>Landing to the north of the pad [m].</summary>
    public ColumnSummary North => Outputs[FlightOutputs.North];

    /// <inheritdoc cref="DispersionResult.Failed"/>
    public int Failed { get; }

    /// <inheritdoc cref="DispersionResult.Unparted"/>
    public int Unparted { get; }

    /// <summary>Where they land, the sustainer of two stages; none where fewer than two did.</summary>
    public LandingSpread? Landings { get; }

    /// <summary>Where the spent booster of two stages comes down; none where there is one stage, or where fewer than two did.</summary>
    public LandingSpread? BoosterLandings { get; }

    /// <summary>How often they pass the ceiling, where there is one.</summary>
    public Likelihood? AboveCeiling { get; }

    /// <summary>How often they land off the field, where there is one.</summary>
    public Likelihood? OffField { get; }

    /// <summary>How often the booster of two stages lands off the field, where there is one.</summary>
    public Likelihood? BoosterOffField { get; }

    /// <inheritdoc/>
    public override string Title => $"Summary of: {Plan}";

    /// <inheritdoc/>
    public override ResultStatus Status => Landings is null ? ResultStatus.Failed : ResultStatus.Completed;

    /// <inheritdoc/>
    public override IReadOnlyList<Caution> Cautions => Provenance.Cautions.ForFlight;

    /// <inheritdoc/>
    public override ModelCard Model => SummaryReport.Card;

    /// <inheritdoc/>
    public override IReadOnlyList<Finding> Findings => SummaryReport.Findings(this);

    /// <inheritdoc/>
    public override IReadOnlyList<ResultLine> Lines => SummaryReport.Lines(this);

    /// <inheritdoc/>
    public override Working Working => SummaryReport.Working(this);

    private static LandingSpread? Spread(in RunningCovariance landings)
    {
        if (landings.Count < 2) return null;
        var n = landings.Count - 1.0;
        return new(new(landings.MeanX, landings.MeanY, landings.SumXX / n, landings.SumYY / n, landings.SumXY / n), landings.Count);
    }
}
