using Markdig.Extensions.Mathematics;
using Markdig.Renderers;
using Markdig.Renderers.Html;

namespace NotebookKit.Runner.Pages;

/// <summary>Writes formulas in running text as MathML.</summary>
/// <param name="equations">Sets them.</param>
internal sealed class MathInlineRenderer(Equations equations) : HtmlObjectRenderer<MathInline>
{
    /// <inheritdoc />
    protected override void Write(HtmlRenderer renderer, MathInline obj) =>
        renderer.Write(equations.ToHtml(obj.Content.ToString(), display: obj.DelimiterCount == 2));
}

/// <summary>Writes formulas on lines of their own as MathML.</summary>
/// <param name="equations">Sets them.</param>
internal sealed class MathBlockRenderer(Equations equations) : HtmlObjectRenderer<MathBlock>
{
    /// <inheritdoc />
    protected override void Write(HtmlRenderer renderer, MathBlock obj)
    {
        renderer.EnsureLine();
        renderer.WriteLine($"<div class=\"equation\">{equations.ToHtml(obj.Lines.ToString(), display: true)}</div>");
    }
}
