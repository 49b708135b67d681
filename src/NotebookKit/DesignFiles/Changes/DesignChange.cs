using System.Collections.Frozen;
using System.Text;
using NotebookKit.DesignFiles.Shapes;
using NotebookKit.DesignFiles.Trees;

namespace NotebookKit.DesignFiles.Changes;

/// <summary>Puts another value in a design's tree, found by its path or its plain name.</summary>
internal static class DesignChange
{
    /// <summary>The tree with another value, and the value's path.</summary>
    public static (TreeNode Tree, string Path) Of(string file, TreeNode tree, IReadOnlyList<DesignGiven> givens, string name, string text)
    {
        var isWhole = text.AsSpan().TrimStart() is ['{' or '[', ..];
        var path = Find(file, tree, givens, name) ?? Below(file, tree, givens, name) ?? (isWhole ? name
            : throw NoSuchValue(file, givens, name));
        var (found, own) = (TreePath.Find(tree, path), path);
        if (!isWhole && found is TreeNode.Members members)
        {
            // The value of what is stated with its reason; the material of a ply.
            string[] single = ["value", "material"];
            if (single.FirstOrDefault(k => members.Find(k) is not null) is not { } key)
                throw new DesignFileException(file, default(Place), DesignFilesFindings.NotOneValue(path,
                    members.All is [_, ..] ? TreePath.Join(path, (members.All.FirstOrDefault(m => m.Key != "kind") ?? members.All[0]).Key)
                        : null));
            path = TreePath.Join(path, key);
            if (key != "value") own = path;
            found = members.Find(key);
        }

        var node = isWhole ? TreeReader.Parse($"{file}, value of {path}", Encoding.UTF8.GetBytes(text)) : Scalar(text,
            givens.FirstOrDefault(g => g.Path == path)?.Kind ?? "", found);
        return (TreePath.With(tree, path, Nowhere(node)) ?? throw NoSuchValue(file, givens, name), own);
    }

    // What isn't there yet, in a part that is: another item of a list, a key that was left out.
    private static string? Below(string file, TreeNode tree, IReadOnlyList<DesignGiven> givens, string name) =>
        name.LastIndexOf('.') is > 0 and var cut && Find(file, tree, givens, name[..cut]) is { } part
            ? TreePath.Join(part, name[(cut + 1)..].Trim()) : null;

    /// <summary>The path that a name means; none where it means none.</summary>
    /// <exception cref="DesignFileException">It means several.</exception>
    public static string? Find(string file, TreeNode tree, IReadOnlyList<DesignGiven> givens, string name)
    {
        var exact = name.Trim();
        if (exact.Length is 0 or > 200) return null;
        if (TreePath.Find(tree, exact) is not null || givens.Any(g => g.Path == exact)) return exact;
        var words = PlainNames.Words(exact);
        foreach (var paths in new[]
        {
            givens.Where(g => g.State == GivenState.Stated).Select(g => g.Path), TreePath.Parts(tree),
            givens.Where(g => g.State != GivenState.Stated).Select(g => g.Path),
        })
        {
            var meant = paths.Where(p => PlainNames.Means(words, p.Split('.'))).Distinct().ToList();
            if (meant.Count == 1) return meant[0];
            if (meant.Count > 1) throw new DesignFileException(file, default(Place), DesignFilesFindings.SeveralValues(exact,
                [.. meant.Take(8)], meant.Count));
        }

        return null;
    }

    public static DesignFileException NoSuchValue(string file, IReadOnlyList<DesignGiven> givens, string name)
    {
        var named = PlainNames.Named(givens);
        return new(file, default(Place), DesignFilesFindings.NoSuchValue(name.Length > 80 ? name[..80] : name,
            Nearest.Of(name, named.Where(g => g.State == GivenState.Stated).Select(g => g.Name).Concat(named.Select(g => g.Path))
                .Concat(named.Select(g => g.Name)))));
    }

    // Parts of a design that no rating looks at.
    private static readonly FrozenSet<string> Unrated = new[]
    {
        "about", "body", "charge", "decisions", "drag", "fin structure", "flow model", "launch tube", "masses", "nozzle", "pad", "proof",
        "recovery", "requirements", "scatter", "separation", "site", "sun",
    }.ToFrozenSet(StringComparer.Ordinal);

