using System.Text.Json;
using NotebookKit.Charts.Tests.Browser;

namespace NotebookKit.Charts.Tests;

[Trait("Length", "long")]
public sealed class FigureInBrowserTests
{
    // The drawing library itself is the judge: it draws every figure, offline, with the titles we gave.
    [SkippableFact]
    public void Every_figure_is_drawn_with_its_axis_titles()
    {
        Skip.If(HeadlessBrowser.WhyNot.Length > 0, HeadlessBrowser.WhyNot);
        var flat = Gallery.All.Where(p => p.Value().Up is null).ToDictionary(p => p.Key, p => p.Value());
        var places = string.Concat(flat.Keys.Select(k => $"<div id='{k}'></div>"));
        var figures = string.Join(',', flat.Select(p => $"\"{p.Key}\":{p.Value.ToFigureJson()}"));
        var seen = HeadlessBrowser.Run($$"""
            <!DOCTYPE html><meta charset="utf-8"><body>{{places}}<script>{{PlotlyScript.Wrapped}}</script><script>
            const figures = {{{figures}}}, seen = {};
            Promise.all(Object.keys(figures).map(k => Plotly.newPlot(k, figures[k].data, figures[k].layout, figures[k].config).then(g => {
              seen[k] = [".xtitle", ".ytitle", ".y2title", ".cbtitle text"].map(s => (g.querySelector(s) || {}).textContent || "");
            }))).then(() => { const p = document.createElement("pre"); p.id = "result"; p.textContent = JSON.stringify(seen); document.body.append(p); });
            </script>
            """);
        var titles = JsonSerializer.Deserialize<Dictionary<string, string[]>>(seen)!;
        Assert.Equal(flat.Keys.Order(), titles.Keys.Order());
        foreach (var (name, chart) in flat)
        {
            Assert.Equal(chart.X.Title, titles[name][0]);
            Assert.Equal(chart.Y.Title, titles[name][1]);
            Assert.Equal(chart.Right?.Title ?? "", titles[name][2]);
            if (chart.Marks.OfType<NotebookKit.Charts.Marks.Field>().FirstOrDefault() is { } field) Assert.Equal(field.ScaleTitle,
                titles[name][3]);
        }
    }
}
