using System.Globalization;
using NotebookKit.Record;

namespace NotebookKit.Runner.Reports;

/// <summary>The requirements of one design after a run, beside those of its last record.</summary>
/// <param name="Title">Title of the design's record; empty where no record was made and none was kept.</param>
/// <param name="Rows">The requirements in the order they were stated.</param>
/// <param name="HasLast">Whether there is a last record to hold them against.</param>
internal sealed record RequirementTable(string Title, IReadOnlyList<RequirementRow> Rows, bool HasLast)
{
    /// <summary>Whether every one of them holds.</summary>
    public bool AllHold => Rows.All(r => r.State == RequirementState.Holds);

    /// <summary>All on one line: "3 hold. No longer holds: apogee. Can't tell: drift."</summary>
    public string Line => string.Join(' ', new[]
    {
        string.Create(CultureInfo.InvariantCulture, $"{Rows.Count(r => r.State == RequirementState.Holds)} of {Rows.Count} hold."),
        Named("No longer holds", RequirementState.NoLongerHolds),
        Named("Does not hold", RequirementState.DoesNotHold),
        Named("Can't tell", RequirementState.CannotTell),
    }.Where(p => p.Length > 0));

    /// <summary>The tables of one run.</summary>
    /// <param name="now">Records that this run made, the last one of each title.</param>
    /// <param name="last">Records of the last run.</param>
    /// <param name="stated">Requirements that the code of cells which weren't computed states.</param>
    public static IReadOnlyList<RequirementTable> Of(
        IReadOnlyList<DesignRecord> now, IReadOnlyList<DesignRecord> last, IReadOnlyList<string> stated)
    {
        var titles = now.Concat(last).Select(r => r.Title).Distinct(StringComparer.Ordinal).ToList();
        var tables = titles.ConvertAll(t => Of(t, now.FirstOrDefault(r => r.Title == t), last.FirstOrDefault(r => r.Title == t)));
        var known = tables.SelectMany(t => t.Rows).Select(r => r.Name).ToHashSet(StringComparer.Ordinal);
        var open = stated.Distinct(StringComparer.Ordinal).Where(n => !known.Contains(n)).Select(n =>
            new RequirementRow(n, RequirementState.CannotTell, "", "", "", NotComputed)).ToList();
        // Whose they are can be told where there is one record only.
        if (open.Count > 0 && tables.Count == 1) tables = [tables[0] with { Rows = [.. tables[0].Rows, .. open] }];
        else if (open.Count > 0) tables.Add(new("", open, HasLast: false));
        return [.. tables.Where(t => t.Rows.Count > 0)];
    }

    private const string NotComputed = "the cell that states this requirement was not computed";

    private static RequirementTable Of(string title, DesignRecord? now, DesignRecord? last)
    {
        var before = (last?.Requirements ?? []).ToDictionary(r => r.Name, StringComparer.Ordinal);
        var rows = (now?.Requirements ?? []).Select(r => Row(r, before.GetValueOrDefault(r.Name))).ToList();
        var stated = rows.Select(r => r.Name).ToHashSet(StringComparer.Ordinal);
        rows.AddRange(before.Values.Where(r => !stated.Contains(r.Name)).Select(r => new RequirementRow(
            r.Name, RequirementState.CannotTell, "", r.Condition, Held(r), "this run computed no value for this requirement")));
        return new(title, rows, last is not null);
    }

    private static RequirementRow Row(Requirement now, Requirement? before) => new(
        now.Name,
        now.Holds ? RequirementState.Holds : before is { Holds: true } ? RequirementState.NoLongerHolds : RequirementState.DoesNotHold,
        now.LiveValue,
        before is not null && before.Condition != now.Condition ? $"{now.Condition} (was {before.Condition})" : now.Condition,
        before is null ? "" : Held(before),
        "");

    private static string Held(Requirement before) => $"{(before.Holds ? "held" : "did not hold")}, {before.LiveValue}";

    private string Named(string what, RequirementState state) =>
        Rows.Where(r => r.State == state).Select(r => r.Name).ToList() is { Count: > 0 } names ? $"{what}: {string.Join(", ", names)}."
            : "";
}
