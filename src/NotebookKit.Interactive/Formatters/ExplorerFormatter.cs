using NotebookKit.Charts.Explorers;
using NotebookKit.Interactive.Html;

namespace NotebookKit.Interactive.Formatters;

/// <summary>An explorer with its script, so that it answers in any front-end that runs scripts; elsewhere a still picture.</summary>
internal static class ExplorerFormatter
{
    public static void Html(Explorer explorer, TextWriter writer) => Fragment.Write(writer, "explore", w =>
    {
        w.Write(explorer.ToHtml());
        CautionFormatter.Html(explorer.Cautions, w);
        w.Write("<script>");
        w.Write(ExplorerScript.Text);
        w.Write("</script>");
    });

    public static void Plain(Explorer explorer, TextWriter writer)
    {
        writer.WriteLine(explorer.ToString());
        CautionFormatter.Plain(explorer.Cautions, writer);
    }
}
