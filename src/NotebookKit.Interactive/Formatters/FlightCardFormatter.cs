using NotebookKit.Flight;
using NotebookKit.Interactive.Html;

namespace NotebookKit.Interactive.Formatters;

/// <summary>The page for the safety officer, on one sheet of paper: numbers, what forbids or warns, what is ticked off, cautions, a line to sign.</summary>
internal static class FlightCardFormatter
{
    public static void Html(FlightCard card, TextWriter writer) => Fragment.Write(writer, "card", w =>
    {
        w.Write($"<h4>{Escape.Text(card.Title)}</h4>");
        LinesFormatter.Html(card.Lines, w);
        FindingFormatter.Html(card.Findings, w);
        w.Write("<b>Checklist</b><ul class=\"nk-ticks\">");
        foreach (var item in card.Checklist) w.Write($"<li>{Escape.Text(item)}</li>");
        w.Write("</ul>");
        CautionFormatter.Html(card.Cautions, w);
        w.Write("<p class=\"nk-sign\">Range safety officer, date and time:</p>");
        w.Write($"<details><summary>Model: {Escape.Text(card.Model.Name)}</summary>");
        ModelCardFormatter.Html(card.Model, w);
        w.Write("</details>");
    });

    public static void Plain(FlightCard card, TextWriter writer)
    {
        ResultFormatter.Plain(card, writer);
        writer.WriteLine("Checklist");
        foreach (var item in card.Checklist) writer.WriteLine($"  [ ] {item}");
    }
}
