namespace NotebookKit.Numerics;

/// <summary>
/// How many letters have to be put in, taken out or exchanged to make one word of another: tells which known name is nearest to a mistyped
/// one.
/// Source: V. I. Levenshtein, Soviet Physics Doklady 10 (1966) 707; R. A. Wagner, M. J. Fischer, J. ACM 21 (1974) 168; both unverified.
/// </summary>
public static class EditDistance
{
    /// <summary>Edits from one text to the other, upper and lower case alike [edits]; 0 for the same text.</summary>
    /// <param name="one">One text.</param>
    /// <param name="other">The other.</param>
    public static int Between(string one, string other)
    {
        ArgumentNullException.ThrowIfNull(one);
        ArgumentNullException.ThrowIfNull(other);
        var a = one.ToUpperInvariant();
        var b = other.ToUpperInvariant();
        var row = Enumerable.Range(0, b.Length + 1).ToArray();
        for (var i = 1; i <= a.Length; i++)
        {
            var diagonal = row[0];
            row[0] = i;
            for (var j = 1; j <= b.Length; j++)
            {
                var substitute = diagonal + (a[i - 1] == b[j - 1] ? 0 : 1);
                diagonal = row[j];
                row[j] = Math.Min(substitute, Math.Min(row[j], row[j - 1]) + 1);
            }
        }

        return row[b.Length];
    }
}
