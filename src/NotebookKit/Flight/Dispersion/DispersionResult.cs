using NotebookKit.Provenance;
using NotebookKit.Quantities;
using UnitsNet;

namespace NotebookKit.Flight.Dispersion;

/// <summary>
/// Many flights, each with its own draw of everything that varies: where they land, how often they break a rule, and what matters most.
/// Source: see <see cref="Model"/>.
/// </summary>
public sealed record DispersionResult : IResult
{
    private DispersionResult(DispersionPlan plan, IReadOnlyList<double> rows)
    {
        Plan = plan;
        var count = rows.Count / DispersionRun.RowLength;
        Inputs = [.. FlightInputs.Columns.Select((c, i) => Column(rows, count, i, c))];
        Outputs = [.. FlightOutputs.Columns.Select((c, i) => Column(rows, count, FlightInputs.Count + i, c))];
        var flown = Enumerable.Range(0, count).Where(i => double.IsFinite(Apogee[i])).ToArray();
        Failed = count - flown.Length;
        if (flown.Length < 2) return;

        double[] Flown(Series series) => Array.ConvertAll(flown, i => series[i]);
        var (apogee, east, north) = (Flown(Apogee), Flown(East), Flown(North));
        Landings = new(east, north);
        AboveCeiling = plan.Ceiling is { } ceiling ? Likelihood.Of(apogee.Count(h => h > ceiling.Meters), flown.Length) : null;
        OffField = plan.Field is { } field ? Likelihood.Of(Enumerable.Range(0, flown.Length).Count(i => !field.Contains(east[i], north[i])), flown.Length) : null;
        (LowApogee, MiddleApogee, HighApogee) = (Quantile(apogee, 0.05), Quantile(apogee, 0.5), Quantile(apogee, 0.95));
        var inputs = Inputs.Select(s => (s.Name, Ranks: RankCorrelation.Ranks(Flown(s)))).ToArray();
        OnApogee = Sway(inputs, apogee);
        OnLanding = Sway(inputs, [.. Enumerable.Range(0, flown.Length).Select(i => Math.Sqrt((east[i] * east[i]) + (north[i] * north[i])))]);
    }

    /// <summary>What was flown.</summary>
    public DispersionPlan Plan { get; }

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

    /// <summary>Flights that didn't reach the ground by the model: too fast for it, or never off the rail.</summary>
    public int Failed { get; }

    /// <summary>Where they land; none where fewer than two did.</summary>
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

    /// <summary>What sways the distance of the landing from the pad, the strongest first.</summary>
    public IReadOnlyList<Sensitivity> OnLanding { get; } = [];

    /// <inheritdoc/>
    public string Title => $"Dispersion of {Plan.Vehicle} from {Plan.Site}, {Plan.Flights} flights in {(Plan.IsSixDegrees ? "six" : "three")} degrees of freedom, seed {Plan.Seed}";

    /// <inheritdoc/>
    public ResultStatus Status => Landings is null ? ResultStatus.Failed : ResultStatus.Completed;

    /// <inheritdoc/>
    public IReadOnlyList<Caution> Cautions => Provenance.Cautions.ForFlight;

    /// <inheritdoc/>
    public ModelCard Model => DispersionReport.Card;

    /// <inheritdoc/>
    public IReadOnlyList<Finding> Findings => DispersionReport.Findings(this);

    /// <inheritdoc/>
    public IReadOnlyList<ResultLine> Lines => DispersionReport.Lines(this);

    /// <inheritdoc/>
    public Working Working => DispersionReport.Working(this);

    /// <summary>Puts the parts of one dispersion together. Source: see <see cref="Model"/>.</summary>
    /// <param name="shards">All its shards, in any order.</param>
    /// <exception cref="ArgumentException">They don't belong together, or some flights are missing or there twice.</exception>
    public static DispersionResult Merge(IReadOnlyList<DispersionShard> shards)
    {
        ArgumentNullException.ThrowIfNull(shards);
        if (shards.Count == 0) throw new ArgumentException("there are no shards; give all of a dispersion.", nameof(shards));
        var plan = shards[0].Plan;
        if (shards.FirstOrDefault(s => s.Plan.Fingerprint != plan.Fingerprint || s.Plan.Flights != plan.Flights || s.Plan.Seed != plan.Seed || s.Plan.IsSixDegrees != plan.IsSixDegrees) is { } other)
            throw new ArgumentException($"the shard from flight {other.First} is of another dispersion (fingerprint {other.Plan.Fingerprint}, not {plan.Fingerprint}): another vehicle, site, spread, seed or version. Fly all of them again.", nameof(shards));

        var rows = new double[(long)plan.Flights * DispersionRun.RowLength];
        var next = 0;
        foreach (var shard in shards.OrderBy(s => s.First))
        {
            if (shard.First != next)
                throw new ArgumentException($"flights {Math.Min(next, shard.First)} to {Math.Max(next, shard.First) - 1} are {(shard.First > next ? "missing" : "there twice")}; give every shard once.", nameof(shards));
            for (var i = 0; i < shard.Rows.Count; i++) rows[(next * DispersionRun.RowLength) + i] = shard.Rows[i];
            next += shard.Count;
        }

        return next == plan.Flights
            ? new(plan, rows)
            : throw new ArgumentException($"flights {next} to {plan.Flights - 1} are missing; give every shard once.", nameof(shards));
    }

    private static Series Column(IReadOnlyList<double> rows, int count, int column, (string Name, string Unit) heading)
    {
        var values = new double[count];
        for (var i = 0; i < count; i++) values[i] = rows[(i * DispersionRun.RowLength) + column];
        return new(heading.Name, heading.Unit, values);
    }

    private static Length Quantile(double[] values, double share)
    {
        var sorted = values.Order().ToArray();
        var at = share * (sorted.Length - 1);
        var i = Math.Min((int)at, sorted.Length - 2);
        return (sorted[i] + ((at - i) * (sorted[i + 1] - sorted[i]))).Metres();
    }

    private static IReadOnlyList<Sensitivity> Sway((string Name, double[] Ranks)[] inputs, double[] output)
    {
        var ranks = RankCorrelation.Ranks(output);
        var found = inputs.Select(i => (i.Name, Correlation: RankCorrelation.Of(i.Ranks, ranks))).ToArray();
        var sum = found.Sum(f => f.Correlation * f.Correlation);
        return sum == 0 ? [] : [.. found.Where(f => f.Correlation != 0)
            .Select(f => new Sensitivity(f.Name, f.Correlation, Ratio.FromPercent(100 * f.Correlation * f.Correlation / sum)))
            .OrderByDescending(s => Math.Abs(s.Correlation))];
    }
}
