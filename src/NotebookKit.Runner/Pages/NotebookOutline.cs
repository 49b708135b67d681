using Markdig.Syntax;
using NotebookKit.Runner.Notebooks;

namespace NotebookKit.Runner.Pages;

/// <summary>What a notebook is about, read from its text cells.</summary>
/// <param name="Title">Its first heading, or its name.</param>
/// <param name="Summary">Its first paragraph, plain; empty where it has none.</param>
internal sealed record NotebookOutline(string Title, string Summary)
{
    /// <summary>Reads it; a cell that can't be read gives nothing.</summary>
    /// <param name="file">Notebook.</param>
    public static NotebookOutline Of(NotebookFile file)
    {
        var blocks = file.Cells.Where(c => c.Kind == CellKind.Markdown).SelectMany(BlocksOf).ToList();
        return new NotebookOutline(
            blocks.OfType<HeadingBlock>().Select(PlainText.Of).FirstOrDefault(t => t.Length > 0) ?? file.Name,
            blocks.OfType<ParagraphBlock>().Select(PlainText.Of).FirstOrDefault(t => t.Length > 0) ?? "");
    }

    private static IEnumerable<Block> BlocksOf(NotebookCell cell)
    {
        try
        {
            return PageMarkdown.Parse(cell.Source);
        }
        catch (NotebookFormatException)
        {
            return [];
        }
    }
}
