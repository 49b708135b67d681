using System.Net;
using System.Text;
using NotebookKit.Charts.Drawings;
using NotebookKit.Provenance;
using NotebookKit.Sheets;

namespace NotebookKit.Runner.Sheets;

/// <summary>Writes one sheet as a page of its own: no script, no network, the same on A4 and letter.</summary>
internal static class SheetPage
{
    /// <summary>Writes a sheet.</summary>
    /// <param name="content">What stands on it.</param>
    /// <param name="links">The other sheets beside it: file and name.</param>
    /// <param name="figures">Drawings that belong to it, behind its sections.</param>
    public static string Write(SheetContent content, IReadOnlyList<(string File, string Name)> links, params IReadOnlyList<Drawing> figures)
    {
        var html = new StringBuilder();
        html.Append($"<h1>{Text(content.Title)}</h1><p>{Text(content.Purpose)}</p>");
        if (content.Verdict.Length > 0)
            html.Append($"<div class=\"verdict{(content.IsInFavour ? "" : " no")}\"><b>{Text(content.Verdict)}</b>"
                + $"{Text(Sentence(content.VerdictNote))}</div>");
        Cautions(html, content.Cautions);
        foreach (var finding in content.Findings)
            html.Append($"<div class=\"finding\"><b>{(finding.Severity == FindingSeverity.Error ? "Forbids" : "Warning")}.</b> "
                + $"{Text(Sentence(finding.Message))}</div>");
        foreach (var section in content.Sections) Section(html, section);
        foreach (var figure in figures) html.Append($"<div class=\"figure\">{figure.Svg}</div>");
        if (content.Signatures.Count > 0)
            html.Append($"<div class=\"signatures\">{string.Concat(content.Signatures.Select(s => $"<div>{Text(s)}:</div>"))}</div>");
        return Frame(content.Title, links, html.ToString(), "");
    }

    /// <summary>The frame of every sheet.</summary>
    /// <param name="title">Title of the page.</param>
    /// <param name="links">The other sheets beside it.</param>
    /// <param name="body">What stands on it.</param>
    /// <param name="kind">Class of the body; may be empty.</param>
    public static string Frame(string title, IReadOnlyList<(string File, string Name)> links, string body, string kind) =>
        $"""
        <!DOCTYPE html>
        <html lang="en"><head><meta charset="utf-8"><meta name="viewport" content="width=device-width,initial-scale=1">
        <meta http-equiv="Content-Security-Policy" content="default-src 'none'; style-src 'unsafe-inline'; img-src data:">
        <title>{Text(title)}</title><style>
        {SheetResources.Style}</style></head>
        <body class="{kind}"><nav aria-label="Sheets">{string.Concat(links.Select(l => $"<a href=\"{Text(l.File)}\">{Text(l.Name)}</a>"))}</nav>
        <main>{body}</main>
        {(kind.Length > 0 ? "" : Foot)}</body></html>

        """;

    /// <summary>The last line of a sheet.</summary>
    public const string Foot = "<p class=\"foot\">Engineering estimates for education and planning, not a certificate; no warranty. "
        + "Written by NotebookKit.</p>";

    /// <summary>Cautions in full.</summary>
    public static void Cautions(StringBuilder html, IReadOnlyList<Caution> cautions)
    {
        if (cautions.Count == 0) return;
        html.Append("<div class=\"cautions\">");
        foreach (var caution in cautions) html.Append($"<p><b>{Text(caution.Topic)}.</b> {Text(caution.Text)}</p>");
        html.Append("</div>");
    }

    /// <summary>One section.</summary>
    public static void Section(StringBuilder html, SheetSection section)
    {
        html.Append($"<section><h2>{Text(section.Heading)}</h2>");
        if (section.Text.Length > 0) html.Append($"<p>{Text(section.Text)}</p>");
        if (section.Facts.Count > 0 && section.Table is null) Facts(html, section.Facts);
        if (section.Steps.Count > 0)
            html.Append($"<ol class=\"steps\">{string.Concat(section.Steps.Select(s => $"<li>{WithBlanks(s)}</li>"))}</ol>");
        if (section.Table is { } table) Table(html, table);
        if (section.Facts.Count > 0 && section.Table is not null) Facts(html, section.Facts);
        if (section.Rules.Count > 0)
            html.Append($"<ul class=\"rules\">{string.Concat(section.Rules.Select(r => $"<li>{WithBlanks(r)}</li>"))}</ul>");
        if (section.Blanks.Count > 0)
            html.Append($"<div class=\"boxes\">{string.Concat(section.Blanks.Select(b => $"<div>{Text(Sentence(b.Name))}"
                + $"<span>{Text(b.Unit)}</span></div>"))}</div>");
        html.Append("</section>");
    }

    private static void Facts(StringBuilder html, IReadOnlyList<ResultLine> facts)
    {
        html.Append("<table class=\"facts\"><tbody>");
        foreach (var fact in facts)
            html.Append($"<tr><th scope=\"row\">{Text(Sentence(fact.Name))}</th><td>{Text(fact.Value)}</td>"
                + $"<td>{Text(fact.Note)}</td></tr>");
        html.Append("</tbody></table>");
    }

    private static void Table(StringBuilder html, SheetTable table)
    {
        html.Append("<table class=\"grid\"><thead><tr>"
            + $"{string.Concat(table.Headings.Select(h => $"<th scope=\"col\">{Text(h)}</th>"))}</tr>"
            + "</thead><tbody>");
        foreach (var row in table.Rows)
        {
            html.Append("<tr>");
            for (var i = 0; i < row.Count; i++) html.Append(Cell(row[i], table.Headings[i]));
            html.Append("</tr>");
        }

        html.Append("</tbody></table>");
    }

    private static string Cell(string text, string heading) => text switch
    {
        SheetTable.Tick => "<td class=\"tick\"><span class=\"tickbox\" role=\"img\" aria-label=\"box to tick\"></span></td>",
        SheetTable.Blank => $"<td class=\"write\" data-label=\"{Text(heading)}\"></td>",
        { Length: < 12 } => $"<td class=\"short\" data-label=\"{Text(heading)}\">{Text(text)}</td>",
        _ => $"<td data-label=\"{Text(heading)}\">{Text(text)}</td>",
    };

    private static string WithBlanks(string text) => Text(text).Replace(SheetTable.Blank, "<span class=\"blank\"></span>",
        StringComparison.Ordinal);

    private static string Sentence(string text) => text.Length == 0 ? text : char.ToUpperInvariant(text[0]) + text[1..];

    private static string Text(string text) => WebUtility.HtmlEncode(text);
}
