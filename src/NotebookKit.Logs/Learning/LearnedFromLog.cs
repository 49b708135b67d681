using NotebookKit.Clearance;
using NotebookKit.Clearance.Designs;
using NotebookKit.DesignFiles;
using NotebookKit.Provenance;

namespace NotebookKit.Logs.Learning;

/// <summary>What a new log says of a design: the fit, the values that it puts into the design, and every figure and requirement that
/// moves.</summary>
/// <remarks>Source: none of its own; the fit and the check name theirs.</remarks>
public sealed record LearnedFromLog : Result
{
    private readonly IReadOnlyList<Finding> _said;

    internal LearnedFromLog(string file, LogUse use, string quality, IResult fit, Design before, IReadOnlyList<DesignEdit> edits,
        IReadOnlyList<Finding> said)
    {
        (File, Use, Quality, Fit, Before, Edits, _said) = (file, use, quality, fit, before, edits, said);
        After = Into(before);
        Moved = After.Compare(before);
    }

    /// <summary>Name of the log's file.</summary>
    public string File { get; }

    /// <summary>What it was fitted for.</summary>
    public LogUse Use { get; }

    /// <summary>How good the log's rows are, in one line.</summary>
    public string Quality { get; }

    /// <summary>The fit, or the proof's record.</summary>
    public IResult Fit { get; }

    /// <summary>The design before.</summary>
    public Design Before { get; }

    /// <summary>The design with what the log says.</summary>
    public Design After { get; }

    /// <summary>The values that the log puts into the design.</summary>
    public IReadOnlyList<DesignEdit> Edits { get; }

    /// <summary>Figures and requirements that moved.</summary>
    public DesignComparison Moved { get; }

    /// <inheritdoc/>
    public override string Title => $"{Before.Name}, learned from {File}";

    /// <inheritdoc/>
    public override ModelCard Model => new("Fit of a log, and the design's check before and after it",
        [.. Fit.Model.Assumptions, .. Moved.Model.Assumptions], Fit.Model.ValidRange, [.. Fit.Model.Sources, .. Moved.Model.Sources]);

    /// <inheritdoc/>
    public override IReadOnlyList<ResultLine> Lines =>
    [
        new("Data quality", Quality, $"taken as the log of a {Use.ToString().ToLowerInvariant()}"),
        .. Fit.Lines,
        .. Edits.Select(e => new ResultLine($"Into the design: {e.Path}", e.Json ?? "taken out")),
        .. Moved.Lines,
    ];

    /// <inheritdoc/>
    public override IReadOnlyList<Finding> Findings => [.. _said.Concat(Fit.Findings).Concat(Moved.Findings).Distinct()];

    /// <inheritdoc/>
    public override IReadOnlyList<Caution> Cautions => [.. Fit.Cautions.Concat(Moved.Cautions).Distinct()];

    /// <inheritdoc/>
    public override Working Working => Fit.Working;

    /// <summary>A design with what the log says put in; its remarks and the order of its file are kept.</summary>
    /// <param name="design">The design.</param>
    /// <exception cref="DesignFiles.Trees.DesignFileException">It has no place for a value.</exception>
    public Design Into(Design design)
    {
        ArgumentNullException.ThrowIfNull(design);
        foreach (var edit in Edits)
            design = edit.Json is { } json ? design.With(edit.Path, json) : design.HasPart(edit.Path) ? design.Without(edit.Path) : design;
        return design;
    }
}
