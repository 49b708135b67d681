using NotebookKit.Numerics;

namespace NotebookKit.DesignFiles.Shapes;

/// <summary>The known word that a mistyped one is nearest to.</summary>
internal static class Nearest
{
    /// <summary>The nearest; none where none is near.</summary>
    public static string? Of(string word, IEnumerable<string> known)
    {
        if (word.Length > 200) return null;
        List<string> all = [.. known];
        // Who writes the beginning of a name means that name: "fil" is the fill pressure and not the tip.
        if (word.Length >= 3 && all.Where(k => k.StartsWith(word, StringComparison.OrdinalIgnoreCase))
            .OrderBy(k => k.Split(' ', '.')[0].Length).FirstOrDefault() is { } begun) return begun;
        var nearest = all.Select(k => (Word: k, Edits: EditDistance.Between(word, k))).OrderBy(k => k.Edits).FirstOrDefault();
        return nearest.Word is not null && nearest.Edits <= Math.Max(2, nearest.Word.Length / 2) ? nearest.Word : null;
    }
}
