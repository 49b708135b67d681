using NotebookKit.DesignFiles;
using NotebookKit.DesignFiles.Parts;
using NotebookKit.Provenance;
using NotebookKit.Quantities;
using NotebookKit.Record;
using NotebookKit.Record.Givens;
using UnitsNet;

namespace NotebookKit.Clearance.Designs;

/// <summary>A design held against its own requirements: which hold, which no longer hold, which can't be told. A step that fails doesn't
/// stop the others. Source: the steps' own: rating, static margin, flight in three degrees of freedom.</summary>
public sealed record DesignCheck : Result
{
    private const string NotComputed = "can't be computed";

    private readonly IReadOnlyList<ResultLine> _steps;

    internal DesignCheck(Design design)
    {
        Design = design;
        var figures = Figures = new DesignFiguresOf(design);
        Outcomes = [.. design.Requirements.Select(r => Judge(r, figures))];
        _steps =
        [
            .. design.Stages.SelectMany(s => OfStage(s, figures, design.Site)),
            .. new[] { DesignFigures.DryMass, DesignFigures.Margin, DesignFigures.Apogee, DesignFigures.RailSpeed, DesignFigures.Drift }
                .Select(f => Line(f, figures)),
        ];
        Findings =
        [
            .. Outcomes.Where(o => o.Verdict == RequirementVerdict.NoLongerHolds).Select(o => ClearanceFindings.RequirementNoLongerHolds(
                o.Requirement.Name, o.Requirement.Of, o.Value, Condition(o.Requirement), o.Requirement.Why)),
            .. Outcomes.Where(o => o.Verdict == RequirementVerdict.CannotTell).GroupBy(o => o.Reason, StringComparer.Ordinal)
                .Select(g => ClearanceFindings.RequirementsCannotBeTold([.. g.Select(o => o.Requirement.Name)], g.Key)),
            .. LookAgain.Select(d => ClearanceFindings.DecisionWantsAnotherLook(d.Name, d.Chosen, d.StaysRightWhile)),
            .. figures.Findings.Where(f => f.Severity != FindingSeverity.Error),
            .. design.Stages.SelectMany(s => s.Evidence.Tests).Where(t => t is { MadeAs: null, Mark: not null })
                .Select(t => (t.Id, t.Mark!)).ToList() is { Count: > 0 } unmarked
                ? [ClearanceFindings.TestsDoNotSayWhatWasTested(unmarked)] : Array.Empty<Finding>(),
        ];
    }

    /// <summary>The design.</summary>
    public Design Design { get; }

    internal DesignFiguresOf Figures { get; }

    /// <summary>Every requirement with its verdict, in the order of the design.</summary>
    public IReadOnlyList<RequirementOutcome> Outcomes { get; }

    /// <summary>Whether every requirement holds; one that can't be told doesn't.</summary>
    public bool Holds => Outcomes.All(o => o.Verdict == RequirementVerdict.Holds);

    /// <summary>Decisions whose requirement no longer holds, or can't be told.</summary>
    public IReadOnlyList<DesignDecision> LookAgain => [.. Design.Decisions.Where(d => Outcomes.Any(o =>
        o.Requirement.Name == d.StaysRightWhile && o.Verdict != RequirementVerdict.Holds))];

    /// <summary>The design's values, requirements and decisions as a record, to be kept and compared.</summary>
    public DesignRecord Record
    {
        get
        {
            var builder = new DesignRecordBuilder(Design.Name);
            Design.State(builder);
            var stated = Outcomes.ToDictionary(o => o.Requirement.Name, o => State(builder, o), StringComparer.Ordinal);
            foreach (var d in Design.Decisions) builder.Decide(d.Name, d.Chosen, d.Beat, d.Why, stated[d.StaysRightWhile]);
            return builder.Build();
        }
    }

    /// <inheritdoc/>
    public override string Title => $"Check of {Design.Name}";

    /// <inheritdoc/>
    public override ModelCard Model => new(
        "Check of a design",
        ["Each figure is computed anew from the design's file and the tests in it.",
            "With two stages the worse of both counts; the margin is the smaller one of both together and of the sustainer alone.",
            "The highest allowed fill here is that of the rating; what a vessel in hand may be filled to takes its own proof and service "
                + "record.",
            .. Design.Defaults.Count > 0 ? [$"Defaults that the file leaves standing: {Design.Defaults.Count}; Design.Defaults names them."]
                : (string[])[]],
        "As the models of its steps.",
        [Source.CommonPractice("The worst of several figures counts")]);

