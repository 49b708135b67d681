using NotebookKit.Interactive.Live;

namespace NotebookKit.Interactive.Formatters;

/// <summary>A live explorer: its controls for a front-end that has them, the computed explorer for one that hasn't.</summary>
internal static class LiveExplorerFormatter
{
    public const string ViewMime = "application/vnd.jupyter.widget-view+json";

    public static void View(LiveExplorer live, TextWriter writer) =>
        writer.Write($$"""{"version_major":2,"version_minor":0,"model_id":"{{live.Id}}"}""");

    public static void Html(LiveExplorer live, TextWriter writer) => ExplorerFormatter.Html(live.Explorer, writer);

    public static void Plain(LiveExplorer live, TextWriter writer) => ExplorerFormatter.Plain(live.Explorer, writer);
}
