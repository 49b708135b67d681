using System.Security.Cryptography;
using System.Text;
using NotebookKit.DesignFiles.Parts;
using NotebookKit.DesignFiles.Trees;

namespace NotebookKit.DesignFiles.Keys;

/// <summary>Marks of tests as they stand in a file. A remark, the order of the keys and the mark of the vessel that was tested, which is
/// often added later, change none.</summary>
internal static class TestMarks
{
    private const int Digits = 8;

    /// <summary>The marks of all tests of a list, in its order; none where there is no list.</summary>
    /// <param name="tests">The list.</param>
    public static IReadOnlyList<TestMark> Of(TreeNode? tests) => tests is TreeNode.Items items ? [.. items.All.Select(Made)] : [];

    private static TestMark Made(TreeNode test)
    {
        var text = new StringBuilder();
        Add(text, test);
        return new($"{Word(test, "kind", "test")} of {Word(test, "vessel", "no vessel")}",
            Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(text.ToString())))[..Digits]);
    }

    // A stroke parts one test from the next where a record lists them.
    private static string Word(TreeNode test, string key, string otherwise) =>
        (test as TreeNode.Members)?.Find(key) is TreeNode.Text { Value: var word } ? word.Replace('|', '/') : otherwise;

    private static void Add(StringBuilder text, TreeNode node)
    {
        switch (node)
        {
            case TreeNode.Members members:
                text.Append('{');
                foreach (var member in members.All.Where(m => m.Key != "made as").OrderBy(m => m.Key, StringComparer.Ordinal))
                {
                    text.Append(member.Key).Append('\0');
                    Add(text, member.Value);
                }

                text.Append('}');
                break;
            case TreeNode.Items items:
                text.Append('[');
                foreach (var item in items.All) Add(text, item);
                text.Append(']');
                break;
            case TreeNode.Text { Value: var value }:
                text.Append('"').Append(value).Append('\0');
                break;
            case TreeNode.Literal { Value: var value }:
                text.Append(value).Append('\0');
                break;
        }
    }
}
