namespace NotebookKit.Logs;

/// <summary>Which rows of a log are kept so that its clock rises, and what was in the way of that.</summary>
/// <param name="Rows">Rows that are kept; none where all are.</param>
/// <param name="Duplicates">Rows whose stamp is that of the row before; left out.</param>
/// <param name="Strays">Single rows that are earlier than those around them; left out.</param>
/// <param name="Parts">Stretches of a log whose clock was reset, with their rows.</param>
internal sealed record ClockOrder(int[]? Rows, int Duplicates, int Strays, IReadOnlyList<(int First, int Rows)> Parts)
{
    /// <summary>Looks through the times.</summary>
    /// <param name="seconds">Times as read.</param>
    /// <param name="part">The stretch to keep, the first is 1; that with the most rows where none is given.</param>
    public static ClockOrder Of(double[] seconds, int? part)
    {
        List<(int First, int Rows)> parts = [(0, Math.Min(1, seconds.Length))];
        var dropped = new HashSet<int>();
        int duplicates = 0, strays = 0;
        var last = seconds.Length > 0 ? seconds[0] : 0;
        for (var i = 1; i < seconds.Length; i++)
        {
            if (seconds[i] == last)
            {
                duplicates++;
                dropped.Add(i);
                continue;
            }

            if (seconds[i] < last)
            {
                if (i + 1 < seconds.Length && seconds[i + 1] > last)
                {
                    strays++;
                    dropped.Add(i);
                    continue;
                }

                parts.Add((i, 0));
            }

            last = seconds[i];
            parts[^1] = (parts[^1].First, parts[^1].Rows + 1);
        }

        if (parts.Count == 1 && dropped.Count == 0) return new(null, 0, 0, parts);
        var kept = part is >= 1 && part <= parts.Count ? part.Value - 1
            : Enumerable.Range(0, parts.Count).Aggregate(0, (best, k) => parts[k].Rows > parts[best].Rows ? k : best);
        var (from, to) = (parts[kept].First, kept + 1 < parts.Count ? parts[kept + 1].First : seconds.Length);
        return new([.. Enumerable.Range(from, to - from).Where(i => !dropped.Contains(i))], duplicates, strays, parts);
    }
}
