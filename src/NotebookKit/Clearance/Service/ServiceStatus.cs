using System.Globalization;
using NotebookKit.Provenance;
using NotebookKit.Quantities;
using UnitsNet;

namespace NotebookKit.Clearance.Service;

/// <summary>What a service record says of its vessel on a day: whether it may be filled, what is used up and left, and what is
/// due.</summary>
/// <remarks>Source: each figure's own, as <see cref="LifeLimits"/> names it.</remarks>
public sealed record ServiceStatus : Result
{
    internal ServiceStatus(ServiceRecord record, DateOnly on, LifeLimits limits) => (Record, On, Limits) = (record, on, limits);

    /// <summary>The record.</summary>
    public ServiceRecord Record { get; }

    /// <summary>The day it was asked for.</summary>
    public DateOnly On { get; }

    /// <summary>The limits.</summary>
    public LifeLimits Limits { get; }

    /// <summary>In service, grounded or retired.</summary>
    public ServiceStanding Standing =>
        Record.Events.Any(e => e is Retired) ? ServiceStanding.Retired : Reasons.Count == 0 && Record.IsIntact ? ServiceStanding.InService
            : ServiceStanding.Grounded;

    /// <summary>Why it may not be filled; none where nothing forbids it.</summary>
    public IReadOnlyList<ServiceReason> Reasons { get; internal init; } = [];

    /// <summary>The day it was made; none where the record doesn't say.</summary>
    public Made? Made { get; internal init; }

    /// <summary>The last proof; none where there is none.</summary>
    public Proved? LastProof { get; internal init; }

    /// <summary>Highest pressure that the last proof lets it be filled to; none where there is no proof.</summary>
    public GaugePressure? AllowedPressure => LastProof?.Allows;

    /// <summary>Last day on which it may be filled without another proof; none without a proof, or where the limits set no
    /// interval.</summary>
    public DateOnly? ProofDue => Limits.MonthsBetweenProofs is { } months ? LastProof?.Day.AddMonths(months.Value) : null;

    /// <summary>Last day of its life; none where the record doesn't say when it was made, or the limits set no life.</summary>
    public DateOnly? LifeEnds => Limits.MonthsOfLife is { } months ? Made?.Day.AddMonths(months.Value) : null;

    /// <summary>Fills since the last proof; all of them where there is no proof.</summary>
    public int FillsSinceProof { get; internal init; }

    /// <summary>Fills in all.</summary>
    public int Fills { get; internal init; }

    /// <summary>Times it was pressed in all: fills and proofs.</summary>
    public int Pressurisations { get; internal init; }

    /// <summary>Fills that are left before a proof is due or its life ends; none where the limits count none.</summary>
    public int? FillsLeft
    {
        get
        {
            int? toProof = Limits.FillsBetweenProofs?.Value - FillsSinceProof, toEnd = Limits.Pressurisations?.Value - Pressurisations;
            return (toProof is null ? toEnd : toEnd is null ? toProof : Math.Min(toProof.Value, toEnd.Value)) is { } left
                ? Math.Max(0, left) : null;
        }
    }

    /// <summary>Sum of the fills' times at pressure.</summary>
    public Duration TimeAtPressure { get; internal init; }

    /// <summary>Time at pressure that is left; none where the limits set none.</summary>
    public Duration? TimeLeft => Limits.TimeAtPressure is not { } most ? null : most.Value > TimeAtPressure ? most.Value - TimeAtPressure
        : Duration.Zero;

    /// <summary>Whether it has to be inspected before it is filled on the day asked for.</summary>
    public bool InspectionDue { get; internal init; }

    /// <inheritdoc/>
    public override string Title => $"Service status, {Record.Vessel} {Record.Serial}, {ServiceText.Of(On)}: {Words(Standing)}";

    /// <inheritdoc/>
    public override ModelCard Model => new(
        $"Service status by {Limits.Name}",
        [
            $"Written for {Limits.Covers}. {LifeLimits.NoneCovers}",
            "Days are those of UTC. A vessel may still be filled on the day a proof is due and on the last day of its life; a month that "
                + "is shorter ends the interval on its last day.",
            "Every proof counts as a pressurisation; time at pressure is that of the fills.",
            "A proof or an inspection clears what happened before it: on an earlier day, or earlier in the file on the same day.",
            "What isn't written in the record isn't known.",
        ],
        "A record that is intact, on the day of its last event or later.",
        [.. Sources().Distinct()]);

    /// <inheritdoc/>
    public override ResultStatus Status => Record.IsIntact ? ResultStatus.Completed : ResultStatus.Failed;

