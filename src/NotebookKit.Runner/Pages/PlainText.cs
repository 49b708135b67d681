using System.Text;
using Markdig.Extensions.Mathematics;
using Markdig.Syntax;
using Markdig.Syntax.Inlines;

namespace NotebookKit.Runner.Pages;

/// <summary>The words of a piece of Markdown, without its marks.</summary>
internal static class PlainText
{
    /// <summary>The words of a heading or paragraph.</summary>
    /// <param name="block">Block.</param>
    public static string Of(LeafBlock block)
    {
        var text = new StringBuilder();
        foreach (var part in block.Inline?.Descendants() ?? [])
        {
            if (part is Inline { Parent: LinkInline { IsImage: true } }) continue;
            switch (part)
            {
                case LiteralInline literal: text.Append(literal.Content); break;
                case CodeInline code: text.Append(code.Content); break;
                case MathInline math: text.Append(math.Content); break;
                case LineBreakInline: text.Append(' '); break;
                case HtmlEntityInline entity: text.Append(entity.Transcoded); break;
            }
        }

        return text.ToString().Trim();
    }
}
