using Markdig.Renderers;
using Markdig.Renderers.Html;
using Markdig.Syntax;
using Markdig.Syntax.Inlines;

namespace NotebookKit.Runner.Pages;

/// <summary>Writes blocks of raw html as a page may have them.</summary>
/// <param name="allowed">What it may have.</param>
internal sealed class RawBlockRenderer(AllowedHtml allowed) : HtmlObjectRenderer<HtmlBlock>
{
    /// <inheritdoc />
    protected override void Write(HtmlRenderer renderer, HtmlBlock obj) => renderer.Write(allowed.Of(obj.Lines.ToString())).Write("\n");
}

/// <summary>Writes tags inside a line as a page may have them.</summary>
/// <param name="allowed">What it may have.</param>
internal sealed class RawInlineRenderer(AllowedHtml allowed) : HtmlObjectRenderer<HtmlInline>
{
    /// <inheritdoc />
    protected override void Write(HtmlRenderer renderer, HtmlInline obj) => renderer.Write(allowed.Of(obj.Tag));
}
