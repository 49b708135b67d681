using System.Text.Json.Nodes;

namespace NotebookKit.Runner.Jupyter;

/// <summary>Answers what a front-end asks while code is being written.</summary>
/// <param name="session">The worker behind the kernel.</param>
internal sealed class LanguageHandler(KernelSession session)
{
    /// <summary>What could stand at a place.</summary>
    /// <param name="request">Content of the request.</param>
    public async Task<JsonObject> CompleteAsync(JsonObject request)
    {
        var code = JupyterMessage.TextOf(request, "code");
        var place = CodePoints.ToUnits(code, JupyterMessage.NumberOf(request, "cursor_pos", code.Length));
        var list = await session.CompleteAsync(code, place);
        var (start, end) = (CodePoints.FromUnits(code, list.Start), CodePoints.FromUnits(code, list.End));
        var types = list.Entries.Select(e => new JsonObject { ["text"] = e.Text, ["type"] = e.Kind, ["start"] = start, ["end"] = end });
        return new JsonObject
        {
            ["matches"] = new JsonArray([.. list.Entries.Select(e => JsonValue.Create(e.Text))]),
            ["cursor_start"] = start,
            ["cursor_end"] = end,
            ["metadata"] = new JsonObject { ["_jupyter_types_experimental"] = new JsonArray([.. types]) },
        };
    }

    /// <summary>What stands at a place.</summary>
    /// <param name="request">Content of the request.</param>
    public async Task<JsonObject> InspectAsync(JsonObject request)
    {
        var code = JupyterMessage.TextOf(request, "code");
        var place = CodePoints.ToUnits(code, JupyterMessage.NumberOf(request, "cursor_pos", code.Length));
        var found = await session.DescribeAsync(code, place);
        return new JsonObject
        {
            ["found"] = found is not null,
            ["data"] = found is null ? [] : new JsonObject { ["text/markdown"] = found.Markdown, ["text/plain"] = found.Text },
            ["metadata"] = new JsonObject(),
        };
    }
}
