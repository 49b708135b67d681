using System.Globalization;
using System.Text;
using System.Text.Json.Nodes;
using NotebookKit.Interactive;
using NotebookKit.Runner.Engine;
using NotebookKit.Runner.Notebooks;

namespace NotebookKit.Runner.Pages;

/// <summary>Writes what the code cells of one page show.</summary>
/// <param name="text">Writes Markdown.</param>
/// <param name="equations">Sets the formulas.</param>
internal sealed class OutputCells(TextCells text, Equations equations)
{
    private static readonly string[] PictureTypes = ["image/png", "image/jpeg"];
    private const int LongestStream = 100_000;
    private readonly PageCautions _cautions = new();
    private readonly PageFindings _findings = new();
    private int _figures;

    /// <summary>Whether any figure was written, so that the page needs the chart library.</summary>
    public bool HasFigures => _figures > 0;

    /// <summary>Where card, plans and record stand, and the page's picture.</summary>
    public PagePlaces Places { get; } = new();

    /// <summary>Everything a cell shows, as html; empty where it shows nothing.</summary>
    /// <param name="cell">Code cell that has run.</param>
    public string ToHtml(NotebookCell cell)
    {
        var html = new StringBuilder();
        foreach (var output in cell.Outputs.OfType<JsonObject>())
        {
            html.Append(NotebookCell.TextOf(output["output_type"]) switch
            {
                "stream" => Stream(output),
                "error" => Error(output, cell.MayFail),
                _ => output["data"] is JsonObject data ? Data(data) : "",
            });
        }

        return html.Length == 0 ? "" : $"<div class=\"outputs\">{html}</div>\n";
    }

    private static string Stream(JsonObject output)
    {
        var name = NotebookCell.TextOf(output["name"]) == "stderr" ? "stderr" : "stdout";
        var text = NotebookCell.TextOf(output["text"]);
        var rest = text.Length > LongestStream ? "\n(cut here: the rest is in the executed notebook)" : "";
        return $"<pre class=\"{name}\">{Escape.Text(text[..Math.Min(text.Length, LongestStream)] + rest)}</pre>";
    }

    private static string Error(JsonObject output, bool intended)
    {
        var trace = string.Join('\n', output["traceback"]?.AsArray().Select(NotebookCell.TextOf).Skip(1) ?? []);
        // Who reads a lesson gets the sentence; where in the code it was thrown helps only with an error that nobody meant.
        var heading = intended ? "An error, shown on purpose" : "Error";
        return $"<div class=\"failure{(intended ? " intended" : "")}\" role=\"note\"><p><strong>{heading}</strong> "
            + $"{Escape.Text(NotebookCell.TextOf(output["evalue"]))}</p>"
            + (trace.Length > 0 && !intended ? $"<pre>{Escape.Text(trace)}</pre>" : "") + "</div>";
    }

    // The richest form that this page can draw by itself wins.
    private string Data(JsonObject data)
    {
        if (data[MediaTypes.Figure] is JsonObject figure) return Figure(figure, data);
        if (data[MediaTypes.Html] is { } html) return Shown(NotebookCell.TextOf(html), PlainOf(data));
        if (data["image/svg+xml"] is { } drawing) return $"<div class=\"shown drawing\">{NotebookCell.TextOf(drawing)}</div>";
        foreach (var type in PictureTypes)
        {
            if (data[type] is { } picture)
                return $"<div class=\"shown\"><img alt=\"{Escape.Text(PlainOf(data))}\" "
                    + $"src=\"data:{type};base64,{Escape.Text(NotebookCell.TextOf(picture).ReplaceLineEndings(""))}\"></div>";
        }

        if (data["text/latex"] is { } latex) return $"<div "
            + $"class=\"shown\">{equations.ToHtml(NotebookCell.TextOf(latex).Trim('$', ' ', '\n'), display: true)}</div>";
        if (data["text/markdown"] is { } markdown) return $"<div "
            + $"class=\"shown\">{text.ToHtml(NotebookCell.TextOf(markdown), new Pictures(".", null))}</div>";
        return PlainOf(data) is { Length: > 0 } plain ? $"<pre>{Escape.Text(plain)}</pre>" : "";
    }

    // The head of the page holds our style rules once, in the form for a page that sets equations.
    private string Shown(string html, string words)
    {
        var bare = Titled(html.Replace(Stylesheet.Element, "", StringComparison.Ordinal));
        Places.Look(bare, words);
        return $"<div class=\"shown\"{Places.Mark(bare)}>{equations.SetIn(_findings.Settle(_cautions.Settle(bare)))}</div>";
    }

    // In a front-end an output stands under no heading of ours; on a page it stands under those of the text.
    private static string Titled(string html) => html.Replace("<h4>", "<h3 class=\"nk-title\">", StringComparison.Ordinal)
        .Replace("</h4>", "</h3>", StringComparison.Ordinal);

    private string Figure(JsonObject figure, JsonObject data)
    {
        var id = string.Create(CultureInfo.InvariantCulture, $"figure-{++_figures}");
        if (data[MediaTypes.Html] is { } still) Places.Look(NotebookCell.TextOf(still), PlainOf(data));
        var shown = (JsonObject)figure.DeepClone();
        return $"<figure class=\"chart\">{FigureCaption.TakeFrom(shown)}"
            + $"<div id=\"{id}\" class=\"plot\" role=\"img\" aria-label=\"{Escape.Text(PlainOf(data))}\"></div>"
            + $"<noscript><p>{Escape.Text(PlainOf(data))}</p></noscript>"
            + "<script type=\"application/json\" class=\"chart-data\" "
                + $"data-for=\"{id}\">{Escape.ScriptJson(shown.ToJsonString())}</script></figure>";
    }

    private static string PlainOf(JsonObject data) => NotebookCell.TextOf(data[MediaTypes.Text]);
}
