namespace NotebookKit.Interactive.Html;

/// <summary>The frame around every output of ours: one element, one class, the style sheet in it.</summary>
internal static class Fragment
{
    public static void Write(TextWriter writer, string kind, Action<TextWriter> content, string of = "")
    {
        writer.Write($"<div class=\"nk-out nk-{kind}\"{(of.Length > 0 ? $" data-of=\"{of}\"" : "")}>");
        writer.Write(Stylesheet.Element);
        content(writer);
        writer.Write("</div>");
    }
}
