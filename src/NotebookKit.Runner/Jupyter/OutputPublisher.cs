using System.Globalization;
using System.Text.Json.Nodes;
using NotebookKit.Runner.Engine;

namespace NotebookKit.Runner.Jupyter;

/// <summary>Publishes what one cell shows.</summary>
/// <param name="outlet">Sends messages.</param>
/// <param name="widgets">Shows controls.</param>
/// <param name="request">Request that runs the cell.</param>
/// <param name="count">Its execution count.</param>
/// <param name="silent">Whether the request asked for no output at all.</param>
internal sealed class OutputPublisher(KernelOutlet outlet, WidgetHandler widgets, JupyterMessage request, int count, bool silent)
{
    // One line a cell, which follows whatever is being computed.
    private bool _showsProgress;

    /// <summary>Publishes an output.</summary>
    /// <param name="output">Output.</param>
    public void Publish(CellOutput output)
    {
        if (silent) return;
        switch (output)
        {
            case StreamOutput stream:
                outlet.Publish("stream", request, new JsonObject { ["name"] = stream.Name, ["text"] = stream.Text });
                break;
            case ResultOutput result:
                outlet.Publish("execute_result", request, new JsonObject
                {
                    ["execution_count"] = count, ["data"] = Ready(result.Data), ["metadata"] = new JsonObject(),
                });
                break;
            case DisplayOutput display:
                outlet.Publish("display_data", request, Display(display.Data, display.DisplayId));
                break;
            case ProgressOutput progress:
                outlet.Publish(_showsProgress ? "update_display_data" : "display_data", request, Display(
                    new JsonObject { ["text/plain"] = progress.Text },
                        string.Create(CultureInfo.InvariantCulture, $"progress-{count}-{request.Id}")));
                _showsProgress = true;
                break;
            case UpdateOutput update:
                outlet.Publish("update_display_data", request, Display(update.Data, update.DisplayId));
                break;
        }
    }

    /// <summary>Publishes the error that ended the cell.</summary>
    /// <param name="error">Error.</param>
    public void Publish(CellError error) => outlet.Publish("error", request, ErrorContent(error));

    /// <summary>The content that an error has in a message.</summary>
    /// <param name="error">Error.</param>
    public static JsonObject ErrorContent(CellError error) => new()
    {
        ["ename"] = error.Kind,
        ["evalue"] = error.Message,
        ["traceback"] = new JsonArray([.. ErrorText.Lines(error).Select(line => JsonValue.Create(line))]),
    };

    private JsonObject Ready(JsonObject data)
    {
        widgets.Show(data);
        return ChartHtml.WithDrawing(data);
    }

    private JsonObject Display(JsonObject data, string? id) => new()
    {
        ["data"] = Ready(data),
        ["metadata"] = new JsonObject(),
        ["transient"] = string.IsNullOrEmpty(id) ? new JsonObject() : new JsonObject { ["display_id"] = id },
    };
}
