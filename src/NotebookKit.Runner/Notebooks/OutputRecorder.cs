using System.Text;
using System.Text.Json.Nodes;
using NotebookKit.Runner.Engine;

namespace NotebookKit.Runner.Notebooks;

/// <summary>Collects what the cells of one notebook show, in the form the notebook format stores.</summary>
internal sealed class OutputRecorder
{
    private readonly Dictionary<string, JsonObject> byDisplayId = new(StringComparer.Ordinal);
    private readonly StringBuilder stream = new();
    private JsonArray outputs = [];
    private string? streamName;
    private int executionCount;

    /// <summary>Begins the next cell.</summary>
    /// <param name="count">The cell's execution count, 1 or more.</param>
    public void Begin(int count)
    {
        executionCount = count;
        outputs = [];
        streamName = null;
        stream.Clear();
    }

    /// <summary>Adds what the cell shows; an update takes the place of what it updates, in whichever cell that is.</summary>
    /// <param name="output">Output.</param>
    public void Add(CellOutput output)
    {
        if (output is ProgressOutput) return;
        if (output is StreamOutput text)
        {
            if (text.Name != streamName) EndStream();
            streamName = text.Name;
            stream.Append(text.Text);
            return;
        }

        EndStream();
        switch (output)
        {
            case ResultOutput result:
                outputs.Add(new JsonObject
                {
                    ["output_type"] = "execute_result",
                    ["execution_count"] = executionCount,
                    ["metadata"] = new JsonObject(),
                    ["data"] = result.Data,
                });
                break;
            case UpdateOutput update when byDisplayId.TryGetValue(update.DisplayId, out var shown):
                shown["data"] = update.Data;
                break;
            case UpdateOutput update:
                AddDisplay(update.Data, update.DisplayId);
                break;
            case DisplayOutput display:
                AddDisplay(display.Data, display.DisplayId);
                break;
        }
    }

    /// <summary>Adds the error that ended the cell.</summary>
    /// <param name="error">Error.</param>
    public void Add(CellError error)
    {
        EndStream();
        outputs.Add(new JsonObject
        {
            ["output_type"] = "error",
            ["ename"] = error.Kind,
            ["evalue"] = error.Message,
            ["traceback"] = new JsonArray([.. ErrorText.Lines(error).Select(line => JsonValue.Create(line))]),
        });
    }

    /// <summary>What the cell has shown, in order.</summary>
    public JsonArray End()
    {
        EndStream();
        return outputs;
    }

    private void EndStream()
    {
        if (streamName is not null)
            outputs.Add(new JsonObject { ["output_type"] = "stream", ["name"] = streamName, ["text"] = stream.ToString() });
        streamName = null;
        stream.Clear();
    }

    private void AddDisplay(JsonObject data, string? displayId)
    {
        var output = new JsonObject { ["output_type"] = "display_data", ["metadata"] = new JsonObject(), ["data"] = data };
        outputs.Add(output);
        if (!string.IsNullOrEmpty(displayId)) byDisplayId[displayId] = output;
    }
}
