namespace NotebookKit.Logs;

/// <summary>So much of a file's own text as a sentence may repeat.</summary>
internal static class Excerpt
{
    /// <summary>Characters that are repeated at the most.</summary>
    public const int Longest = 60;

    /// <summary>The text, cut and with its control characters shown as dots.</summary>
    public static string Of(ReadOnlySpan<char> text, int longest = Longest)
    {
        var cut = text.Length > longest;
        Span<char> shown = stackalloc char[cut ? longest : text.Length];
        for (var i = 0; i < shown.Length; i++) shown[i] = char.IsControl(text[i]) || char.IsSurrogate(text[i]) ? '·' : text[i];
        return cut ? string.Concat(shown, "…") : shown.ToString();
    }

    /// <summary>Names in quotes; the first dozen, and how many more there are.</summary>
    public static string Names(IEnumerable<string> names)
    {
        var all = names.ToList();
        var shown = string.Join(", ", all.Take(12).Select(n => $"'{Of(n)}'"));
        return all.Count > 12 ? $"{shown} and {all.Count - 12} more" : shown;
    }
}
