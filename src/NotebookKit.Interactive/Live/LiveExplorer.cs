using System.Text.Json.Nodes;
using NotebookKit.Charts.Explorers;
using NotebookKit.Interactive.Formatters;
using NotebookKit.Interactive.Html;

namespace NotebookKit.Interactive.Live;

/// <summary>
/// An explorer whose sliders call the model itself, in the running session: what is dragged is computed, not interpolated. Made by
/// <see cref="LiveExplorers.Live"/>.
/// </summary>
public sealed class LiveExplorer
{
    private readonly IFrontEndLink link;
    private readonly double[] setting;
    private readonly string answerId;

    internal LiveExplorer(Explorer explorer, IFrontEndLink link)
    {
        this.link = link;
        Explorer = explorer;
        setting = [.. explorer.Parameters.Select(p => p.Start)];
        var layout = Open(Control.Layout("98%"), null);
        var sliders = explorer.Parameters.Select((p, i) => Open(Slider(p, layout), values => Drag(i, values))).ToList();
        answerId = Open(Control.Html(Answer(), layout), null);
        var below = Open(Control.Html(Below(), layout), null);
        Id = Open(Control.Column([.. sliders, answerId, below], layout), null);
    }

    /// <summary>The explorer it shows.</summary>
    public Explorer Explorer { get; }

    /// <summary>Id of the control that holds all others.</summary>
    public string Id { get; }

    private static JsonObject Slider(ExplorerParameter parameter, string layout) => Control.Slider(
        $"{parameter.Name} [{parameter.Unit}]", parameter.From, parameter.To, (parameter.To - parameter.From) / 200, parameter.Start, layout);

    private string Open(JsonObject state, Action<JsonObject>? changed)
    {
        var id = Guid.NewGuid().ToString("N");
        link.Open(id, state, changed);
        return id;
    }

    private void Drag(int parameter, JsonObject values)
    {
        if (values["value"] is not JsonValue json || !json.TryGetValue<double>(out var value)) return;
        setting[parameter] = Math.Clamp(value, Explorer.Parameters[parameter].From, Explorer.Parameters[parameter].To);
        link.Update(answerId, new JsonObject { ["value"] = Answer() });
    }

    private string Answer() => LiveAnswer.Html(Explorer, setting);

    private string Below()
    {
        using var writer = new StringWriter();
        Fragment.Write(writer, "explore", w =>
        {
            if (Explorer.Remark.Length > 0) w.Write($"<p class=\"nk-note\">{Escape.Text(Explorer.Remark)}</p>");
            CautionFormatter.Html(Explorer.Cautions, w);
        });
        return writer.ToString();
    }
}
