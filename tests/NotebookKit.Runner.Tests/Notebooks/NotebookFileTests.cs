using System.Text.Json.Nodes;
using NotebookKit.Runner.Engine;
using NotebookKit.Runner.Notebooks;

namespace NotebookKit.Runner.Tests.Notebooks;

public sealed class NotebookFileTests
{
    private static NotebookFile Parse(string cells, int major = 4) =>
        NotebookFile.Parse("x.ipynb", $$"""{"cells": [{{cells}}], "metadata": {}, "nbformat": {{major}}, "nbformat_minor": 5}""");

    [Theory]
    [InlineData("\"a\\nb\"")]
    [InlineData("[\"a\\n\", \"b\"]")]
    public void Source_may_be_one_string_or_lines(string source) => Assert.Equal(
        "a\nb", Parse($$"""{"cell_type": "code", "id": "a", "metadata": {}, "source": {{source}}, "outputs": [], "execution_count": null}""").Cells[0].Source);

    [Fact]
    public void An_old_format_is_refused_with_a_remedy() =>
        Assert.Contains("current front-end", Assert.Throws<NotebookFormatException>(() => Parse("", major: 3)).Message,
            StringComparison.Ordinal);

    [Theory]
    [InlineData("3")]
    [InlineData("{\"cell_type\": \"heading\"}")]
    public void A_strange_cell_is_refused_by_its_place(string cell) =>
        Assert.Contains("Entry 1", Assert.Throws<NotebookFormatException>(() => Parse(cell)).Message, StringComparison.Ordinal);

    [Theory]
    [InlineData("")]
    [InlineData("[1")]
    [InlineData("nothing")]
    public void What_is_not_JSON_is_refused(string text) =>
        Assert.Contains("not JSON", Assert.Throws<NotebookFormatException>(() => NotebookFile.Parse("x.ipynb", text)).Message,
            StringComparison.Ordinal);

    [Fact]
    public void Text_is_written_as_it_is_and_line_ends_are_plain()
    {
        var text = Parse("""{"cell_type": "markdown", "id": "a", "metadata": {}, "source": "σ < π"}""").ToText();
        Assert.Contains("σ < π", text, StringComparison.Ordinal);
        Assert.DoesNotContain('\r', text);
        Assert.EndsWith("}\n", text, StringComparison.Ordinal);
    }

    [Fact]
    public void A_file_is_replaced_whole_and_leaves_nothing_beside_it()
    {
        using var folder = new TestFolder();
        AtomicFile.Write(folder["deep", "x.txt"], "one");
        AtomicFile.Write(folder["deep", "x.txt"], "two");
        Assert.Equal("two", File.ReadAllText(folder["deep", "x.txt"]));
        Assert.Single(Directory.EnumerateFiles(folder["deep"]));
    }

    [Fact]
    public void Many_small_writes_become_one_stream_output()
    {
        var recorder = new OutputRecorder();
        recorder.Begin(1);
        for (var i = 0; i < 100_000; i++) recorder.Add(new StreamOutput("stdout", "x"));
        recorder.Add(new StreamOutput("stderr", "y"));
        var outputs = recorder.End();
        Assert.Equal(2, outputs.Count);
        Assert.Equal(100_000, ((string?)outputs[0]!["text"])!.Length);
    }

    [Fact]
    public void A_display_is_updated_in_the_cell_that_showed_it()
    {
        var recorder = new OutputRecorder();
        recorder.Begin(1);
        recorder.Add(new DisplayOutput(new JsonObject { ["text/plain"] = "0 %" }, "bar"));
        var first = recorder.End();
        recorder.Begin(2);
        recorder.Add(new UpdateOutput(new JsonObject { ["text/plain"] = "100 %" }, "bar"));
        Assert.Empty(recorder.End());
        Assert.Equal("100 %", (string?)first[0]!["data"]!["text/plain"]);
    }
}
