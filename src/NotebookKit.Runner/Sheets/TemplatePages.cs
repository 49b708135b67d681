using System.Net;
using System.Text;
using NotebookKit.Charts.Drawings;
using NotebookKit.Charts.Results;
using NotebookKit.Sheets;

namespace NotebookKit.Runner.Sheets;

/// <summary>Writes the templates of a design: what there is, then the pages at full size.</summary>
internal static class TemplatePages
{
    /// <summary>Writes them.</summary>
    /// <param name="title">Title of the page.</param>
    /// <param name="sets">The templates, stage by stage.</param>
    /// <param name="links">The other sheets beside it.</param>
    public static string Write(string title, IReadOnlyList<TemplateSheet> sets, IReadOnlyList<(string File, string Name)> links)
    {
        var html = new StringBuilder();
        html.Append($"<h1>{WebUtility.HtmlEncode(title)}</h1><p>Print at 100 %, \"fit to page\" switched off, on A4 or US letter. Measure "
            + "the ruler before the first cut: 100 mm must be 100 mm. Pieces of one pattern overlap by 10 mm: lay each on the dashed "
            + "line of the piece before it. On a screen the patterns are smaller than full size.</p>");
        SheetPage.Cautions(html, sets[0].Cautions);
        foreach (var set in sets)
        {
            SheetPage.Section(html, new(set.Title) { Facts = set.Lines, Rules = set.LeftOut });
        }

        html.Append(SheetPage.Foot);
        // A cutting plan has a page to itself: its letters are read beside the saw.
        foreach (var nest in sets.SelectMany(s => s.Nests))
        {
            for (var sheet = 1; sheet <= nest.Sheets; sheet++)
                html.Append($"<div class=\"figure plan begins-page\">{nest.Draw(sheet).Svg}</div>");
        }

        var pages = sets.SelectMany(TemplateDrawing.Pages).ToList();
        for (var i = 0; i < pages.Count; i++)
            html.Append($"<section class=\"page{(i == 0 ? " begins-page" : "")}\">{pages[i].Svg}</section>");
        return SheetPage.Frame(title, links, html.ToString(), "templates");
    }
}
