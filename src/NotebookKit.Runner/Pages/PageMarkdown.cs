using Markdig;
using Markdig.Syntax;
using NotebookKit.Runner.Notebooks;

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
    /// <exception cref="NotebookFormatException">It is nested too deeply for a page.</exception>
    public static MarkdownDocument Parse(string source)
    {
        try
        {
            return Markdown.Parse(source, Reader);
        }
        catch (ArgumentException)
        {
            throw new NotebookFormatException("a text cell is nested too deeply; take out some of its quote marks, brackets or lists");
        }
    }
}
