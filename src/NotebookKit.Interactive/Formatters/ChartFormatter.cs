using NotebookKit.Charts;
using NotebookKit.Charts.Drawings;
using NotebookKit.Interactive.Html;

namespace NotebookKit.Interactive.Formatters;

/// <summary>Charts and drawings: the figure for whoever can make it live, a still picture for every other front-end, and words.</summary>
internal static class ChartFormatter
{
    public const string FigureMime = "application/vnd.plotly.v1+json";

    public const string NeedsOurs = "Live charts need NotebookKit's own kernel.";

    public static void Figure(EngineeringChart chart, TextWriter writer) => writer.Write(chart.ToFigureJson());

    // The pictures escape their own text and need no network and no script.
    public static void Html(EngineeringChart chart, TextWriter writer) => Fragment.Write(writer, "chart",
        w => w.Write(chart.ToStillHtml()));

    public static void Plain(EngineeringChart chart, TextWriter writer) => writer.WriteLine(chart.ToString());

    // For a kernel that isn't ours.
    public static void StillHtml(EngineeringChart chart, TextWriter writer) => Fragment.Write(writer, "chart", w =>
    {
        w.Write(chart.ToStillHtml());
        w.Write($"<div class=\"nk-note\">{Escape.Text(NeedsOurs)}</div>");
    });

    public static void StillPlain(EngineeringChart chart, TextWriter writer)
    {
        writer.WriteLine(chart.ToString());
        writer.WriteLine(NeedsOurs);
    }

    public static void Html(Drawing drawing, TextWriter writer) => Fragment.Write(writer, "drawing", w => w.Write(SvgOf(drawing)));

    // A screen too narrow for the letters of the wide form shows the narrow one; paper always shows the wide one.
    private static string SvgOf(Drawing drawing) => drawing.Narrow.Length == 0 ? drawing.Svg
        : $"<div class=\"nk-wide\">{drawing.Svg}</div><div class=\"nk-narrow\">{drawing.Narrow}</div>";

    public static void Plain(Drawing drawing, TextWriter writer) => writer.WriteLine(drawing.ToString());
}
