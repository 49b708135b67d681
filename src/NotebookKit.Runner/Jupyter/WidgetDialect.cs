using System.Text.Json;
using System.Text.Json.Nodes;

namespace NotebookKit.Runner.Jupyter;

/// <summary>
/// The two ways in which front-ends take the open widget messages: the current one, and the one before version 7 of the Jupyter widgets,
/// which the classic front-end of some distributions still has. Source: Jupyter widgets project, Jupyter widget messaging protocol, version
/// 2.
/// </summary>
/// <param name="IsOld">Whether it is the one before version 7.</param>
internal sealed record WidgetDialect(bool IsOld)
{
    /// <summary>Comm target of widgets.</summary>
    public const string Target = "jupyter.widget";

    /// <summary>Comm target by which an old front-end makes itself known.</summary>
    public const string OldVersionTarget = "jupyter.widget.version";

    /// <summary>What an old front-end's version has to satisfy.</summary>
    public const string OldVersion = "~2.1.4";

    /// <summary>Media type of a control's view.</summary>
    public const string View = "application/vnd.jupyter.widget-view+json";

    private const string AnyVersion = "*";
    private const string Labels = "_options_labels";
    private const string Place = "index";
    private const string Choice = "value";

    /// <summary>A control's state with the names of the modules that draw it.</summary>
    /// <param name="state">State.</param>
    public JsonObject WithModules(JsonObject state)
    {
        var full = state.DeepClone().AsObject();
        var module = IsOld ? "jupyter-js-widgets" : JupyterMessage.TextOf(state, "_model_name") == "LayoutModel" ? "@jupyter-widgets/base"
            : "@jupyter-widgets/controls";
        full["_model_module"] = module;
        full["_view_module"] = module;
        full["_model_module_version"] = AnyVersion;
        full["_view_module_version"] = AnyVersion;
        if (!IsOld) return full;
        full["msg_throttle"] = 1;
        return Said(state, full);
    }

    /// <summary>The data that opens a control.</summary>
    /// <param name="state">Its state.</param>
    public JsonObject OpenData(JsonObject state) => IsOld ? WithModules(state)
        : new JsonObject { ["state"] = WithModules(state), ["buffer_paths"] = new JsonArray() };

    /// <summary>The data that changes a control.</summary>
    /// <param name="control">Whole state of the control.</param>
    /// <param name="state">Values that change.</param>
    public JsonObject UpdateData(JsonObject control, JsonObject state) => new()
    {
        ["method"] = "update", ["state"] = Said(control, state.DeepClone().AsObject()),
            [IsOld ? "buffers" : "buffer_paths"] = new JsonArray(),
    };

    /// <summary>The values that a front-end's message says the reader changed; none where it says something else.</summary>
    /// <param name="data">Data of the message.</param>
    public static JsonObject? Changed(JsonObject data) => JupyterMessage.TextOf(data, "method") switch
    {
        "update" => data["state"] as JsonObject,
        "backbone" => data["sync_data"] as JsonObject,
        _ => null,
    };

    /// <summary>What a front-end's message sends that is no value, such as the press of a button; none where it says something
    /// else.</summary>
    /// <param name="data">Data of the message.</param>
    public static JsonObject? Sent(JsonObject data) => JupyterMessage.TextOf(data, "method") == "custom" ? data["content"] as JsonObject :
        null;

    /// <summary>Values that the reader changed in our terms.</summary>
    /// <param name="control">Whole state of the control.</param>
    /// <param name="changed">Values as the front-end says them; changed in place.</param>
    public static JsonObject Understood(JsonObject control, JsonObject changed)
    {
        if (control[Labels] is not JsonArray labels || changed[Choice] is not JsonValue choice
            || choice.GetValueKind() != JsonValueKind.String) return changed;
        var place = labels.Select(l => (string?)l).ToList().IndexOf((string?)choice);
        changed.Remove(Choice);
        if (place >= 0) changed[Place] = place;
        return changed;
    }

    // The old front-end says a choice by its label, the current one by its place.
    private JsonObject Said(JsonObject control, JsonObject state)
    {
        if (!IsOld || control[Labels] is not JsonArray labels || state[Place] is not JsonValue place
            || !place.TryGetValue<int>(out var number)) return state;
        state.Remove(Place);
        state[Choice] = labels[number]!.DeepClone();
        return state;
    }
}
