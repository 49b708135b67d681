using Microsoft.FSharp.Collections;
using Plotly.NET;

namespace NotebookKit.Charts.Figures;

/// <summary>Turns the description of a chart into a Plotly.NET chart.</summary>
internal static class FigureBuilder
{
    public static GenericChart Build(EngineeringChart chart)
    {
        List<Trace> traces = [];
        var free = 0;
        foreach (var mark in chart.Marks)
        {
            var slot = mark.Slot ?? free;
            if (mark.Slot is null) free++;
            traces.AddRange(TraceBuilder.Build(chart, mark, slot));
        }
        var layout = LayoutBuilder.Build(chart);
        return GenericChart.NewMultiChart(ListModule.OfSeq(traces), layout, ConfigFor(), new DisplayOptions());
    }

    private static Config ConfigFor()
    {
        var config = new Config();
        config.SetProperty("responsive", true);
        config.SetProperty("displaylogo", false);
        return config;
    }
}
