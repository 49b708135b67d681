using NotebookKit.Numerics;

namespace NotebookKit.Runner.Wording;

/// <summary>Finds the name that a mistyped one was meant to be.</summary>
internal static class NearestName
{
    /// <summary>The nearest name; none where no name is near enough to be meant.</summary>
    /// <param name="asked">The name as it was written.</param>
    /// <param name="known">Names that exist; of equally near ones the first is taken.</param>
    public static string? Of(string asked, IEnumerable<string> known)
    {
        var nearest = known.Where(k => k.Length > 0 && k != asked).Distinct(StringComparer.Ordinal)
            .Select(k => (Name: k, Edits: EditDistance.Between(asked, k))).DefaultIfEmpty(("", int.MaxValue)).MinBy(k => k.Item2);
        return nearest.Item2 <= Meant(asked.Length) ? nearest.Item1 : null;
    }

    // Two letters exchanged are two edits; in a short word that is another word.
    private static int Meant(int length) => length < 5 ? 1 : Math.Max(2, length / 3);

    /// <summary>"; the nearest name is vessel"; empty where there is none.</summary>
    /// <param name="nearest">The nearest name; none where there is none.</param>
    public static string Clause(string? nearest) => nearest is null ? "" : $"; the nearest name is {nearest}";
}
