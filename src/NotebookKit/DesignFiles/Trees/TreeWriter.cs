using System.Text;
using System.Text.Encodings.Web;
using System.Text.Json;

namespace NotebookKit.DesignFiles.Trees;

/// <summary>Writes a tree: one line a value, short objects of a list on one line, remarks where they stood.</summary>
internal static class TreeWriter
{
    private const int Widest = 120;

    /// <summary>The text of a tree, with a line end behind it.</summary>
    public static string Write(TreeNode root)
    {
        var text = new StringBuilder();
        foreach (var remark in root.Before) text.Append(remark).Append('\n');
        Value(text, root, 0, 0);
        text.Append('\n');
        if (root.After is { } below) text.Append(below).Append('\n');
        return text.ToString();
    }

    private static void Value(StringBuilder text, TreeNode node, int depth, int column)
    {
        if (node is TreeNode.Text or TreeNode.Literal)
        {
            text.Append(OfScalar(node));
            return;
        }

        if (depth > 1 && OnOneLine(node) is { } line && column + line.Length <= Widest)
        {
            text.Append(line);
            return;
        }

        var (open, close) = node is TreeNode.Members ? ('{', '}') : ('[', ']');
        IReadOnlyList<(string Key, TreeNode Value)> entries = node is TreeNode.Members members
            ? [.. members.All.Select(m => ($"{Quoted(m.Key)}: ", m.Value))]
            : [.. ((TreeNode.Items)node).All.Select(i => ("", i))];
        if (entries.Count == 0 && node.Last.Count == 0)
        {
            text.Append(open).Append(close);
            return;
        }

        text.Append(open).Append('\n');
        var indent = new string(' ', 2 * (depth + 1));
        for (var i = 0; i < entries.Count; i++)
        {
            var (key, value) = entries[i];
            foreach (var remark in value.Before) text.Append(indent).Append(remark).Append('\n');
            text.Append(indent).Append(key);
            Value(text, value, depth + 1, indent.Length + key.Length);
            if (i + 1 < entries.Count) text.Append(',');
            if (value.After is { } behind) text.Append(' ').Append(behind);
            text.Append('\n');
        }

        foreach (var remark in node.Last) text.Append(indent).Append(remark).Append('\n');
        text.Append(indent, 0, 2 * depth).Append(close);
    }

    private static string? OnOneLine(TreeNode node)
    {
        switch (node)
        {
            case TreeNode.Members { All.Count: > 0 } members when members.Last.Count == 0
                && members.All.All(m => IsBareScalar(m.Value)):
                return $"{{ {string.Join(", ", members.All.Select(m => $"{Quoted(m.Key)}: {OfScalar(m.Value)}"))} }}";
            case TreeNode.Items { All.Count: > 0 } items when items.Last.Count == 0 && items.All.All(IsBareScalar):
                return $"[{string.Join(", ", items.All.Select(OfScalar))}]";
            default:
                return null;
        }
    }

    private static bool IsBareScalar(TreeNode node) => node is TreeNode.Text or TreeNode.Literal && !node.HasRemarks;

    private static string OfScalar(TreeNode node) => node is TreeNode.Text text ? Quoted(text.Value) : ((TreeNode.Literal)node).Value;

    private static string Quoted(string value) => $"\"{JsonEncodedText.Encode(value, JavaScriptEncoder.UnsafeRelaxedJsonEscaping)}\"";
}
