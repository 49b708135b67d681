namespace NotebookKit.DesignFiles.Changes;

/// <summary>Paths of a design, found by the words that a plain name ends in: a name is held against the few paths that it can mean.
/// </summary>
internal sealed class PathsByName
{
    private readonly string[][] _steps;
    private readonly Dictionary<string, List<int>> _endings = new(StringComparer.OrdinalIgnoreCase);
    private readonly Dictionary<string, bool> _alone = new(StringComparer.Ordinal);

    public PathsByName(IReadOnlyList<string> paths)
    {
        _steps = [.. paths.Select(p => p.Split('.'))];
        for (var i = 0; i < _steps.Length; i++)
            foreach (var form in PlainNames.Forms(_steps[i][^1]))
                if (_endings.TryGetValue(form, out var some)) some.Add(i);
                else _endings.Add(form, [i]);
    }

    /// <summary>Whether a name means one of the paths alone, by <see cref="PlainNames.Means"/>.</summary>
    public bool IsAlone(string name)
    {
        if (_alone.TryGetValue(name, out var known)) return known;
        var words = PlainNames.Words(name);
        var (one, several) = (-1, false);
        // The last key of a path is all of the name, or what follows one of its spaces.
        for (var from = 0; from >= 0 && !several; from = words.IndexOf(' ', from) is >= 0 and var space ? space + 1 : -1)
            if (_endings.TryGetValue(words[from..], out var paths))
                foreach (var path in paths)
                    if (path != one && PlainNames.Means(words, _steps[path])) (several, one) = (one >= 0, path);
        return _alone[name] = one >= 0 && !several;
    }
}
