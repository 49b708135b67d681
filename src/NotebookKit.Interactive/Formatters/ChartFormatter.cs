using NotebookKit.Charts;
using NotebookKit.Interactive.Html;

namespace NotebookKit.Interactive.Formatters;

/// <summary>A chart: the figure for whoever can draw it, and plain words.</summary>
internal static class ChartFormatter
{
    public const string FigureMime = "application/vnd.plotly.v1+json";

    public static void Figure(EngineeringChart chart, TextWriter writer) => writer.Write(chart.ToFigureJson());

    public static void Html(EngineeringChart chart, TextWriter writer) => Fragment.Write(writer, "chart", w =>
        w.Write($"<b>{Escape.Text(chart.Title)}</b> <span class=\"nk-note\">{Escape.Text(chart.ToString())}</span>"));

    public static void Plain(EngineeringChart chart, TextWriter writer) => writer.WriteLine(chart.ToString());
}