    /// <inheritdoc/>
    public override IReadOnlyList<ResultLine> Lines
    {
        get
        {
            // One reason stands once: with the findings where a requirement rests on it, else at the first line that has it.
            var said = Outcomes.Where(o => o.Verdict == RequirementVerdict.CannotTell).Select(o => o.Reason)
                .ToHashSet(StringComparer.Ordinal);
            return
            [
                .. Outcomes.Select(o => new ResultLine($"Required: {o.Requirement.Name}", o.Verdict switch
                {
                    RequirementVerdict.Holds => "holds",
                    RequirementVerdict.NoLongerHolds => "NO LONGER HOLDS",
                    _ => "CAN'T TELL",
                }, o.Verdict == RequirementVerdict.CannotTell ? "the reason stands below"
                    : $"{o.Requirement.Of} {o.Value}, {Condition(o.Requirement)}")),
                .. Design.Decisions.Select(d => new ResultLine($"Decided: {d.Name}", LookAgain.Contains(d) ? "LOOK AGAIN" : "still right",
                    $"{d.Chosen}; while {d.StaysRightWhile}")),
                .. _steps.Select(l => l.Value != NotComputed || said.Add(l.Note) ? l
                    : l with { Note = Outcomes.Any(o => o.Reason == l.Note) ? "the reason stands below" : "for the same reason" }),
            ];
        }
    }

    /// <inheritdoc/>
    public override IReadOnlyList<Caution> Cautions => Provenance.Cautions.ForFlight;

    /// <inheritdoc/>
    public override Working Working => new("The steps show their own working: the rating, the static margin, the flight.", []);

    private static RequirementOutcome Judge(DesignRequirement requirement, DesignFiguresOf figures)
    {
        if (figures.Of(requirement.Of, requirement.Side, out var reason) is not { } value)
            return new(requirement, RequirementVerdict.CannotTell, "", reason);
        var order = DesignFiguresOf.Order(value, requirement.Value);
        var holds = value is not double.NaN && (requirement.Side == Limit.AtMost ? order <= 0 : order >= 0);
        var verdict = holds ? RequirementVerdict.Holds : RequirementVerdict.NoLongerHolds;
        return new(requirement, verdict, GivenText.Result(value, requirement.Value), "") { Computed = value };
    }

    private static IEnumerable<ResultLine> OfStage(DesignStage stage, DesignFiguresOf figures,
        Flight.Site.LaunchSite? site)
    {
        var rating = figures.RatingOf(stage, out var reason);
        yield return rating is null ? new($"{stage.Name}: rating", NotComputed, reason)
            : new($"{stage.Name}: design burst", rating.DesignBurst.ToString(),
                $"limited by {rating.LimitedBy}, {rating.Tests.Count} {(rating.Tests.Count == 1 ? "test" : "tests")}");
        if (rating is null) yield break;
        yield return rating.IsRated ? new($"{stage.Name}: highest allowed fill", rating.WorkingPressure.ToString(),
            stage.FillPressure is { } fill ? $"the design fills to {fill}" : "the design gives no fill")
            : new($"{stage.Name}: highest allowed fill", "refused", Finding.Errors(rating.Findings));
        if (rating.IsRated && OnTheCard(stage, rating, site) is { } line) yield return line;
    }

    // What the card would allow where nobody weighs the water in the resin; said where the fill is more.
    private static ResultLine? OnTheCard(DesignStage stage, Vessels.Ratings.Rating rating, Flight.Site.LaunchSite? site)
    {
        if (site is null || stage.FillPressure is not { } fill) return null;
        var heat = new Cards.ResinHeat(rating.Vessel, site.Temperature, null);
        if (heat.Retention is not { } kept || rating.WorkingPressure * kept is var allowed && allowed >= fill) return null;
        return new($"{stage.Name}: allowed on the flight card", (rating.WorkingPressure * kept).ToString(),
            ClearanceFindings.CardAllowsLess(fill, heat.Note, rating.Vessel.Resin.GlassTemperature is { Kind: SourceKind.Measured }));
    }

    private static ResultLine Line(string figure, DesignFiguresOf figures)
    {
        var name = $"{char.ToUpperInvariant(figure[0])}{figure[1..]}";
        return figures.Of(figure, figure == DesignFigures.Drift ? Limit.AtMost : Limit.AtLeast, out var reason) is { } value
            ? new(name, GivenText.Result(value) + (figure == DesignFigures.Margin ? " calibres" : "")) : new(name, NotComputed, reason);
    }

    private static string Condition(DesignRequirement requirement) =>
        $"{(requirement.Side == Limit.AtMost ? "at most" : "at least")} {GivenText.Short(requirement.Value)}";

    private static Requirement State(DesignRecordBuilder builder, RequirementOutcome outcome)
    {
        var (r, name) = (outcome.Requirement, outcome.Requirement.Name);
        return (outcome.Computed, r.Value) switch
        {
            (GaugePressure value, GaugePressure limit) => builder.Require(name, value, r.Side, limit, r.Why),
            (Length value, Length limit) => builder.Require(name, value, r.Side, limit, r.Why),
            (Speed value, Speed limit) => builder.Require(name, value, r.Side, limit, r.Why),
            (Mass value, Mass limit) => builder.Require(name, value, r.Side, limit, r.Why),
            (Duration value, Duration limit) => builder.Require(name, value, r.Side, limit, r.Why),
            (Force value, Force limit) => builder.Require(name, value, r.Side, limit, r.Why),
            (double value, double limit) => builder.Require(name, value, r.Side, limit, r.Why),
            _ => builder.Put(new Requirement(name, $"can't tell: {outcome.Reason}", Condition(r), false, r.Why)),
        };
    }
}
