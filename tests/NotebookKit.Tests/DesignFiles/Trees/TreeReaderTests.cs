using System.Text;
using NotebookKit.DesignFiles.Trees;

namespace NotebookKit.Tests.DesignFiles.Trees;

public class TreeReaderTests
{
    /// <summary>Columns count letters as .NET does, whatever a letter takes as bytes: µ two, € three, 🚀 four and two units of UTF-16. The
    /// places are found by the text's own search.</summary>
    [Theory]
    [InlineData("[\"µ1\", \"2°\", /* € */ \"3🚀\", [\"4\", \"5µµ\"], \"6\"]")]
    [InlineData("[\"µ1\",\n  \"2°\", \"3\",\r\n\"🚀4\", // µ behind\n\n\"5\", \"6\"]")]
    [InlineData("\n\n[\"1\", \"2\", {\"µ\": \"3\", \"🚀\": \"4\"}, \"5\",\n\"6\"]")]
    public void Every_value_knows_the_line_and_the_letter_where_it_starts(string text)
    {
        var values = Texts(TreeReader.Parse("a text", Encoding.UTF8.GetBytes(text))).ToList();
        Assert.Equal(6, values.Count);
        foreach (var value in values)
        {
            var before = text[..text.IndexOf($"\"{value.Value}\"", StringComparison.Ordinal)];
            Assert.Equal((before.Count(c => c == '\n') + 1, before.Length - before.LastIndexOf('\n')), (value.At.Line, value.At.Column));
        }
    }

    private static IEnumerable<TreeNode.Text> Texts(TreeNode node) => node switch
    {
        TreeNode.Text text => [text],
        TreeNode.Items items => items.All.SelectMany(Texts),
        TreeNode.Members members => members.All.SelectMany(m => Texts(m.Value)),
        _ => [],
    };
}
