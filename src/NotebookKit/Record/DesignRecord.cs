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
    IReadOnlyList<Decision> Decisions) : IResult
{
    private static readonly JsonSerializerOptions Format = new()
    {
        WriteIndented = true,
        PropertyNamingPolicy = JsonNamingPolicy.CamelCase,
        Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping,
        IgnoreReadOnlyProperties = true,
    };

    /// <inheritdoc/>
    public ModelCard Model { get; } = new(
        "Design record",
        ["Values are those of the run that made the record; running the notebook again makes it anew."],
        "Any design of this library.",
        []);

    /// <inheritdoc/>
    public ResultStatus Status => ResultStatus.Completed;

    /// <inheritdoc/>
    public IReadOnlyList<ResultLine> Lines =>
    [
        .. Givens.Select(g => new ResultLine($"Given: {g.Name}", g.Value, $"{g.Why} Range {g.Range}.{(g.Overridden ? " Overridden for this run." : "")}")),
        .. Requirements.Select(r => new ResultLine($"Required: {r.Name}", r.LiveValue, $"{(r.Holds ? "holds" : "DOES NOT HOLD")}: {r.Condition}. {r.Why}")),
        .. Decisions.Select(d => new ResultLine($"Decided: {d.Name}", d.Chosen, $"{(d.StillRight ? "still right" : "LOOK AGAIN")}: {d.StaysRightWhile.Name} {d.StaysRightWhile.Condition}, now {d.StaysRightWhile.LiveValue}. {d.Why}")),
    ];

    /// <inheritdoc/>
    public IReadOnlyList<Finding> Findings =>
    [
        .. Requirements.Where(r => !r.Holds).Select(r => Finding.Warning($"{r.Name} is {r.LiveValue}, required {r.Condition}. {r.Why}")),
        .. Decisions.Where(d => !d.StillRight).Select(d => Finding.Warning(
            $"The decision \"{d.Name}: {d.Chosen}\" no longer holds: {d.StaysRightWhile.Name} is {d.StaysRightWhile.LiveValue}, it stays right while {d.StaysRightWhile.Condition}.")),
        .. Givens.Where(g => g.Overridden).Select(g => Finding.Note($"{g.Name} was set to {g.Value} for this run.")),
    ];

    /// <inheritdoc/>
    public IReadOnlyList<Caution> Cautions { get; } = [Provenance.Cautions.Prediction];

    /// <inheritdoc/>
    public Working Working { get; } = new("The record states; the results it quotes show their own working.", []);

    /// <summary>The record as JSON, for keeping beside the page.</summary>
    public string ToJson() => JsonSerializer.Serialize(new Kept(Title, Givens, Requirements, Decisions), Format);

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
            throw new FormatException($"This isn't a design record: line {error.LineNumber + 1} can't be read ({error.Path}). Export the record again from its notebook.", error);
        }

        return kept is { Title: not null, Givens: not null, Requirements: not null, Decisions: not null }
            ? new(kept.Title, kept.Givens, kept.Requirements, kept.Decisions)
            : throw new FormatException("This isn't a design record: title, givens, requirements and decisions must all be there. Export the record again from its notebook.");
    }

    /// <summary>What changed since an earlier record of the same design.</summary>
    /// <param name="earlier">The earlier record.</param>
    public RecordComparison ComparedWith(DesignRecord earlier) => RecordComparison.Between(earlier, this);

    private sealed record Kept(string Title, IReadOnlyList<Given> Givens, IReadOnlyList<Requirement> Requirements, IReadOnlyList<Decision> Decisions);
}
