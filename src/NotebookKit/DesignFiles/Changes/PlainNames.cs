using NotebookKit.DesignFiles.Shapes;

namespace NotebookKit.DesignFiles.Changes;

/// <summary>Plain names of values: "fill pressure" or "vessel length" for "charge.fill pressure" and "vessel.length".</summary>
internal static class PlainNames
{
    /// <summary>Whether a name means a path: it ends in the path's last key, after some of the keys before it in their order.</summary>
    /// <param name="words">The name's <see cref="Words"/>.</param>
    /// <param name="steps">The keys of the path.</param>
    public static bool Means(string words, string[] steps)
    {
        foreach (var last in Forms(steps[^1]))
            if (Rest(words, last) is { } rest && (rest.Length == 0 || IsAmong(rest, steps, steps.Length - 2))) return true;
        return false;
    }

    /// <summary>The words of a name, one space apart.</summary>
    public static string Words(string name) => string.Join(' ', name.Split([' ', '.'],
        StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries));

    /// <summary>The shortest name that means one path alone; the path where there is none.</summary>
    public static string Shortest(string path, PathsByName all)
    {
        var steps = path.Split('.');
        if (IsAlone(steps[^1])) return steps[^1];
        for (var i = steps.Length - 2; i >= 0; i--)
            if (!char.IsAsciiDigit(steps[i][0]) && IsAlone($"{steps[i]} {steps[^1]}")) return $"{steps[i]} {steps[^1]}";
        return path;

        bool IsAlone(string name) => !char.IsAsciiDigit(name[0]) && all.IsAlone(name);
    }

    /// <summary>Every given with its shortest name.</summary>
    public static IReadOnlyList<DesignGiven> Named(IReadOnlyList<DesignGiven> givens)
    {
        PathsByName all = new([.. givens.Select(g => g.Path)]), stated = new([.. givens.Where(g => g.State == GivenState.Stated).Select(g =>
            g.Path)]);
        return [.. givens.Select(g => g with { Name = Shortest(g.Path, g.State == GivenState.Stated ? stated : all) })];
    }

    private static bool IsAmong(string words, string[] steps, int from)
    {
        for (var i = from; i >= 0; i--)
            foreach (var form in Forms(steps[i]))
                if (Rest(words, form) is { } rest && (rest.Length == 0 || IsAmong(rest, steps, i - 1))) return true;
        return false;
    }

    // What stands before the last words; none where the words don't end so.
    private static string? Rest(string words, string end) =>
        string.Equals(words, end, StringComparison.OrdinalIgnoreCase) ? ""
        : words.EndsWith(" " + end, StringComparison.OrdinalIgnoreCase) ? words[..^(end.Length + 1)]
        : null;

    /// <summary>What a key is called in a name: "fin thickness" means "fins.1.thickness".</summary>
    public static string[] Forms(string step) => step.Length > 2 && step.EndsWith('s') ? [step, step[..^1]] : [step];
}
