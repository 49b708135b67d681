using System.Text.Encodings.Web;
using System.Text.Json;
using NotebookKit.Provenance;

namespace NotebookKit.Record;

/// <summary>What was assumed, what was required and what was decided, as one value that can be kept, read again and compared.</summary>
/// <param name="Title">What the record is about.</param>
/// <param name="Givens">Its inputs in the order they were stated.</param>
/// <param name="Requirements">Its conditions.</param>
/// <param name="Decisions">Its choices.</param>
public sealed record DesignRecord(
    string Title,
    IReadOnlyList<Given> Givens,
    IReadOnlyList<Requirement> Requirements,
    IReadOnlyList<Decision> Decisions) : Result
{
    private const int ShownDigits = 16;

    private static readonly JsonSerializerOptions Format = new()
    {
        WriteIndented = true,
        PropertyNamingPolicy = JsonNamingPolicy.CamelCase,
        Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping,
        IgnoreReadOnlyProperties = true,
    };

    /// <summary>What its requirements and decisions rest on, by name and fingerprint; none in records kept before evidence was
    /// noted.</summary>
    public IReadOnlyList<EvidenceMark> Evidence { get; init => field = value ?? []; } = [];

    /// <inheritdoc/>
    public override string Title { get; } = Title;

    /// <inheritdoc/>
    public override ModelCard Model { get; } = new(
        "Design record",
        ["Values are those of the run that made the record; running the notebook again makes it anew."],
        "Any design of this library.",
        []);

    /// <inheritdoc/>
    public override IReadOnlyList<ResultLine> Lines =>
    [
        .. Givens.Select(g => new ResultLine($"Given: {g.Name}", g.Value,
            $"{g.Why} Range {g.Range}.{(g.Overridden ? " Overridden for this run." : "")}")),
        .. Evidence.Select(e => new ResultLine($"Evidence: {e.Name}", Shortened(e.Fingerprint), e.What)),
        .. Requirements.Select(r => new ResultLine($"Required: {r.Name}", r.LiveValue,
            $"{(r.Holds ? "holds" : "DOES NOT HOLD")}: {r.Condition}. {r.Why}{Resting(r.RestsOn)}")),
        .. Decisions.Select(d => new ResultLine($"Decided: {d.Name}", d.Chosen,
            $"{(d.StillRight ? "still right" : "LOOK AGAIN")}: {d.StaysRightWhile.Name} {d.StaysRightWhile.Condition}, now "
            + $"{d.StaysRightWhile.LiveValue}. {d.Why}{Resting(EvidenceOf(d))}")),
    ];

    /// <inheritdoc/>
    public override IReadOnlyList<Finding> Findings =>
    [
        .. Requirements.Where(r => !r.Holds).Select(r => RecordFindings.RequirementDoesNotHold(r.Name, r.LiveValue, r.Condition, r.Why)),
        .. Decisions.Where(d => !d.StillRight).Select(d => RecordFindings.DecisionNoLongerHolds(
            d.Name, d.Chosen, d.StaysRightWhile.Name, d.StaysRightWhile.LiveValue, d.StaysRightWhile.Condition)),
        .. Givens.Where(g => g.Overridden).Select(g => RecordFindings.GivenWasOverridden(g.Name, g.Value)),
    ];

    /// <inheritdoc/>
    public override IReadOnlyList<Caution> Cautions { get; } = [Provenance.Cautions.Prediction];

    /// <inheritdoc/>
    public override Working Working { get; } = new("The record states; the results it quotes show their own working.", []);

    /// <summary>The record as JSON, for keeping beside the page.</summary>
    public string ToJson() => JsonSerializer.Serialize(new Kept(Title, Givens, Requirements, Decisions, Evidence), Format);

    /// <summary>Reads a record that <see cref="ToJson"/> wrote.</summary>
    /// <param name="json">The kept text.</param>
    /// <exception cref="FormatException">The text isn't a design record.</exception>
    public static DesignRecord FromJson(string json)
    {
        Kept? kept;
        try
        {
            kept = JsonSerializer.Deserialize<Kept>(json, Format);
        }
        catch (JsonException error)
        {
            throw new FormatException($"This isn't a design record: line {error.LineNumber + 1} can't be read ({error.Path}). Export the "
                + "record again from its notebook.", error);
        }

        if (kept is not { Title: not null, Givens: not null, Requirements: not null, Decisions: not null })
            throw new FormatException("This isn't a design record: title, givens, requirements and decisions must all be there. Export "
                + "the record again from its notebook.");
        var record = new DesignRecord(kept.Title, kept.Givens, kept.Requirements, kept.Decisions) { Evidence = kept.Evidence! };
        return record.Flaw() is { } flaw ? throw new FormatException($"This isn't a design record: {flaw}. Export the record again from "
            + "its notebook.") : record;
    }

    /// <summary>Requirements and decisions that rest on one piece of evidence, a line each: what to look at again after that evidence
    /// moved.</summary>
    /// <param name="evidence">Name of the evidence.</param>
    public IReadOnlyList<ResultLine> RestingOn(string evidence) =>
    [
        .. Requirements.Where(r => r.RestsOn.Contains(evidence)).Select(r =>
            new ResultLine($"Required: {r.Name}", r.LiveValue, $"{r.Condition}: {(r.Holds ? "holds" : "does not hold")}")),
        .. Decisions.Where(d => EvidenceOf(d).Contains(evidence)).Select(d =>
            new ResultLine($"Decided: {d.Name}", d.Chosen, d.StillRight ? "still right" : "look again")),
    ];

    /// <summary>The evidence that a decision rests on, that of its condition included.</summary>
    internal static IReadOnlyList<string> EvidenceOf(Decision decision) => [.. decision.RestsOn.Union(decision.StaysRightWhile.RestsOn)];

    /// <summary>What keeps the record from being compared, in a few words; nothing where nothing does.</summary>
    internal string? Flaw() =>
        FlawOf("given", Givens, g => g.Name) ?? FlawOf("evidence", Evidence, e => e.Name)
            ?? FlawOf("requirement", Requirements, r => r.Name)
        ?? FlawOf("decision", Decisions, d => d.Name) ?? (Decisions.FirstOrDefault(d => d.StaysRightWhile is null) is { } open
            ? $"the decision \"{open.Name}\" has no condition" : null)
        ?? Requirements.Select(r => Unlisted($"the requirement \"{r.Name}\"",
            r.RestsOn)).Concat(Decisions.Select(d => Unlisted($"the decision \"{d.Name}\"", EvidenceOf(d))))
            .FirstOrDefault(f => f is not null);

    private static string? FlawOf<T>(string kind, IReadOnlyList<T> entries, Func<T, string> name) where T : class =>
        entries.Any(e => e is null || name(e) is null) ? $"one {kind} has no name"
        : entries.GroupBy(name, StringComparer.Ordinal).FirstOrDefault(g => g.Count() > 1) is { } twice
            ? $"the {kind} \"{twice.Key}\" is there {twice.Count()} times, and each name may be there once"
        : null;

    private string? Unlisted(string what, IReadOnlyList<string> restsOn) =>
        restsOn.FirstOrDefault(n => Evidence.All(e => e.Name != n)) is { } name
            ? $"{what} rests on \"{name}\", which isn't among the evidence" : null;

    private static string Resting(IReadOnlyList<string> restsOn) => restsOn.Count == 0 ? "" : $" Rests on {string.Join(", ", restsOn)}.";

    private static string Shortened(string fingerprint) => fingerprint.Length > ShownDigits ? $"{fingerprint[..ShownDigits]}..."
        : fingerprint;

    /// <summary>What changed since an earlier record of the same design.</summary>
    /// <param name="earlier">The earlier record.</param>
    /// <exception cref="FormatException">One of the two states a name twice.</exception>
    public RecordComparison ComparedWith(DesignRecord earlier) => RecordComparison.Between(earlier, this);

    private sealed record Kept(
        string Title, IReadOnlyList<Given> Givens, IReadOnlyList<Requirement> Requirements, IReadOnlyList<Decision> Decisions,
        IReadOnlyList<EvidenceMark>? Evidence = null);
}

/// <summary>Something outside the record that requirements and decisions rest on, such as the proof of a vessel, with the fingerprint it
/// had then.</summary>
/// <param name="Name">Name, unique in its record: "proof of Curlew C-1".</param>
/// <param name="Fingerprint">SHA-256 of the evidence, 64 hexadecimal digits: another fingerprint is other evidence.</param>
/// <param name="What">What it is, one line.</param>
public sealed record EvidenceMark(string Name, string Fingerprint, string What);

/// <summary>An input of the design: what it is, what it may be, and why it is what it is.</summary>
/// <param name="Name">Name, unique in its record.</param>
/// <param name="Value">Value with its unit, every digit kept.</param>
/// <param name="Range">The range it may be changed within, with units.</param>
/// <param name="Why">Why it has this value.</param>
/// <param name="Overridden">Whether this run was asked to use another value than the notebook's own.</param>
public sealed record Given(string Name, string Value, string Range, string Why, bool Overridden = false);
