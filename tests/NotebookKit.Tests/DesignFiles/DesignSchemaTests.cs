using System.Text.Json;
using System.Text.Json.Nodes;
using Json.Schema;
using NotebookKit.DesignFiles;
using NotebookKit.DesignFiles.Shapes;
using NotebookKit.DesignFiles.Trees;

namespace NotebookKit.Tests.DesignFiles;

/// <summary>The schema against a general-purpose library for JSON Schema, and against the reader.</summary>
public class DesignSchemaTests
{
    private static readonly JsonSchema Schema = JsonSchema.FromText(DesignSchema.Text);

    private static readonly JsonDocumentOptions WithRemarks = new() { CommentHandling = JsonCommentHandling.Skip,
        AllowTrailingCommas = true };

    [Fact]
    public void The_published_file_is_the_schema_of_the_reader() =>
        Assert.Equal(DesignSchema.Text, File.ReadAllText(DesignFixture.PathOf(DesignSchema.FileName)));

    [Fact]
    public void The_schema_is_valid_by_the_schema_of_schemas() =>
        Assert.True(MetaSchemas.Draft202012.Evaluate(JsonNode.Parse(DesignSchema.Text)).IsValid);

    [Fact]
    public void The_schema_of_a_day_is_valid_and_takes_what_the_reader_takes()
    {
        Assert.True(MetaSchemas.Draft202012.Evaluate(JsonNode.Parse(DesignSchema.DayText)).IsValid);
        const string Day = """
            { "$schema": "day.schema.json", "day": "2026-05-02", "fill order": "booster first",
              "changes": [ { "of": "site.wind.speed", "is": "3 m/s" } ],
              "gear": [ { "kind": "hose", "serial": "H-2", "rated to": "100 bar gauge" } ],
              "vessels": [ { "serial": "C-1", "wall temperature": "15 °C", "resin moisture": "0.5 %", "label": "3f9a-71c2" } ] }
            """;
        var schema = JsonSchema.FromText(DesignSchema.DayText);
        Assert.Equal("C-1", FlightDay.Parse(Day).Vessels[0].Serial);
        Assert.True(schema.Evaluate(JsonNode.Parse(Day)).IsValid);
        foreach (var (right, wrong) in new[] { ("\"gear\"", "\"gaer\""), ("\"15 °C\"", "\"15 bar gauge\""), ("\"hose\"", "\"hoes\"") })
        {
            var text = Day.Replace(right, wrong, StringComparison.Ordinal);
            Assert.Throws<DesignFileException>(() => FlightDay.Parse(text));
            Assert.False(schema.Evaluate(JsonNode.Parse(text)).IsValid, wrong);
        }
    }

    [Theory]
    [InlineData("curlew.json")]
    [InlineData("godwit.json")]
    public void The_designs_of_the_notebooks_are_valid(string file) => AssertValid(Parse(File.ReadAllText(DesignFixture.PathOf(file))));

    [Theory]
    [InlineData("\"fill pressure\": {", "\"fil pressure\": {")]
    [InlineData("\"1925 mm\"", "\"1925 bar gauge\"")]
    [InlineData("\"1925 mm\"", "\"1925\"")]
    [InlineData("\"1925 mm\"", "1925")]
    [InlineData("\"version\": 1", "\"version\": 2")]
    [InlineData("\"name\": \"Curlew\"", "\"name\": \"Cur<b>lew\"")]
    [InlineData("\"entry\": \"rounded\"", "\"entry\": \"round\"")]
    [InlineData("\"kind\": \"tube\"", "\"kind\": \"tub\"")]
    [InlineData("\"weighed\": \"64 g\"", "\"weighed\": \"64 g\", \"estimated\": \"60 g\"")]
    [InlineData("\"count\": 3", "\"count\": 9")]
    [InlineData("\"at most\": 1,", "")]
    [InlineData("\"from\": \"50 mm\"", "\"form\": \"50 mm\"")]
    public void The_schema_refuses_what_the_reader_refuses(string right, string wrong)
    {
        var at = DesignFixture.CurlewText.IndexOf(right, StringComparison.Ordinal);
        var text = DesignFixture.CurlewText.Remove(at, right.Length).Insert(at, wrong);
        Assert.False(Schema.Evaluate(Parse(text)).IsValid);
        Assert.Throws<DesignFileException>(() => Design.Parse(text));
    }

    [Fact]
    public void Every_unit_of_the_schema_is_read()
    {
        foreach (var kind in UnitKind.All)
        {
            Assert.NotNull(kind.Read(kind.Example));
            var word = kind.Noun is "gauge pressure" ? " gauge" : kind.Noun is "absolute pressure" ? " absolute" : "";
            Assert.All(kind.Units, unit => Assert.NotNull(kind.Read($"12.5 {unit}{word}")));
            Assert.Null(kind.Read("12.5"));
            Assert.Null(kind.Read($"12.5 {kind.Units[0]}{word}\n"));
        }
    }

    [Fact]
    public void Defaults_of_the_schema_are_values_that_the_reader_takes()
    {
        foreach (var design in new[] { DesignFixture.Curlew, DesignFixture.Godwit })
            Assert.All(design.Defaults, d => Assert.Equal(d.Value, design.With(d.Path, d.Value).Givens.Single(g =>
                g.Path == d.Path).Value));
    }

    private static JsonNode Parse(string text) => JsonNode.Parse(text, documentOptions: WithRemarks)!;

    private static void AssertValid(JsonNode design)
    {
        var result = Schema.Evaluate(design, new EvaluationOptions { OutputFormat = OutputFormat.List });
        Assert.True(result.IsValid, string.Join("\n", (result.Details ?? []).Where(d => d.Errors is { Count: > 0 })
            .Select(d => $"{d.InstanceLocation}: {string.Join("; ", d.Errors!.Values)}").Take(20)));
    }
}
