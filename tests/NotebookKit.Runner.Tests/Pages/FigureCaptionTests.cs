using System.Text.Json.Nodes;
using NotebookKit.Charts.Engineering;
using NotebookKit.Quantities;
using NotebookKit.Runner.Pages;

namespace NotebookKit.Runner.Tests.Pages;

public sealed class FigureCaptionTests
{
    [Fact]
    public void Title_and_remark_leave_the_figure_and_stand_over_it_as_text()
    {
        var chart = LineChart.Draw("Speed & <height>", new Series("Time", "s", [0, 1]), new Series("Speed", "m/s", [0, 2])) with
        {
            Remark = "drag < 0.4",
        };
        var figure = JsonNode.Parse(chart.ToFigureJson())!.AsObject();
        Assert.Equal("<figcaption><b>Speed &amp; &lt;height&gt;</b><span>drag &lt; 0.4</span></figcaption>",
            FigureCaption.TakeFrom(figure));
        Assert.Null(figure["layout"]!["title"]);
        Assert.Empty(figure["layout"]!["annotations"]!.AsArray());
    }
}
