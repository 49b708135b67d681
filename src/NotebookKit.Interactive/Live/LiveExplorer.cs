using System.Text.Json.Nodes;
using NotebookKit.Charts.Explorers;
using NotebookKit.Interactive.Formatters;
using NotebookKit.Interactive.Html;

namespace NotebookKit.Interactive.Live;

/// <summary>
/// An explorer whose sliders and lists call the model itself, in the running session: what is dragged is computed, not interpolated. One
/// button goes back to the start, another keeps the curve for comparison. Made by <see cref="LiveExplorers.Live"/>.
/// </summary>
public sealed class LiveExplorer
{
    // More than that nobody tells apart.
    private const int MostKept = 4;

    private readonly IFrontEndLink _link;
    private readonly double[] _setting;
    private readonly List<LiveCurve> _kept = [];
    private readonly List<string> _inputs;
    private readonly string _answerId;

    internal LiveExplorer(Explorer explorer, IFrontEndLink link)
    {
        this._link = link;
        Explorer = explorer;
        _setting = [.. explorer.Parameters.Select(p => p.Start)];
        var layout = Open(Control.Layout("98%"));
        var button = Open(Control.Layout("12em"));
        _inputs = [.. explorer.Parameters.Select((p, i) => Open(InputOf(p, layout), values => Move(i, values)))];
        var back = Open(Control.Button("Back to the start", "Every value as it was at first; kept curves go", button), Pressed(Back));
        var keep = Open(Control.Button("Keep this curve", "Stays in the chart, to compare with", button), Pressed(Keep));
        var buttons = Open(Control.Row([back, keep], layout));
        _answerId = Open(Control.Html(Answer(), layout));
        var below = Open(Control.Html(Below(), layout));
        Id = Open(Control.Column([.. _inputs, buttons, _answerId, below], layout));
    }

    /// <summary>The explorer it shows.</summary>
    public Explorer Explorer { get; }

    /// <summary>Id of the control that holds all others.</summary>
    public string Id { get; }

    private static JsonObject InputOf(ExplorerParameter parameter, string layout) => parameter.Choices.Count > 0
        ? Control.Choice(parameter.Name, parameter.Choices, (int)parameter.Start, layout)
        : Control.Slider(
            parameter.Unit == "-" ? parameter.Name : $"{parameter.Name} [{parameter.Unit}]", parameter.From, parameter.To,
                (parameter.To - parameter.From) / 200, parameter.Start, layout);

    private static string MovedBy(ExplorerParameter parameter) => parameter.Choices.Count > 0 ? Control.Index : Control.Value;

    private static Action<JsonObject> Pressed(Action action) => told =>
    {
        if (told[Control.Event] is JsonValue json && json.TryGetValue<string>(out var name) && name == "click") action();
    };

    private string Open(JsonObject state, Action<JsonObject>? changed = null)
    {
        var id = Guid.NewGuid().ToString("N");
        _link.Open(id, state, changed);
        return id;
    }

    private void Move(int parameter, JsonObject values)
    {
        var moved = Explorer.Parameters[parameter];
        if (values[MovedBy(moved)] is not JsonValue json || !json.TryGetValue<double>(out var value)) return;
        _setting[parameter] = Math.Clamp(value, moved.From, moved.To);
        Show();
    }

    private void Back()
    {
        _kept.Clear();
        foreach (var (i, parameter) in Explorer.Parameters.Index())
        {
            _setting[i] = parameter.Start;
            _link.Update(_inputs[i], new JsonObject { [MovedBy(parameter)] = parameter.Choices.Count > 0 ? (int)parameter.Start
                : parameter.Start });
        }

        Show();
    }

    private void Keep()
    {
        if (LiveCurve.Of(Explorer, _setting) is not { } curve || _kept.Exists(k => k.Name == curve.Name)) return;
        if (_kept.Count == MostKept) _kept.RemoveAt(0);
        _kept.Add(curve);
        Show();
    }

    private void Show() => _link.Update(_answerId, new JsonObject { [Control.Value] = Answer() });

    private string Answer() => LiveAnswer.Html(Explorer, _setting, _kept);

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