    /// <inheritdoc/>
    public override IReadOnlyList<ResultLine> Lines =>
    [
        new("Standing", Words(Standing), Standing == ServiceStanding.InService ? "nothing in the record forbids a fill"
            : "not to be filled; see the reasons"),
        .. Reasons.Select(r => new ResultLine(r.Rule, Words(Standing), r.Sentence)),
        new("Made", Made is { } made ? $"{ServiceText.Of(made.Day)}, {made.Batch}" : "not given"),
        new("Life ends", LifeEnds is { } end ? ServiceText.Of(end) : Missing(Limits.MonthsOfLife),
            Note(Limits.MonthsOfLife, "months of life")),
        new("Last proof", LastProof is { } proof ? $"{ServiceText.Of(proof.Day)}, held {proof.Held}" : "not given",
            LastProof is { } of ? $"{of.Rules}, factor {Digits.Round(of.Factor)}, record "
                + $"{(of.Record.Length > 12 ? of.Record[..12] : of.Record)}" : ""),
        new("Allowed by the proof", AllowedPressure?.ToString() ?? "not given", "pressure held over the proof's factor"),
        new("Next proof due", ProofDue is { } due ? ServiceText.Of(due) : Missing(Limits.MonthsBetweenProofs),
            Note(Limits.MonthsBetweenProofs, "months between proofs")),
        new("Fills since the proof", Count(FillsSinceProof, Limits.FillsBetweenProofs),
            Note(Limits.FillsBetweenProofs, "fills between proofs")),
        new("Pressurisations in all", Count(Pressurisations, Limits.Pressurisations),
            Note(Limits.Pressurisations, "pressurisations, proofs among them")),
        new("Time at pressure", TimeLeft is { } left ? $"{Hours(TimeAtPressure)}, {Hours(left)} left" : Hours(TimeAtPressure),
            Limits.TimeAtPressure is { } most ? $"{Hours(most.Value)} at most: {most.Source}" : "the limits set none"),
        new("Inspection", InspectionDue ? "due before the first fill" : Limits.InspectEveryDayOfUse.Value ? "done on the day"
            : "not asked for by the limits", Limits.InspectEveryDayOfUse.Source.ToString()),
    ];

    /// <inheritdoc/>
    public override IReadOnlyList<Caution> Cautions => Provenance.Cautions.ForFilling;

    /// <inheritdoc/>
    public override Working Working => new("What is left", [.. Steps()]);

    private IEnumerable<WorkingStep> Steps()
    {
        if (LastProof is { } proof)
        {
            yield return new(
                "Allowed by the proof", @"p = \frac{p_{held}}{k}", $"{proof.Held} / {Digits.Round(proof.Factor, 4)}",
                    proof.Allows.ToString(),
                    new("", $"Proof of {ServiceText.Of(proof.Day)} by {proof.Rules}", null, "", SourceKind.Measured));
            if (Limits.MonthsBetweenProofs is { } months)
                yield return new("Next proof due", @"d = d_{proof} + n", $"{ServiceText.Of(proof.Day)} + {months.Value} months",
                    ServiceText.Of(ProofDue!.Value), months.Source);
        }

        if (Limits.Pressurisations is { } most)
            yield return new("Pressurisations left", @"n = n_{most} - n_{done}", $"{most.Value} − {Pressurisations}",
                Whole(Math.Max(0, most.Value - Pressurisations)), most.Source);
    }

    private IEnumerable<Source> Sources()
    {
        foreach (var source in new[] { Limits.MonthsBetweenProofs?.Source, Limits.FillsBetweenProofs?.Source,
            Limits.Pressurisations?.Source, Limits.MonthsOfLife?.Source, Limits.TimeAtPressure?.Source,
            Limits.HotAbove?.Source }.OfType<Source>())
            yield return source;
        foreach (var recheck in new[] { Limits.AfterHardLanding, Limits.AfterDrop, Limits.AfterHeat, Limits.AfterRepair,
            Limits.AfterFailedInspection }) yield return recheck.Source;
        yield return Limits.InspectEveryDayOfUse.Source;
    }

    internal static string Words(ServiceStanding standing) => standing switch { ServiceStanding.InService => "in service",
        ServiceStanding.Retired => "retired", _ => "grounded" };

    internal static string Hours(Duration time) => time.Hours >= 1 ? $"{Digits.Round(time.Hours)} h" : $"{Digits.Round(time.Minutes)} min";

    private static string Count(int used, LifeFigure<int>? most) => most is null ? Whole(used)
        : $"{Whole(used)}, {Whole(Math.Max(0, most.Value - used))} left";

    private static string Note(LifeFigure<int>? most, string what) => most is null ? "the limits set none"
        : $"{Whole(most.Value)} {what}: {most.Source}";

    private static string Missing(LifeFigure<int>? limit) => limit is null ? "no limit" : "not given";

    private static string Whole(int number) => number.ToString(CultureInfo.InvariantCulture);
}

/// <summary>One reason why a vessel may not be filled.</summary>
/// <param name="Rule">The rule, in a few words.</param>
/// <param name="Sentence">What happened or is missing, and what to do.</param>
public sealed record ServiceReason(string Rule, string Sentence);

/// <summary>Whether a vessel may be filled, as its record says.</summary>
public enum ServiceStanding
{
    /// <summary>Not to be filled until what is named is done.</summary>
    Grounded,

    /// <summary>Nothing in the record forbids a fill.</summary>
    InService,

    /// <summary>Out of use for good.</summary>
    Retired,
}
