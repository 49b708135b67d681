using System.Text.Json;
using NotebookKit.Charts.Explorers;
using NotebookKit.Charts.Results.Settings;
using NotebookKit.DesignFiles;

namespace NotebookKit.Live;

/// <summary>The explorer that a lesson's page beside this one drags: its design is read once, its settings are answered one by
/// one.</summary>
internal sealed class OpenExplorer
{
    private string _model = "", _text = "";
    private Func<IReadOnlyList<double>, ExplorerState>? _at;

    /// <summary>What the model shows at a setting.</summary>
    public void Write(Utf8JsonWriter json, string model, string text, double[] setting)
    {
        if (_at is null || _model != model || _text != text)
            (_model, _text, _at) = (model, text, DesignSetting.Of(model, Design.Parse(text, "The design of this page")));
        var state = _at(setting);
        if (state.RefusedBecause.Length > 0) json.WriteString("reason", state.RefusedBecause);
        Numbers(json, "xs", state.X);
        Numbers(json, "ys", state.Y);
        Numbers(json, "numbers", state.Numbers);
    }

    private static void Numbers(Utf8JsonWriter json, string name, IReadOnlyList<double> values)
    {
        json.WriteStartArray(name);
        foreach (var value in values) json.WriteNumberValue(value);
        json.WriteEndArray();
    }
}
