using NotebookKit.Provenance;

namespace NotebookKit.Interactive.Formatters;

/// <summary>What a result rests on.</summary>
internal static class ModelCardFormatter
{
    public static void Html(ModelCard card, TextWriter writer)
    {
        List("Assumes", card.Assumptions, writer);
        if (card.ValidRange.Length > 0) writer.Write($"<div><b>Holds for.</b> {Escape.Text(card.ValidRange)}</div>");
        List("Sources", [.. card.Sources.Select(s => s.ToString())], writer);
    }

    public static void Plain(ModelCard card, TextWriter writer)
    {
        writer.WriteLine(card.Name);
        foreach (var assumption in card.Assumptions) writer.WriteLine($"  assumes: {assumption}");
        writer.WriteLine($"  holds for: {card.ValidRange}");
        foreach (var source in card.Sources) writer.WriteLine($"  source: {source}");
    }

    private static void List(string heading, IReadOnlyList<string> items, TextWriter writer)
    {
        if (items.Count == 0) return;
        writer.Write($"<div><b>{heading}.</b></div><ul>");
        foreach (var item in items) writer.Write($"<li>{Escape.Text(item)}</li>");
        writer.Write("</ul>");
    }
}
