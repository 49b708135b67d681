using NotebookKit.Record;

namespace NotebookKit.Runner.Reports;

/// <summary>The givens on which a run differs from the notebook's own values or from its last record.</summary>
internal static class ChangedGivens
{
    /// <summary>A line for each of them.</summary>
    /// <param name="now">Records that this run made.</param>
    /// <param name="last">Records of the last run.</param>
    /// <param name="overridden">Givens that this run was asked to set in this notebook, with their values.</param>
    public static IReadOnlyList<string> Of(
        IReadOnlyList<DesignRecord> now, IReadOnlyList<DesignRecord> last, IReadOnlyList<(string Name, string Text)> overridden)
    {
        var lines = new List<string>();
        var said = new HashSet<string>(StringComparer.OrdinalIgnoreCase);
        foreach (var record in now)
        {
            var before = last.FirstOrDefault(r => r.Title == record.Title)?.Givens ?? [];
            foreach (var given in record.Givens)
            {
                var was = before.FirstOrDefault(g => g.Name == given.Name);
                if (!given.Overridden && (was is null || was.Value == given.Value)) continue;
                said.Add(given.Name);
                lines.Add($"{given.Name} is {given.Value}{(was is null || was.Value == given.Value ? "" : $", was {was.Value}")}"
                    + $"{(given.Overridden ? " (set for this run)" : "")}");
            }
        }

        // A notebook that failed, or that shows no record, ran on them all the same.
        lines.AddRange(overridden.Where(o => !said.Contains(o.Name)).Select(o => $"{o.Name} is {o.Text} (set for this run)"));
        return lines;
    }
}
