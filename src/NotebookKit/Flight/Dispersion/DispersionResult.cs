using MathNet.Numerics.Statistics;
using NotebookKit.Provenance;
using NotebookKit.Quantities;
using UnitsNet;

namespace NotebookKit.Flight.Dispersion;

/// <summary>
/// Many flights, each with its own draw of everything that varies: where they land, how often they break a rule, and what matters most.
/// Source: see <see cref="Model"/>.
/// </summary>
public sealed record DispersionResult : Result
{
    internal DispersionResult(DispersionShard shard)
    {
        Plan = shard.Plan;
        Part = shard.Part;
        var layout = shard.Layout;
        Inputs = [.. layout.Inputs.Select((c, i) => Column(shard, i, c))];
        Outputs = [.. layout.Outputs.Select((c, i) => Column(shard, layout.Inputs.Count + i, c))];
        var flown = Enumerable.Range(0, shard.Count).Where(i => double.IsFinite(Apogee[i])).ToArray();
        Failed = shard.Count - flown.Length;
        Booster = Plan.Stages == 2 ? StageScatter.Of(Outputs[SeparationOutputs.East], Outputs[SeparationOutputs.North], Inputs, Plan.Field)
            : null;
        Unparted = Plan.Stages == 2 ? Outputs[SeparationOutputs.Time].Values.Count(t => !double.IsFinite(t)) : 0;
        if (flown.Length < 2) return;

        var apogee = Array.ConvertAll(flown, i => Apogee[i]);
        // Who rises also lands, nearly always: sorting the inputs once serves both.
        var ranks = RankCorrelation.Ranks(Inputs, flown);
        var scatter = StageScatter.Of(East, North, Inputs, Plan.Field, flown, ranks);
        (Landings, OffField, OnLanding) = (scatter.Landings, scatter.OffField, scatter.OnLanding);
        AboveCeiling = Plan.Ceiling is { } ceiling ? Likelihood.Of(apogee.Count(h => h > ceiling.Meters), flown.Length) : null;
        (LowApogee, MiddleApogee, HighApogee) = (Quantile(apogee, 0.05), Quantile(apogee, 0.5), Quantile(apogee, 0.95));
        OnApogee = RankCorrelation.Correlate(Inputs, ranks, apogee);
    }

    /// <summary>What was flown.</summary>
    public DispersionPlan Plan { get; }

    /// <summary>Which of several parts this is; the only one where the result is whole.</summary>
    public ShardNumber Part { get; }

    /// <summary>What each flight differed by, a row for every flight.</summary>
    public IReadOnlyList<Series> Inputs { get; }

    /// <summary>What came of it, a row for every flight; NaN where a flight failed.</summary>
    public IReadOnlyList<Series> Outputs { get; }

    /// <summary>Height of the top [m].</summary>
    public Series Apogee => Outputs[FlightOutputs.Apogee];

    /// <summary>Time of the top [s].</summary>
    public Series ApogeeTime => Outputs[FlightOutputs.ApogeeTime];

    /// <summary>Landing to the east of the pad [m].</summary>
    public Series East => Outputs[FlightOutputs.East];

    /// <summary>Landing to the north of the pad [m].</summary>
    public Series North => Outputs[FlightOutputs.North];

    /// <summary>Flights that didn't reach the ground by the model: too fast for it, never off the rail, down with water and pressure still
    /// aboard, or of stages that never separated.</summary>
    public int Failed { get; }

    /// <summary>Of them, flights whose stages never separated in order; 0 where there is one stage.</summary>
    public int Unparted { get; }

    /// <summary>Where the spent booster of two stages comes down; none where there is one stage.</summary>
    public StageScatter? Booster { get; }

    /// <summary>Where they land, the sustainer of two stages; none where fewer than two did.</summary>
    public LandingScatter? Landings { get; }

    /// <summary>How often they pass the ceiling, where there is one.</summary>
    public Likelihood? AboveCeiling { get; }

    /// <summary>How often they land off the field, where there is one.</summary>
    public Likelihood? OffField { get; }

    /// <summary>Height that one flight in twenty stays below.</summary>
    public Length LowApogee { get; }

    /// <summary>Height that half the flights stay below.</summary>
    public Length MiddleApogee { get; }

    /// <summary>Height that one flight in twenty passes.</summary>
    public Length HighApogee { get; }

    /// <summary>What sways the height, the strongest first.</summary>
    public IReadOnlyList<Sensitivity> OnApogee { get; } = [];

    /// <summary>Sensitivity of the distance of the landing from the pad, the strongest first.</summary>
    public IReadOnlyList<Sensitivity> OnLanding { get; } = [];

    /// <inheritdoc/>
    public override string Title => Part == ShardNumber.Whole ? Plan.ToString() : $"Shard {Part} of: {Plan}";

    /// <inheritdoc/>
    public override ResultStatus Status => Landings is null ? ResultStatus.Failed : ResultStatus.Completed;

    /// <inheritdoc/>
    public override IReadOnlyList<Caution> Cautions => Provenance.Cautions.ForFlight;

    /// <inheritdoc/>
    public override ModelCard Model => DispersionReport.Card;

    /// <inheritdoc/>
    public override IReadOnlyList<Finding> Findings => DispersionReport.Findings(this);

    /// <inheritdoc/>
    public override IReadOnlyList<ResultLine> Lines => DispersionReport.Lines(this);

    /// <inheritdoc/>
    public override Working Working => DispersionReport.Working(this);

    /// <summary>Puts the parts of one dispersion together. Source: see <see cref="Model"/>.</summary>
    /// <param name="shards">All its shards, in any order.</param>
    /// <exception cref="ArgumentException">They don't belong together, or some flights are missing or there twice.</exception>
    public static DispersionResult Merge(IReadOnlyList<DispersionShard> shards) => new(DispersionShard.Join(shards));

    private static Series Column(DispersionShard shard, int column, (string Name, string Unit) heading)
    {
        var (values, length) = (new double[shard.Count], shard.Layout.RowLength);
        for (var i = 0; i < values.Length; i++) values[i] = shard.Rows[(i * length) + column];
        return new(heading.Name, heading.Unit, values);
    }

    private static Length Quantile(double[] values, double share) => values.QuantileCustom(share, QuantileDefinition.R7).Metres();
}
