namespace NotebookKit.Charts.Figures;

/// <summary>Text inside a figure. Plotly.js reads a few tags in text; ours is always meant literally.</summary>
internal static class FigureText
{
    public static string Plain(string text) => text.Replace("&", "&amp;", StringComparison.Ordinal).Replace("<", "&lt;", StringComparison.Ordinal).Replace(">", "&gt;", StringComparison.Ordinal);
}
