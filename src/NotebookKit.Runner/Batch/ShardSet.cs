using NotebookKit.Flight.Dispersion;

namespace NotebookKit.Runner.Batch;

/// <summary>The shards of one dispersion that were found, with the files they are in.</summary>
internal sealed class ShardSet
{
    private ShardSet(IReadOnlyList<(string File, DispersionShard Shard)> found) => Found = found;

    /// <summary>Files and what is in them.</summary>
    public IReadOnlyList<(string File, DispersionShard Shard)> Found { get; }

    /// <summary>What they are parts of.</summary>
    public DispersionPlan Plan => Found[0].Shard.Plan;

    /// <summary>Reads files and sorts them by the dispersion that they are of.</summary>
    /// <param name="files">Files.</param>
    /// <param name="problems">Gets a sentence for every file that holds no shard.</param>
    public static IReadOnlyList<ShardSet> Read(IEnumerable<string> files, ICollection<string> problems)
    {
        var found = new List<(string File, DispersionShard Shard)>();
        foreach (var file in files)
        {
            try
            {
                found.Add((file, ShardFiles.Read(file)));
            }
            catch (Exception error) when (error is FormatException or IOException or UnauthorizedAccessException)
            {
                problems.Add($"{file}: {error.Message}");
            }
        }

        return [.. found.GroupBy(f => f.Shard.Plan.Fingerprint).Select(g => new ShardSet([.. g]))];
    }

    /// <summary>Puts them together, or says why they can't be.</summary>
    /// <param name="problems">Gets the sentence.</param>
    public DispersionShard? Join(ICollection<string> problems)
    {
        // The library names parts; here a part is a file that somebody can look at.
        if (Found.GroupBy(f => f.Shard.Part).FirstOrDefault(g => g.Count() > 1) is { } twice)
        {
            problems.Add($"{Plan}: shard {twice.Key} is there twice: {string.Join(" and ", twice.Select(f => f.File))}. Give it once.");
            return null;
        }

        try
        {
            return DispersionShard.Join([.. Found.Select(f => f.Shard)]);
        }
        catch (ArgumentException error)
        {
            // Without the parameter's name, which says nothing to whoever typed a command.
            var sentence = error.Message.Replace($" (Parameter '{error.ParamName}')", "", StringComparison.Ordinal);
            problems.Add($"{Plan}: {sentence} There {(Found.Count == 1 ? "is" : "are")} "
                + $"{string.Join(", ", Found.Select(f => f.Shard.Part).Order(Comparer<ShardNumber>.Create((a, b) =>
                    a.Number.CompareTo(b.Number))).Take(20))}.");
            return null;
        }
    }
}
