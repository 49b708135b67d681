using Microsoft.FSharp.Collections;
using NotebookKit.Charts.Marks;
using Plotly.NET;

namespace NotebookKit.Charts.Figures;

/// <summary>Turns the description of a chart into a Plotly.NET chart.</summary>
internal static class FigureBuilder
{
    public static GenericChart Build(EngineeringChart chart)
    {
        chart = chart with { Marks = [.. chart.Marks.Select(m => m is Points points ? points.AtMost(TraceBuilder.MostPoints) : m)] };
        var words = LiveWords.Of(chart);
        List<Trace> traces = [];
        var free = 0;
        foreach (var mark in chart.Marks)
        {
            var slot = mark.Slot ?? free;
            if (mark.Slot is null) free++;
            traces.AddRange(TraceBuilder.Build(chart, mark, slot, words));
        }
        var layout = LayoutBuilder.Build(chart, words);
        return GenericChart.NewMultiChart(ListModule.OfSeq(traces), layout, ConfigFor(), new DisplayOptions());
    }

    // A chart of ours is read, zoomed and saved; the other tools would only cover its title.
    private static readonly string[] UnusedButtons = ["select2d", "lasso2d", "zoomIn2d", "zoomOut2d", "autoScale2d"];

    private static Config ConfigFor()
    {
        var config = new Config();
        config.SetProperty("responsive", true);
        config.SetProperty("displaylogo", false);
        config.SetProperty("modeBarButtonsToRemove", UnusedButtons);
        return config;
    }
}
