using Markdig.Extensions.Mathematics;
using Markdig.Renderers;
using Markdig.Renderers.Html;
using Markdig.Renderers.Html.Inlines;
using Markdig.Syntax;
using Markdig.Syntax.Inlines;
using NotebookKit.Runner.Notebooks;

namespace NotebookKit.Runner.Pages;

/// <summary>Writes the text cells of one page.</summary>
/// <param name="folder">Folder of the notebook, where its pictures are looked for.</param>
/// <param name="contents">Collects the headings.</param>
/// <param name="equations">Sets the formulas.</param>
/// <param name="hasPage">Whether a notebook of this name has a page.</param>
internal sealed class TextCells(string folder, ContentsList contents, Equations equations, Func<string, bool> hasPage)
{
    /// <summary>A text cell as html.</summary>
    /// <param name="cell">Cell.</param>
    public string ToHtml(NotebookCell cell) => ToHtml(cell.Source, new Pictures(folder, cell.Attachments));

    /// <summary>Markdown as html.</summary>
    /// <param name="source">Markdown.</param>
    /// <param name="pictures">Finds its pictures.</param>
    public string ToHtml(string source, Pictures pictures)
    {
        var document = PageMarkdown.Parse(source);
        foreach (var heading in document.Descendants<HeadingBlock>())
            heading.GetAttributes().Id = contents.Add(heading.Level, PlainText.Of(heading));
        foreach (var link in document.Descendants<LinkInline>().ToList()) Settle(link, pictures);
        foreach (var link in document.Descendants<AutolinkInline>().Where(l => !l.IsEmail && PageLinks.Rewrite(l.Url, hasPage) is null)
            .ToList()) link.ReplaceBy(new LiteralInline(link.Url));

        var allowed = new AllowedHtml(pictures, hasPage);
        using var writer = new StringWriter();
        var renderer = new HtmlRenderer(writer);
        PageMarkdown.Pipeline.Setup(renderer);
        renderer.ObjectRenderers.Replace<HtmlMathInlineRenderer>(new MathInlineRenderer(equations));
        renderer.ObjectRenderers.Replace<HtmlMathBlockRenderer>(new MathBlockRenderer(equations));
        renderer.ObjectRenderers.Replace<HtmlBlockRenderer>(new RawBlockRenderer(allowed));
        renderer.ObjectRenderers.Replace<HtmlInlineRenderer>(new RawInlineRenderer(allowed));
        renderer.Render(document);
        writer.Write(allowed.End());
        // The corner of a table over its row names heads nothing.
        return writer.ToString().Replace("<th></th>", "<td></td>", StringComparison.Ordinal);
    }

    // A page stands alone: pictures move into it, links go to other pages or the web, and what can't be followed from here becomes plain
    // words.
    private void Settle(LinkInline link, Pictures pictures)
    {
        var url = link.Url ?? "";
        if (link.IsImage)
        {
            if (pictures.Find(url) is { } inside) link.Url = inside;
            else Unlink(link, "picture not found: ");
        }
        else if (PageLinks.Rewrite(url, hasPage) is { } target)
        {
            link.Url = target;
        }
        else
        {
            Unlink(link, "");
        }
    }

    private static void Unlink(LinkInline link, string before)
    {
        var words = new ContainerInline();
        if (before.Length > 0) words.AppendChild(new LiteralInline(before));
        while (link.FirstChild is { } child)
        {
            child.Remove();
            words.AppendChild(child);
        }

        link.ReplaceBy(words);
    }
}
