using NotebookKit.DesignFiles.Parts;
using NotebookKit.Provenance;
using NotebookKit.Record.Givens;

namespace NotebookKit.Clearance.Designs;

/// <summary>Two states of a design side by side: which figures moved, which requirements hold no longer or hold again, which decisions
/// rest on them.</summary>
/// <remarks>Source: none of its own; each state is checked as <see cref="DesignCheck"/> says.</remarks>
public sealed record DesignComparison : Result
{
    internal DesignComparison(DesignCheck before, DesignCheck after)
    {
        (Before, After) = (before, after);
        Figures = [.. DesignFigures.Kinds.Keys.Where(f => !DesignFigures.IsCostly(f) || after.Design.Requirements.Any(r => r.Of == f))
            .Select(f => new ComparedFigure(f, Shown(before, f), Shown(after, f))).Where(f => f.Before != f.After)];
        Requirements =
        [
            .. after.Outcomes.Select(a => (Before: before.Outcomes.FirstOrDefault(b => b.Requirement.Name == a.Requirement.Name), After: a))
                .Where(p => p.Before is null || (p.Before.Verdict, p.Before.Value, p.Before.Requirement.Limit)
                    != (p.After.Verdict, p.After.Value, p.After.Requirement.Limit))
                .Select(p => new ComparedRequirement(p.After.Requirement.Name, p.Before, p.After)),
        ];
    }

    /// <summary>The state before.</summary>
    public DesignCheck Before { get; }

    /// <summary>The state after.</summary>
    public DesignCheck After { get; }

    /// <summary>Figures that moved, in the order in which a design knows them.</summary>
    public IReadOnlyList<ComparedFigure> Figures { get; }

    /// <summary>Requirements whose figure or verdict moved.</summary>
    public IReadOnlyList<ComparedRequirement> Requirements { get; }

    /// <summary>Decisions whose requirement held before and doesn't, or can't be told, after.</summary>
    public IReadOnlyList<DesignDecision> LookAgain => [.. After.LookAgain.Where(d => Before.LookAgain.All(b => b.Name != d.Name))];

    /// <inheritdoc/>
    public override string Title => $"What moved in {After.Design.Name}";

    /// <inheritdoc/>
    public override ModelCard Model => new("Two checks side by side",
        ["A figure moved where it differs in the four digits that are shown."], "As the check of a design.",
        [Source.CommonPractice("Old beside new")]);

    /// <inheritdoc/>
    public override IReadOnlyList<ResultLine> Lines => Figures.Count + Requirements.Count == 0 ? [new("Nothing moved", "no figure")] :
    [
        .. Figures.Select(f => new ResultLine(f.Name, f.After, $"before: {f.Before}")),
        .. Requirements.Select(r => new ResultLine($"Required: {r.Name}", Word(r.After.Verdict),
            $"{Said(r.After)}; before: {(r.Before is { } b ? $"{Word(b.Verdict)}, {Said(b)}" : "not required")}")),
    ];

    /// <inheritdoc/>
    public override IReadOnlyList<Finding> Findings =>
    [
        .. After.Findings.Where(f => f.Severity == FindingSeverity.Error),
        .. LookAgain.Select(d => ClearanceFindings.DecisionWantsAnotherLook(d.Name, d.Chosen, d.StaysRightWhile)),
    ];

    /// <inheritdoc/>
    public override IReadOnlyList<Caution> Cautions => After.Cautions;

    /// <inheritdoc/>
    public override Working Working => new("Both checks show their own working.", []);

    private static string Said(RequirementOutcome outcome) => outcome.Value.Length > 0 ? outcome.Value : outcome.Reason;

    private static string Shown(DesignCheck check, string figure) =>
        check.Figures.Of(figure, DesignSweep.WorseSide(figure), out _) is { } value ? GivenText.Result(value) : "can't be computed";

    private static string Word(RequirementVerdict verdict) => verdict switch
    {
        RequirementVerdict.Holds => "holds", RequirementVerdict.NoLongerHolds => "DOES NOT HOLD", _ => "CAN'T TELL",
    };
}

/// <summary>A figure that moved.</summary>
/// <param name="Name">Its name: "apogee".</param>
/// <param name="Before">What it was, with its unit.</param>
/// <param name="After">What it is.</param>
public sealed record ComparedFigure(string Name, string Before, string After);

/// <summary>A requirement whose figure or verdict moved.</summary>
/// <param name="Name">Its name.</param>
/// <param name="Before">What was found of it before; none where it wasn't required.</param>
/// <param name="After">What is found of it.</param>
public sealed record ComparedRequirement(string Name, RequirementOutcome? Before, RequirementOutcome After);
