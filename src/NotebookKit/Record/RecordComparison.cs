namespace NotebookKit.Record;

/// <summary>What changed between two records of one design.</summary>
/// <param name="ChangedGivens">Inputs that differ, were added or were dropped: "Fill pressure: 35 bar gauge, was 30 bar gauge".</param>
/// <param name="Broken">Requirements that held before and don't now, or are new and don't hold.</param>
/// <param name="Mended">Requirements that didn't hold before and do now.</param>
/// <param name="LookAgain">Decisions whose condition no longer holds.</param>
/// <param name="ChangedDecisions">Decisions whose choice differs, were added or were dropped.</param>
public sealed record RecordComparison(
    IReadOnlyList<string> ChangedGivens,
    IReadOnlyList<string> Broken,
    IReadOnlyList<string> Mended,
    IReadOnlyList<string> LookAgain,
    IReadOnlyList<string> ChangedDecisions)
{
    /// <summary>Whether nothing changed and everything holds.</summary>
    public bool IsQuiet => ChangedGivens.Count + Broken.Count + Mended.Count + LookAgain.Count + ChangedDecisions.Count == 0;

    /// <summary>Compares two records.</summary>
    /// <param name="earlier">The earlier one.</param>
    /// <param name="later">The later one.</param>
    public static RecordComparison Between(DesignRecord earlier, DesignRecord later)
    {
        ArgumentNullException.ThrowIfNull(earlier);
        ArgumentNullException.ThrowIfNull(later);
        var held = earlier.Requirements.ToDictionary(r => r.Name, r => r.Holds, StringComparer.Ordinal);
        return new(
            Differences(earlier.Givens, later.Givens, g => g.Name, g => g.Value),
            [.. later.Requirements.Where(r => !r.Holds && held.GetValueOrDefault(r.Name, true)).Select(Say)],
            [.. later.Requirements.Where(r => r.Holds && !held.GetValueOrDefault(r.Name, true)).Select(Say)],
            [.. later.Decisions.Where(d => !d.StillRight).Select(d => $"{d.Name}: {d.Chosen}; {Say(d.StaysRightWhile)}")],
            Differences(earlier.Decisions, later.Decisions, d => d.Name, d => d.Chosen));
    }

    private static string Say(Requirement r) => $"{r.Name} is {r.LiveValue}, required {r.Condition}";

    private static List<string> Differences<T>(IReadOnlyList<T> before, IReadOnlyList<T> after, Func<T, string> name, Func<T, string> value)
    {
        var old = before.ToDictionary(name, value, StringComparer.Ordinal);
        var now = after.ToDictionary(name, value, StringComparer.Ordinal);
        return
        [
            .. after.Where(a => old.TryGetValue(name(a), out var was) && was != value(a)).Select(a => $"{name(a)}: {value(a)}, was {old[name(a)]}"),
            .. after.Where(a => !old.ContainsKey(name(a))).Select(a => $"{name(a)}: {value(a)}, new"),
            .. before.Where(b => !now.ContainsKey(name(b))).Select(b => $"{name(b)}: dropped, was {value(b)}"),
        ];
    }
}
