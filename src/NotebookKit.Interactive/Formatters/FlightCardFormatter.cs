using NotebookKit.Clearance.Cards;
using NotebookKit.Interactive.Html;
using NotebookKit.Record.Givens;

namespace NotebookKit.Interactive.Formatters;

/// <summary>The page for the range safety officer, on one sheet of paper: verdict and reasons, numbers, what was shown, what is ticked off,
/// cautions, a line to sign.</summary>
internal static class FlightCardFormatter
{
    public static void Html(IFlightCard card, GivenOverrides givens, TextWriter writer) => Fragment.Write(writer, "card", w =>
    {
        w.Write($"<h4>{Escape.Text(card.Title)}</h4>");
        LinesFormatter.Html(card.Lines.Take(1), w);
        if (Changed(givens) is { Length: > 0 } changed)
            w.Write($"<div class=\"nk-finding nk-warning\"><b>Changed givens</b> {Escape.Text(changed)}</div>");
        w.Write("<div class=\"nk-reasons\">");
        FindingFormatter.Html(card.Findings, w);
        w.Write("</div>");
        LinesFormatter.Html(card.Lines.Skip(1), w);
        w.Write("<div class=\"nk-evidence\"><b>What stands behind this card</b><ul>");
        foreach (var item in card.Shown)
            w.Write($"<li{(item.IsShown ? "" : " class=\"nk-missing\"")}>{(item.IsShown ? "" :
            "<b>not shown</b> ")}{Escape.Text(item.Name)}: {Escape.Text(item.What)}</li>");
        w.Write("</ul></div>");
        w.Write("<b>Checklist</b><ul class=\"nk-ticks\">");
        foreach (var item in card.Checklist) w.Write($"<li>{Escape.Text(item)}</li>");
        w.Write("</ul>");
        CautionFormatter.Html(card.Cautions, w);
        w.Write("<p class=\"nk-sign\">Range safety officer, date and time:</p>");
        w.Write($"<details><summary>Model: {Escape.Text(card.Model.Name)}</summary>");
        ModelCardFormatter.Html(card.Model, w);
        w.Write("</details>");
    });

    // Those that the design took over: another notebook's say nothing here.
    internal static string Changed(GivenOverrides givens) =>
        string.Join(" ", givens.Names.Except(givens.Untaken, StringComparer.OrdinalIgnoreCase)
            .Select(n => $"{n} was set to {givens.TextOf(n)} for this run."));

    public static void Plain(IFlightCard card, GivenOverrides givens, TextWriter writer)
    {
        ResultFormatter.Plain(card, writer);
        if (Changed(givens) is { Length: > 0 } changed) writer.WriteLine($"Changed givens: {changed}");
        writer.WriteLine("What stands behind this card");
        foreach (var item in card.Shown) writer.WriteLine($"  {(item.IsShown ? "shown" : "NOT SHOWN")}: {item.Name}: {item.What}");
        writer.WriteLine("Checklist");
        foreach (var item in card.Checklist) writer.WriteLine($"  [ ] {item}");
    }
}