    /// <summary>The stages whose vessel, tests or rules a change at a path may reach, by itself or by what is taken over from there; the
    /// rating of the others stands.</summary>
    /// <param name="tree">The design with the change.</param>
    /// <param name="path">Where it was changed.</param>
    /// <param name="stages">Keys of the stages, the lowest first; a design of one stage counts as the lowest.</param>
    public static IReadOnlySet<string> RatedAnew(TreeNode tree, string path, IReadOnlyList<string> stages)
    {
        List<(string At, string From)> taken = [.. TakenOver(tree, "")];
        var reached = new HashSet<string>(StringComparer.Ordinal);
        var anew = new HashSet<string>(StringComparer.Ordinal);
        var next = new Queue<string>([path]);
        while (next.TryDequeue(out var at))
        {
            if (!reached.Add(at)) continue;
            var steps = at.Split('.');
            var isOfStage = steps[0] == "stages" && steps.Length > 2;
            if (!Unrated.Contains(steps[isOfStage ? 2 : 0])) anew.UnionWith(isOfStage ? stages.Where(s => s == steps[1]) : stages);
            foreach (var (taker, from) in taken)
                if (at == from || IsWithin(at, from) || IsWithin(from, at)) next.Enqueue(taker);
        }

        return anew;
    }

    private static bool IsWithin(string path, string part) => path.Length > part.Length && path[part.Length] == '.'
        && path.StartsWith(part, StringComparison.Ordinal);

    private static IEnumerable<(string At, string From)> TakenOver(TreeNode node, string at) => node switch
    {
        TreeNode.Text text => text.Value.StartsWith(StatedValue.TakesOver, StringComparison.Ordinal)
            ? [(at, text.Value[StatedValue.TakesOver.Length..].Split([" + ", " - "], StringSplitOptions.TrimEntries)[0])] : [],
        TreeNode.Members members => members.All.SelectMany(m => TakenOver(m.Value, TreePath.Join(at, m.Key))),
        TreeNode.Items items => items.All.SelectMany((item, i) => TakenOver(item, TreePath.Join(at, i + 1))),
        _ => [],
    };

    /// <summary>What a value from outside makes wrong: the value itself where that is wrong, else what follows from it.</summary>
    public static DesignFileException Refused(string file, string path, string name, string text, DesignFileException wrong)
    {
        var own = wrong.Mistakes.Where(m => m.Path == path || m.Path.StartsWith($"{path}.", StringComparison.Ordinal)).ToList();
        return own.Count > 0 ? new("", [.. own.Select(m => m with { Line = 0, Column = 0, Sentence = m.Line > 0
                ? $"{m.Sentence} {DesignFilesFindings.RangeStandsIn(file, m.Line)}" : m.Sentence })], wrong)
            : new(file, [.. wrong.Mistakes.Select(m => m with { Sentence = $"{m.Sentence} {DesignFilesFindings.FollowsFrom(name,
                text.Length > 60 ? text[..60] : text)}" })], wrong);
    }

    private static TreeNode Scalar(string text, string kind, TreeNode? found)
    {
        var isBare = kind is "number" or "whole number" or "true or false" || (kind.Length == 0 && found is TreeNode.Literal);
        if (!isBare) return new TreeNode.Text(default, text.Trim());
        try
        {
            var read = TreeReader.Parse("value", Encoding.UTF8.GetBytes(text));
            return read is TreeNode.Literal ? read : new TreeNode.Text(default, text);
        }
        catch (DesignFileException)
        {
            return new TreeNode.Text(default, text.Trim());
        }
    }

    // A value from outside stands in no line of the file.
    private static TreeNode Nowhere(TreeNode node) => node switch
    {
        TreeNode.Members members => members with
        {
            At = default, All = [.. members.All.Select(m => m with { KeyAt = default, Value = Nowhere(m.Value) })],
        },
        TreeNode.Items items => items with { At = default, All = [.. items.All.Select(Nowhere)] },
        _ => node with { At = default },
    };
}
