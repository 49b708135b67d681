namespace NotebookKit.Runner.Notebooks;

/// <summary>How much there is to read and how long its cells are: what decides whether a lesson can be followed.</summary>
/// <param name="CodeCells">Code cells that hold code.</param>
/// <param name="TextCells">Text cells.</param>
/// <param name="MedianLines">Median of the code cells' lines [lines], blank ones not counted.</param>
/// <param name="LongestLines">Lines of the longest code cell [lines], blank ones not counted.</param>
/// <param name="TextLetters">Letters and digits in the text cells.</param>
/// <param name="CodeLetters">Letters and digits in the code cells.</param>
internal sealed record LessonSize(int CodeCells, int TextCells, double MedianLines, int LongestLines, int TextLetters, int CodeLetters)
{
    /// <summary>Measures a notebook.</summary>
    /// <param name="file">Notebook.</param>
    public static LessonSize Of(NotebookFile file)
    {
        var lines = file.CodeCells.Select(c => c.Source.Split('\n').Count(l => !string.IsNullOrWhiteSpace(l))).Order().ToList();
        var text = file.Cells.Where(c => c.Kind == CellKind.Markdown).ToList();
        return new LessonSize(
            lines.Count,
            text.Count,
            lines.Count == 0 ? 0 : (lines[(lines.Count - 1) / 2] + lines[lines.Count / 2]) / 2.0,
            lines.LastOrDefault(),
            text.Sum(c => Letters(c.Source)),
            file.CodeCells.Sum(c => Letters(c.Source)));
    }

    private static int Letters(string text) => text.Count(char.IsLetterOrDigit);
}
