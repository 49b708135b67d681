using Markdig;
using Markdig.Syntax;

namespace NotebookKit.Runner.Pages;

/// <summary>The Markdown our text cells are written in: CommonMark, pipe tables, formulas.</summary>
internal static class PageMarkdown
{
    private static readonly MarkdownPipeline Reader = new
        MarkdownPipelineBuilder().UsePipeTables().UseMathematics().UseEmphasisExtras().Build();

    /// <summary>The pipeline, for rendering.</summary>
    public static MarkdownPipeline Pipeline => Reader;

    /// <summary>Reads a text cell.</summary>
    /// <param name="source">Its Markdown.</param>
    public static MarkdownDocument Parse(string source) => Markdown.Parse(source, Reader);
}
