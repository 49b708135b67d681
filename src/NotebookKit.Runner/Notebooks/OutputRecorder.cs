using System.Text;
using System.Text.Json.Nodes;
using NotebookKit.Runner.Engine;

namespace NotebookKit.Runner.Notebooks;

/// <summary>Collects what the cells of one notebook show, in the form the notebook format stores.</summary>
internal sealed class OutputRecorder
{
    private readonly Dictionary<string, JsonObject> _byDisplayId = new(StringComparer.Ordinal);
    private readonly StringBuilder _stream = new();
    private JsonArray _outputs = [];
    private string? _streamName;
    private int _executionCount;

    /// <summary>Begins the next cell.</summary>
    /// <param name="count">The cell's execution count, 1 or more.</param>
    public void Begin(int count)
    {
        _executionCount = count;
        _outputs = [];
        _streamName = null;
        _stream.Clear();
    }

    /// <summary>Adds what the cell shows; an update takes the place of what it updates, in whichever cell that is.</summary>
    /// <param name="output">Output.</param>
    public void Add(CellOutput output)
    {
        if (output is ProgressOutput) return;
        if (output is StreamOutput text)
        {
            if (text.Name != _streamName) EndStream();
            _streamName = text.Name;
            _stream.Append(text.Text);
            return;
        }

        EndStream();
        switch (output)
        {
            case ResultOutput result:
                _outputs.Add(new JsonObject
                {
                    ["output_type"] = "execute_result",
                    ["execution_count"] = _executionCount,
                    ["metadata"] = new JsonObject(),
                    ["data"] = result.Data,
                });
                break;
            case UpdateOutput update when _byDisplayId.TryGetValue(update.DisplayId, out var shown):
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
        _outputs.Add(new JsonObject
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
        return _outputs;
    }

    private void EndStream()
    {
        if (_streamName is not null)
            _outputs.Add(new JsonObject { ["output_type"] = "stream", ["name"] = _streamName, ["text"] = _stream.ToString() });
        _streamName = null;
        _stream.Clear();
    }

    private void AddDisplay(JsonObject data, string? displayId)
    {
        var output = new JsonObject { ["output_type"] = "display_data", ["metadata"] = new JsonObject(), ["data"] = data };
        _outputs.Add(output);
        if (!string.IsNullOrEmpty(displayId)) _byDisplayId[displayId] = output;
    }
}
