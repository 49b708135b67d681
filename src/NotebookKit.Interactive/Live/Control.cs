using System.Text.Json.Nodes;

namespace NotebookKit.Interactive.Live;

/// <summary>The states of the controls we use, in the terms of the open widget messages.</summary>
internal static class Control
{
    /// <summary>The value of a slider, and of a text.</summary>
    public const string Value = "value";

    /// <summary>The place in its list of what a drop-down shows.</summary>
    public const string Index = "index";

    /// <summary>What a pressed button sends.</summary>
    public const string Event = "event";

    public static JsonObject Layout(string width) => new()
    {
        ["_model_name"] = "LayoutModel", ["_view_name"] = "LayoutView", ["width"] = width,
    };

    public static JsonObject Slider(string name, double from, double to, double step, double value, string layout) => new()
    {
        ["_model_name"] = "FloatSliderModel",
        ["_view_name"] = "FloatSliderView",
        ["description"] = name,
        ["min"] = from,
        ["max"] = to,
        ["step"] = step,
        [Value] = value,
        ["continuous_update"] = true,
        ["readout"] = true,
        ["readout_format"] = ".4g",
        ["orientation"] = "horizontal",
        ["disabled"] = false,
        ["layout"] = Reference(layout),
    };

    public static JsonObject Choice(string name, IReadOnlyList<string> choices, int start, string layout) => new()
    {
        ["_model_name"] = "DropdownModel",
        ["_view_name"] = "DropdownView",
        ["description"] = name,
        ["_options_labels"] = new JsonArray([.. choices.Select(c => JsonValue.Create(c))]),
        [Index] = start,
        ["disabled"] = false,
        ["layout"] = Reference(layout),
    };

    public static JsonObject Button(string text, string hint, string layout) => new()
    {
        ["_model_name"] = "ButtonModel",
        ["_view_name"] = "ButtonView",
        ["description"] = text,
        ["tooltip"] = hint,
        ["icon"] = "",
        ["button_style"] = "",
        ["disabled"] = false,
        ["layout"] = Reference(layout),
    };

    public static JsonObject Html(string html, string layout) => new()
    {
        ["_model_name"] = "HTMLModel", ["_view_name"] = "HTMLView", [Value] = html, ["layout"] = Reference(layout),
    };

    public static JsonObject Column(IEnumerable<string> children, string layout) => Box("VBox", children, layout);

    public static JsonObject Row(IEnumerable<string> children, string layout) => Box("HBox", children, layout);

    private static JsonObject Box(string kind, IEnumerable<string> children, string layout) => new()
    {
        ["_model_name"] = kind + "Model",
        ["_view_name"] = kind + "View",
        ["children"] = new JsonArray([.. children.Select(c => JsonValue.Create(Reference(c)))]),
        ["box_style"] = "",
        ["layout"] = Reference(layout),
    };

    private static string Reference(string id) => "IPY_MODEL_" + id;
}
