using System.Text.Json.Nodes;

namespace NotebookKit.Runner.Notebooks;

/// <summary>One cell, seen through the file's JSON; everything that isn't named here stays as it is.</summary>
internal sealed class NotebookCell
{
    /// <summary>The open convention for "this cell is meant to fail".</summary>
    public const string MayFailTag = "raises-exception";

    private readonly JsonObject _json;

    /// <summary>A cell of a file.</summary>
    /// <param name="json">Its JSON.</param>
    /// <param name="kind">Its kind.</param>
    /// <param name="number">Count among the code cells that hold code, from 1; 0 for every other cell.</param>
    public NotebookCell(JsonObject json, CellKind kind, int number)
    {
        this._json = json;
        Kind = kind;
        Number = number;
        Source = TextOf(json["source"]);
        Tags = json["metadata"]?["tags"] is JsonArray tags ? [.. tags.Select(TextOf)] : [];
    }

    /// <summary>What kind of cell it is.</summary>
    public CellKind Kind { get; }

    /// <summary>Count among the code cells that hold code, from 1, as shown in brackets beside it; 0 for every other cell.</summary>
    public int Number { get; }

    /// <summary>Its text.</summary>
    public string Source { get; }

    /// <summary>Its tags.</summary>
    public IReadOnlyList<string> Tags { get; }

    /// <summary>Whether it may fail without failing the notebook.</summary>
    public bool MayFail => Tags.Contains(MayFailTag);

    /// <summary>What it shows, as the notebook format stores it.</summary>
    public JsonArray Outputs => _json["outputs"] as JsonArray ?? [];

    /// <summary>Files that its text carries along, by name; none where it carries none.</summary>
    public JsonObject? Attachments => _json["attachments"] as JsonObject;

    /// <summary>Replaces what a code cell shows.</summary>
    /// <param name="outputs">New outputs.</param>
    /// <param name="executionCount">Its execution count; none where it didn't run.</param>
    public void SetOutputs(JsonArray outputs, int? executionCount)
    {
        _json["outputs"] = outputs;
        _json["execution_count"] = executionCount;
    }

    /// <summary>Text that the format allows to be stored as one string or as a list of lines.</summary>
    /// <param name="node">JSON of the text.</param>
    public static string TextOf(JsonNode? node) => node switch
    {
        JsonArray lines => string.Concat(lines.Select(TextOf)),
        JsonValue value when value.TryGetValue<string>(out var text) => text,
        _ => "",
    };
}

/// <summary>The three kinds of cell that the notebook format knows.</summary>
internal enum CellKind
{
    /// <summary>Code to run.</summary>
    Code,

    /// <summary>Text in Markdown.</summary>
    Markdown,

    /// <summary>Text to leave alone.</summary>
    Raw,
}
