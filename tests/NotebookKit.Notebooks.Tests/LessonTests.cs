using System.Text.Json.Nodes;
using NotebookKit.Runner.Notebooks;

namespace NotebookKit.Notebooks.Tests;

/// <summary>What makes a notebook readable as a lesson, and fit to be kept in the repository.</summary>
public sealed class LessonTests
{
    public static TheoryData<string> Notebooks => NotebookFolder.Cases;

    [Theory, MemberData(nameof(Notebooks))]
    public void Its_code_cells_are_short(string name)
    {
        var size = LessonSize.Of(NotebookFolder.Read(name));
        Assert.True(size.MedianLines <= 6, $"{name}: the median code cell has {size.MedianLines} lines; at most 6.");
        Assert.True(size.LongestLines <= 25, $"{name}: the longest code cell has {size.LongestLines} lines; at most 25.");
    }

    [Theory, MemberData(nameof(Notebooks))]
    public void It_has_more_text_than_code(string name)
    {
        var size = LessonSize.Of(NotebookFolder.Read(name));
        Assert.True(size.TextLetters > size.CodeLetters, $"{name}: {size.TextLetters} letters of text against {size.CodeLetters} of code.");
    }

    [Theory, MemberData(nameof(Notebooks))]
    public void It_starts_with_a_title(string name)
    {
        var first = NotebookFolder.Read(name).Cells[0];
        Assert.Equal(CellKind.Markdown, first.Kind);
        Assert.StartsWith("# ", first.Source, StringComparison.Ordinal);
    }

    [Theory, MemberData(nameof(Notebooks))]
    public void It_is_kept_without_outputs_and_with_ids(string name)
    {
        var notebook = JsonNode.Parse(File.ReadAllText(NotebookFolder.FileOf(name)))!;
        Assert.Equal(4, (int?)notebook["nbformat"]);
        var cells = notebook["cells"]!.AsArray();
        Assert.All(cells, cell => Assert.NotNull((string?)cell!["id"]));
        Assert.Equal(cells.Count, cells.Select(c => (string?)c!["id"]).Distinct().Count());
        foreach (var cell in cells.Where(c => (string?)c!["cell_type"] == "code"))
        {
            Assert.Empty(cell!["outputs"]!.AsArray());
            Assert.Null(cell["execution_count"]);
        }
    }

    [Theory, MemberData(nameof(Notebooks))]
    public void It_needs_no_network_and_names_no_machine_path(string name)
    {
        foreach (var cell in NotebookFolder.Read(name).CodeCells)
        {
            Assert.DoesNotContain("#r ", cell.Source, StringComparison.Ordinal);
            Assert.DoesNotContain("http://", cell.Source, StringComparison.Ordinal);
            Assert.DoesNotContain("https://", cell.Source, StringComparison.Ordinal);
            Assert.DoesNotMatch(@"[""']([A-Za-z]:\\|/(home|root|tmp|Users|work)/)", cell.Source);
        }
    }
}
