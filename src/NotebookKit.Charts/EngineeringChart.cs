using NotebookKit.Charts.Figures;
using NotebookKit.Charts.Marks;
using NotebookKit.Charts.Notes;
using NotebookKit.Charts.Pictures;
using NotebookKit.Provenance;
using Plotly.NET;

namespace NotebookKit.Charts;

/// <summary>
/// A chart as a description: axes with units, marks, limits, events. It never changes; <c>with</c> makes a variant. It refuses to draw a
/// column on an axis of another unit, so that bar and psi can't share a scale.
/// </summary>
public sealed record EngineeringChart
{
    /// <summary>Creates an empty chart over two axes.</summary>
    /// <param name="title">What it shows.</param>
    /// <param name="x">Horizontal axis.</param>
    /// <param name="y">Vertical axis at the left.</param>
    public EngineeringChart(string title, Axis x, Axis y)
    {
        ArgumentNullException.ThrowIfNull(title);
        ArgumentNullException.ThrowIfNull(x);
        ArgumentNullException.ThrowIfNull(y);
        (Title, X, Y) = (title, x, y);
    }

    /// <summary>What the chart shows.</summary>
    public string Title { get; init; }

    /// <summary>Horizontal axis.</summary>
    public Axis X { get; init; }

    /// <summary>Vertical axis at the left.</summary>
    public Axis Y { get; init; }

    /// <summary>Vertical axis at the right; none where nothing is read there.</summary>
    public Axis? Right { get; init; }

    /// <summary>Upward axis of a chart in space; none for the usual flat chart.</summary>
    public Axis? Up { get; init; }

    /// <summary>What is drawn, in order.</summary>
    public IReadOnlyList<Mark> Marks { get; init; } = [];

    /// <summary>Moments on the horizontal axis.</summary>
    public IReadOnlyList<EventLine> Events { get; init; } = [];

    /// <summary>Values that matter.</summary>
    public IReadOnlyList<LimitLine> Limits { get; init; } = [];

    /// <summary>Tinted parts.</summary>
    public IReadOnlyList<ShadedSpan> Spans { get; init; } = [];

    /// <summary>Remarks.</summary>
    public IReadOnlyList<Callout> Callouts { get; init; } = [];

    /// <summary>One sentence below the title; may be empty.</summary>
    public string Remark { get; init; } = "";

    /// <summary>Whether bars of one name are stacked instead of standing side by side.</summary>
    public bool Stacked { get; init; }

    /// <summary>Whether one unit is as long on both axes: plan views.</summary>
    public bool EqualScale { get; init; }

    /// <summary>Name of the annotation that carries the remark.</summary>
    internal const string RemarkName = "remark";

    /// <summary>Name of the annotation that says which words the letters on a live figure stand for.</summary>
    internal const string KeyName = "key";

    /// <summary>A single mark is named by its axis and needs no legend.</summary>
    internal bool HasLegend => Marks.Count > 1 && Marks.Any(m => m.Name.Length > 0);

    /// <summary>The chart with more marks.</summary>
    /// <param name="marks">What to add.</param>
    public EngineeringChart With(params ReadOnlySpan<Mark> marks) => this with { Marks = [.. Marks, .. marks] };

    /// <summary>The chart with events.</summary>
    /// <param name="events">What to add.</param>
    public EngineeringChart With(params ReadOnlySpan<EventLine> events) => this with { Events = [.. Events, .. events] };

    /// <summary>The chart with limits.</summary>
    /// <param name="limits">What to add.</param>
    public EngineeringChart With(params ReadOnlySpan<LimitLine> limits) => this with { Limits = [.. Limits, .. limits] };

    /// <summary>The chart with tinted parts.</summary>
    /// <param name="spans">What to add.</param>
    public EngineeringChart With(params ReadOnlySpan<ShadedSpan> spans) => this with { Spans = [.. Spans, .. spans] };

    /// <summary>The chart with remarks.</summary>
    /// <param name="callouts">What to add.</param>
    public EngineeringChart With(params ReadOnlySpan<Callout> callouts) => this with { Callouts = [.. Callouts, .. callouts] };

    /// <summary>All that is wrong with the chart: units that don't agree, columns of different length, nothing to draw.</summary>
    public IReadOnlyList<Finding> Validate() => ChartChecks.Find(this);

    /// <summary>The same chart, or an exception with all findings.</summary>
    /// <exception cref="InvalidDesignException">At least one finding is an error.</exception>
    public EngineeringChart Checked()
    {
        InvalidDesignException.ThrowIfAny($"Chart '{Title}'", Validate());
        return this;
    }

    /// <summary>The figure as JSON, data and layout, as plotly.js takes it. The same chart always gives the same text.</summary>
    /// <exception cref="InvalidDesignException">The chart has an error.</exception>
    public string ToFigureJson() => FigureJson.Write(ToPlotly());

    /// <summary>The chart as a still picture, for pages and front-ends that run no script. A flight path in space is shown from the
    /// side.</summary>
    /// <exception cref="InvalidDesignException">The chart has an error.</exception>
    public string ToSvg() => ChartPicture.Draw(Checked(), PictureForm.Wide);

    /// <summary>The same picture for a screen as narrow as a phone's: letters of the same height, fewer numbers.</summary>
    /// <exception cref="InvalidDesignException">The chart has an error.</exception>
    internal string ToNarrowSvg() => ChartPicture.Draw(Checked(), PictureForm.Narrow);

    /// <summary>Both still pictures as html: a screen too narrow for the letters of the wide one shows the other.</summary>
    /// <exception cref="InvalidDesignException">The chart has an error.</exception>
    internal string ToStillHtml() => $"<div class=\"nk-wide\">{ToSvg()}</div><div class=\"nk-narrow\">{ToNarrowSvg()}</div>";

    /// <summary>A fresh Plotly.NET chart, for whoever wants to add what is missing here.</summary>
    /// <exception cref="InvalidDesignException">The chart has an error.</exception>
    public GenericChart ToPlotly() => FigureBuilder.Build(Checked());

    /// <summary>What the chart says in words: "Thrust: Thrust [N] over Time [s], 0 to 0.15. Thrust: maximum 400 N at 0 s, minimum 0 N at
    /// 0.15 s."</summary>
    public override string ToString() => ChartMessage.Of(this);
}
