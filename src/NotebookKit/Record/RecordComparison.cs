namespace NotebookKit.Record;

/// <summary>What changed between two records of one design.</summary>
/// <param name="ChangedGivens">Inputs that differ, were added or were dropped: "Fill pressure: 35 bar gauge, was 30 bar gauge".</param>
/// <param name="Broken">Requirements that held before and don't now, or are new and don't hold.</param>
/// <param name="Mended">Requirements that didn't hold before and do now.</param>
/// <param name="LookAgain">Decisions whose condition no longer holds.</param>
/// <param name="ChangedDecisions">Decisions whose choice differs, were added or were dropped.</param>
/// <param name="ChangedEvidence">Evidence whose fingerprint differs, or that was added or dropped.</param>
/// <param name="RestsOnChanged">Requirements and decisions that rest, or rested before, on evidence that changed, or that no longer rest on
/// what they rested on.</param>
public sealed record RecordComparison(
    IReadOnlyList<string> ChangedGivens,
    IReadOnlyList<string> Broken,
    IReadOnlyList<string> Mended,
    IReadOnlyList<string> LookAgain,
    IReadOnlyList<string> ChangedDecisions,
    IReadOnlyList<string> ChangedEvidence,
    IReadOnlyList<string> RestsOnChanged)
{
    /// <summary>Whether nothing changed and everything holds.</summary>
    public bool IsQuiet =>
        ChangedGivens.Count + Broken.Count + Mended.Count + LookAgain.Count + ChangedDecisions.Count + ChangedEvidence.Count
            + RestsOnChanged.Count == 0;

    /// <summary>Compares two records.</summary>
    /// <param name="earlier">The earlier one.</param>
    /// <param name="later">The later one.</param>
    /// <exception cref="FormatException">One of the two states a name twice, so that nobody can say which entry is meant.</exception>
    public static RecordComparison Between(DesignRecord earlier, DesignRecord later)
    {
        ArgumentNullException.ThrowIfNull(earlier);
        ArgumentNullException.ThrowIfNull(later);
        foreach (var (which, record) in new[] { ("earlier", earlier), ("later", later) })
            if (record.Flaw() is { } flaw) throw new FormatException($"The {which} record can't be compared: {flaw}. Export the record "
                + "again from its notebook.");

        var held = earlier.Requirements.ToDictionary(r => r.Name, r => r.Holds, StringComparer.Ordinal);
        var evidence = ChangesOf(earlier.Evidence, later.Evidence);
        return new(
            Differences(earlier.Givens, later.Givens, g => g.Name, g => g.Value),
            [.. later.Requirements.Where(r => !r.Holds && held.GetValueOrDefault(r.Name, true)).Select(Say)],
            [.. later.Requirements.Where(r => r.Holds && !held.GetValueOrDefault(r.Name, true)).Select(Say)],
            [.. later.Decisions.Where(d => !d.StillRight).Select(d => $"{d.Name}: {d.Chosen}; {Say(d.StaysRightWhile)}")],
            Differences(earlier.Decisions, later.Decisions, d => d.Name, d => d.Chosen),
            [.. evidence.Values],
            [
                .. Resting("requirement", earlier.Requirements, later.Requirements, r => r.Name, r => r.RestsOn, evidence.Keys),
                .. Resting("decision", earlier.Decisions, later.Decisions, d => d.Name, DesignRecord.EvidenceOf, evidence.Keys),
            ]);
    }

    private static string Say(Requirement r) => $"{r.Name} is {r.LiveValue}, required {r.Condition}";

    private static OrderedDictionary<string, string> ChangesOf(IReadOnlyList<EvidenceMark> before, IReadOnlyList<EvidenceMark> after)
    {
        var old = before.ToDictionary(e => e.Name, StringComparer.Ordinal);
        var now = after.Select(e => e.Name).ToHashSet(StringComparer.Ordinal);
        var changes = new OrderedDictionary<string, string>(StringComparer.Ordinal);
        foreach (var mark in after)
        {
            if (!old.TryGetValue(mark.Name, out var was)) changes.Add(mark.Name, $"{mark.Name}: added ({mark.What})");
            else if (!string.Equals(was.Fingerprint, mark.Fingerprint, StringComparison.OrdinalIgnoreCase))
                changes.Add(mark.Name, $"{mark.Name}: changed ({mark.What}), fingerprint {mark.Fingerprint}, was {was.Fingerprint}");
        }

        foreach (var mark in before.Where(b => !now.Contains(b.Name))) changes.Add(mark.Name, $"{mark.Name}: dropped ({mark.What})");
        return changes;
    }

    // What an entry rested on before counts too: leaving the evidence out must not make its change pass unseen.
    private static IEnumerable<string> Resting<T>(
        string kind, IReadOnlyList<T> before, IReadOnlyList<T> after, Func<T, string> name, Func<T, IReadOnlyList<string>> restsOn,
            IReadOnlyCollection<string> changed)
    {
        var old = before.ToDictionary(name, restsOn, StringComparer.Ordinal);
        foreach (var entry in after)
        {
            var now = restsOn(entry);
            var was = old.GetValueOrDefault(name(entry), now);
            var touched = now.Union(was).Where(changed.Contains).ToList();
            var left = was.Except(now).Except(changed).ToList();
            if (touched.Count > 0) yield return $"{kind} {name(entry)}: rests on changed evidence, {string.Join(", ", touched)}";
            if (left.Count > 0) yield return $"{kind} {name(entry)}: no longer rests on {string.Join(", ", left)}";
        }
    }

    private static List<string> Differences<T>(IReadOnlyList<T> before, IReadOnlyList<T> after, Func<T, string> name, Func<T, string> value)
    {
        var old = before.ToDictionary(name, value, StringComparer.Ordinal);
        var now = after.ToDictionary(name, value, StringComparer.Ordinal);
        return
        [
            .. after.Where(a => old.TryGetValue(name(a), out var was)
                && was != value(a)).Select(a => $"{name(a)}: {value(a)}, was {old[name(a)]}"),
            .. after.Where(a => !old.ContainsKey(name(a))).Select(a => $"{name(a)}: {value(a)}, new"),
            .. before.Where(b => !now.ContainsKey(name(b))).Select(b => $"{name(b)}: dropped, was {value(b)}"),
        ];
    }
}
