using System.Text.Json.Nodes;

namespace NotebookKit.Interactive.Live;

/// <summary>The states of the controls we use, in the terms of the open widget messages.</summary>
internal static class Control
{

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
        ["value"] = value,
        ["continuous_update"] = true,
        ["readout"] = true,
        ["readout_format"] = ".4g",
        ["orientation"] = "horizontal",
        ["disabled"] = false,
        ["layout"] = Reference(layout),
    };

    public static JsonObject Html(string html, string layout) => new()
    {
        ["_model_name"] = "HTMLModel", ["_view_name"] = "HTMLView", ["value"] = html, ["layout"] = Reference(layout),
    };

    public static JsonObject Column(IEnumerable<string> children, string layout) => new()
    {
        ["_model_name"] = "VBoxModel",
        ["_view_name"] = "VBoxView",
        ["children"] = new JsonArray([.. children.Select(c => JsonValue.Create(Reference(c)))]),
        ["box_style"] = "",
        ["layout"] = Reference(layout),
    };


    private static string Reference(string id) => "IPY_MODEL_" + id;
}
