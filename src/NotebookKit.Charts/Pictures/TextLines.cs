using System.Text;

namespace NotebookKit.Charts.Pictures;

/// <summary>Breaks text between words. Widths are guessed on the safe side: the letters of a reader's system aren't known.</summary>
internal static class TextLines
{
    private const double Letter = 0.62, BoldLetter = 0.68;

    /// <summary>Width that a text takes at most in usual letters [px].</summary>
    public static double Width(string text, double size, bool bold = false) =>
        (bold ? BoldLetter : Letter) * size * text.EnumerateRunes().Count();

    /// <summary>The lines of a text, each no wider than asked; a single word that is wider stays whole.</summary>
    public static IReadOnlyList<string> Break(string text, double width, double size, bool bold = false)
    {
        List<string> lines = [];
        var line = new StringBuilder();
        foreach (var word in text.Split(' ', StringSplitOptions.RemoveEmptyEntries))
        {
            if (line.Length > 0 && Width($"{line} {word}", size, bold) > width)
            {
                lines.Add(line.ToString());
                line.Clear();
            }
            line.Append(line.Length == 0 ? "" : " ").Append(word);
        }
        if (line.Length > 0) lines.Add(line.ToString());
        return lines;
    }
}
