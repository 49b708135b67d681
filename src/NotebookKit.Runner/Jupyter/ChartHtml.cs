using System.Security.Cryptography;
using System.Text;
using System.Text.Json.Nodes;
using NotebookKit.Runner.Engine;
using NotebookKit.Runner.Notebooks;

namespace NotebookKit.Runner.Jupyter;

/// <summary>
/// Html that draws a figure in a front-end that has no drawing of its own for figures. The chart library is asked of the notebook server
/// itself, where it lies beside the kernelspec; nothing comes from the network. Where that fails, the plain words stay.
/// </summary>
internal static class ChartHtml
{
    /// <summary>File beside the kernelspec that holds the chart library.</summary>
    public const string LibraryFile = "charts.js";

    /// <summary>The bundle, with html that draws where it holds a figure.</summary>
    /// <param name="data">Media types of an output; changed in place.</param>
    public static JsonObject WithDrawing(JsonObject data)
    {
        if (data[MediaTypes.Figure] is not JsonObject figure) return data;
        var json = figure.ToJsonString();
        var id = "chart-" + Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(json)))[..12];
        data[MediaTypes.Html] =
            $"<div class=\"{id}\">{NotebookCell.TextOf(data[MediaTypes.Html])}</div><script>{Script(id, json)}</script>";
        return data;
    }

    // The server's base address stands in the page: as data of the body in the classic front-end, as a JSON block in the newer ones.
    private static string Script(string id, string json) => $$"""
        (function () {
          const figure = {{Escape.ScriptJson(json)}};
          function base() {
            const classic = document.body.dataset.baseUrl;
            if (classic) return classic;
            const config = document.getElementById("jupyter-config-data");
            try { return JSON.parse(config.textContent).baseUrl || "/"; } catch { return "/"; }
          }
          function library() {
            if (window.Plotly) return Promise.resolve();
            if (!window.notebookKitCharts) window.notebookKitCharts = new Promise(function (done, failed) {
              const script = document.createElement("script");
              script.src = base() + "kernelspecs/{{KernelInfo.Name}}/{{LibraryFile}}";
              script.onload = done;
              script.onerror = failed;
              document.head.appendChild(script);
            });
            return window.notebookKitCharts;
          }
          library().then(function () {
            for (const place of document.querySelectorAll(".{{id}}")) {
              if (place.dataset.drawn) continue;
              place.dataset.drawn = "yes";
              place.textContent = "";
              Plotly.newPlot(place, structuredClone(figure.data), structuredClone(figure.layout), { responsive: true, displaylogo: false }).then(function (chart) {
                if (figure.frames && figure.frames.length) return Plotly.addFrames(chart, structuredClone(figure.frames));
              });
            }
          }, function () { });
        })();
        """;
}
