using System.Globalization;

namespace NotebookKit.DesignFiles.Trees;

/// <summary>Paths to a value: keys joined by points, items of a list counted from 1: "vessel.plies.1".</summary>
internal static class TreePath
{
    public static string Join(string path, string key) => path.Length == 0 ? key : $"{path}.{key}";

    public static string Join(string path, int item) => Join(path, item.ToString(CultureInfo.InvariantCulture));

    /// <summary>The value at a path; none where there is none.</summary>
    public static TreeNode? Find(TreeNode root, string path)
    {
        TreeNode? node = root;
        foreach (var step in path.Split('.'))
        {
            node = node switch
            {
                TreeNode.Members members => members.Find(step),
                TreeNode.Items items when Number(step) is { } number && number <= items.All.Count => items.All[number - 1],
                _ => null,
            };
            if (node is null) return null;
        }

        return node;
    }

    /// <summary>Paths of all single values, at most a thousand; of one stated with its reason its own, not that of the number.</summary>
    public static IEnumerable<string> All(TreeNode root) => Below(root, "").Take(1000);

    /// <summary>Paths of all objects and lists within, at most a thousand.</summary>
    public static IEnumerable<string> Parts(TreeNode root) => All(root).SelectMany(p => p.Split('.') is var steps
        ? Enumerable.Range(1, steps.Length - 1).Select(n => string.Join('.', steps.Take(n))) : []).Distinct();

    /// <summary>The tree with another value at a path; the last step of the path may be new. None where the path leads nowhere.</summary>
    public static TreeNode? With(TreeNode root, string path, TreeNode value) => Replace(root, path.Split('.'), value);

    /// <summary>The tree without the value at a path; none where the path leads nowhere.</summary>
    public static TreeNode? Without(TreeNode root, string path) => Find(root, path) is null ? null : Replace(root, path.Split('.'), null);

    private static TreeNode? Replace(TreeNode node, ReadOnlySpan<string> steps, TreeNode? value)
    {
        if (steps.IsEmpty) return value! with { Before = node.Before, After = node.After };
        var step = steps[0];
        var rest = steps[1..];
        switch (node)
        {
            case TreeNode.Members members:
                var at = members.All.ToList().FindIndex(m => m.Key == step);
                if (at < 0 && (!rest.IsEmpty || value is null)) return null;
                List<TreeNode.Member> all = [.. members.All];
                if (at < 0) all.Add(new(step, default, value!));
                else if (rest.IsEmpty && value is null) all.RemoveAt(at);
                else if (Replace(all[at].Value, rest, value) is { } changed) all[at] = all[at] with { Value = changed };
                else return null;
                return members with { All = all };
            case TreeNode.Items items when Number(step) is { } number && number <= items.All.Count + 1:
                List<TreeNode> list = [.. items.All];
                if (number > list.Count && rest.IsEmpty && value is not null) list.Add(value);
                else if (number > list.Count) return null;
                else if (rest.IsEmpty && value is null) list.RemoveAt(number - 1);
                else if (Replace(list[number - 1], rest, value) is { } changed) list[number - 1] = changed;
                else return null;
                return items with { All = list };
            default:
                return null;
        }
    }

    private static IEnumerable<string> Below(TreeNode node, string path) => node switch
    {
        TreeNode.Members members when members.Find("value") is not null => [path],
        TreeNode.Members members => members.All.SelectMany(m => Below(m.Value, Join(path, m.Key))),
        TreeNode.Items items => items.All.SelectMany((item, i) => Below(item, Join(path, i + 1))),
        _ => [path],
    };

    private static int? Number(string step) =>
        int.TryParse(step, NumberStyles.None, CultureInfo.InvariantCulture, out var number) && number > 0 ? number : null;
}
