using System.Text.Json.Nodes;
using Json.Schema;
using NotebookKit.Runner.Notebooks;

namespace NotebookKit.Runner.Tests.Running;

[Collection(AllFixturesTests.Name)]
public sealed class ExecutedFileTests(AllFixturesRun all)
{
    // The published schema is written in draft 4; what it uses of it means the same in draft 6, which the validator reads.
    private static readonly JsonSchema Published = JsonSchema.FromText(
        File.ReadAllText(TestFolder.Fixture("nbformat.v4.5.schema.json")).Replace("http://json-schema.org/draft-04/schema#",
            "http://json-schema.org/draft-06/schema#", StringComparison.Ordinal));

    [Fact]
    public void Every_executed_file_is_valid_by_the_published_schema()
    {
        var files = Directory.GetFiles(Path.Combine(all.Output, "notebooks"), "*.ipynb");
        Assert.True(files.Length > 10);
        foreach (var file in files)
        {
            var result = Published.Evaluate(JsonNode.Parse(File.ReadAllText(file)),
                new EvaluationOptions { OutputFormat = OutputFormat.List });
            var problems = (result.Details ?? []).Where(d => d.Errors
                is { Count: > 0 }).Select(d => $"{d.InstanceLocation}: {string.Join("; ", d.Errors!.Values)}");
            Assert.True(result.IsValid, Path.GetFileName(file) + "\n" + string.Join('\n', problems));
        }
    }

    [Fact]
    public void The_schema_refuses_a_wrong_file()
    {
        var wrong = JsonNode.Parse(all.Executed("passes"))!;
        wrong["cells"]![2]!["outputs"]![0]!["output_type"] = "picture";
        Assert.False(Published.Evaluate(wrong).IsValid);
    }

    [Fact]
    public void Only_outputs_and_counts_differ_from_the_input()
    {
        var before = JsonNode.Parse(File.ReadAllText(all.Input("passes")))!.AsObject();
        var after = JsonNode.Parse(all.Executed("passes"))!.AsObject();
        foreach (var notebook in new[] { before, after })
        {
            foreach (var cell in notebook["cells"]!.AsArray())
            {
                cell!.AsObject().Remove("outputs");
                cell.AsObject().Remove("execution_count");
            }
        }

        Assert.True(JsonNode.DeepEquals(before, after));
        Assert.True((bool)after["metadata"]!["invented"]!["kept"]!);
    }

    [Fact]
    public void Counts_run_from_one_and_skip_empty_cells()
    {
        var counts = JsonNode.Parse(all.Executed("passes"))!["cells"]!.AsArray()
            .Where(c => (string?)c!["cell_type"] == "code").Select(c => (int?)c!["execution_count"]);
        Assert.Equal([1, 2, 3, null, 4], counts);
    }

    [Fact]
    public void A_figure_is_stored_as_an_object()
    {
        var output = JsonNode.Parse(all.Executed("passes"))!["cells"]![4]!["outputs"]![0]!;
        Assert.IsType<JsonObject>(output["data"]!["application/vnd.plotly.v1+json"]);
        Assert.NotNull(output["data"]!["text/plain"]);
    }

    [Fact]
    public void The_two_consoles_stay_apart()
    {
        var outputs = JsonNode.Parse(all.Executed("passes"))!["cells"]![7]!["outputs"]!.AsArray();
        Assert.Equal(["stdout", "stderr"], outputs.Select(o => (string?)o!["name"]));
        Assert.Equal("to the console\n", NotebookCell.TextOf(outputs[0]!["text"]));
    }

    [Fact]
    public void An_update_takes_the_place_of_what_it_updates()
    {
        var outputs = JsonNode.Parse(all.Executed("updates"))!["cells"]![0]!["outputs"]!.AsArray();
        Assert.Equal("100 %", (string?)Assert.Single(outputs)!["data"]!["text/plain"]);
    }

    [Fact]
    public void Cells_without_ids_get_the_same_ids_in_every_run()
    {
        var notebook = JsonNode.Parse(all.Executed("no-ids"))!;
        Assert.Equal(5, (int?)notebook["nbformat_minor"]);
        Assert.Equal(["cell-1", "cell-2"], notebook["cells"]!.AsArray().Select(c => (string?)c!["id"]));
    }

    [Fact]
    public void Cells_find_files_beside_their_notebook() =>
        Assert.Contains("found beside the notebook", all.Executed("reads-a-file"), StringComparison.Ordinal);

    [Fact]
    public void Attachments_survive() =>
        Assert.NotNull(JsonNode.Parse(all.Executed("attachment"))!["cells"]![0]!["attachments"]!["dot.png"]!["image/png"]);

    [Fact]
    public void Cells_after_a_failure_run_where_they_need_nothing_of_the_failed_one() =>
        Assert.Equal("runs all the same",
            (string?)JsonNode.Parse(all.Executed("throws"))!["cells"]![3]!["outputs"]![0]!["data"]!["text/plain"]);

    [Fact]
    public void Cells_after_a_lost_session_say_that_they_were_not_computed()
    {
        var last = JsonNode.Parse(all.Executed("ends-the-process"))!["cells"]!.AsArray().Last(c => (string?)c!["cell_type"] == "code")!;
        Assert.Equal("Not computed: cell 2 ended the session and everything in it.",
            (string?)Assert.Single(last["outputs"]!.AsArray())!["data"]!["text/plain"]);
        Assert.Null(last["execution_count"]);
    }
}
