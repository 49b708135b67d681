using NotebookKit.Provenance;

namespace NotebookKit.Interactive.Formatters;

/// <summary>Cautions as one box.</summary>
internal static class CautionFormatter
{
    public static void Html(IEnumerable<Caution> cautions, TextWriter writer)
    {
        var distinct = cautions.Distinct().ToList();
        if (distinct.Count == 0) return;
        writer.Write("<div class=\"nk-cautions\"><b>Cautions</b><ul>");
        foreach (var caution in distinct) writer.Write($"<li><b>{Escape.Text(caution.Topic)}.</b> {Escape.Text(caution.Text)}</li>");
        writer.Write("</ul></div>");
    }

    public static void Plain(IEnumerable<Caution> cautions, TextWriter writer)
    {
        foreach (var caution in cautions.Distinct()) writer.WriteLine($"CAUTION {caution}");
    }
}
