using System.Text.Json;
using System.Text.Json.Nodes;
using Json.Schema;
using NotebookKit.DesignFiles;
using NotebookKit.DesignFiles.Trees;

namespace NotebookKit.Tests.DesignFiles;

/// <summary>Designs made at random from the schema, against the reader and a general-purpose library for JSON Schema.</summary>
[Trait("Length", "long")]
public class RandomDesignTests
{
    private const int Designs = 400;

    // That library works a schema out anew for every text that it is held against, which takes most of its time: many designs make
    // one text.
    private const int AtOnce = 40;

    private static readonly JsonSchema SchemaOfMany = JsonSchema.FromText(Many());

    private static readonly JsonDocumentOptions WithRemarks = new() { CommentHandling = JsonCommentHandling.Skip,
        AllowTrailingCommas = true };

    [Fact]
    public void Designs_made_at_random_from_the_schema_are_read_written_and_read_again()
    {
        var (read, refused) = (0, new List<string>());
        var keys = new HashSet<string>();
        var valid = new List<JsonNode>();
        var uses = new Dictionary<(JsonNode, string), int>();
        for (var seed = 0; seed < Designs; seed++)
        {
            var made = new RandomDesign(seed, uses).Make();
            valid.Add(made);
            try
            {
                var design = Design.Parse(made.ToJsonString());
                var text = design.ToText();
                var again = Design.Parse(text);
                Assert.Equal(design, again);
                Assert.Equal(text, again.ToText());
                Assert.Equal(design.Givens, again.Givens);
                var back = JsonNode.Parse(text, documentOptions: WithRemarks)!;
                valid.Add(back);
                Assert.True(JsonNode.DeepEquals(made, back));
                Collect(made, keys);
                read++;
            }
            catch (DesignFileException error)
            {
                // What the schema allows is refused only for what parts are together, never for a key or a unit.
                foreach (var mistake in error.Mistakes)
                {
                    Assert.DoesNotContain("isn't known in", mistake.Sentence, StringComparison.Ordinal);
                    Assert.DoesNotContain(" is wanted", mistake.Sentence, StringComparison.Ordinal);
                    Assert.DoesNotContain("has no \"", mistake.Sentence, StringComparison.Ordinal);
                    Assert.DoesNotContain("can't be \"", mistake.Sentence, StringComparison.Ordinal);
                    refused.Add(mistake.Sentence);
                }
            }
        }

        foreach (var some in valid.Chunk(AtOnce)) AssertValid(new JsonArray(some));
        Assert.True(read > Designs / 3, $"{read} of {Designs} were read; refused: {string.Join("\n", refused.Distinct().Take(20))}");
        // Every key of the schema was read in one of them.
        var known = new HashSet<string>();
        Keys(JsonNode.Parse(DesignSchema.Text)!, known);
        Assert.Empty(known.Except(keys).Order());
    }

    [Fact]
    public void A_list_of_designs_is_valid_only_where_each_of_them_is()
    {
        JsonNode Curlew() => JsonNode.Parse(DesignFixture.CurlewText, documentOptions: WithRemarks)!;
        Assert.True(SchemaOfMany.Evaluate(new JsonArray(Curlew(), Curlew())).IsValid);
        var wrong = Curlew();
        wrong["version"] = 2;
        Assert.False(SchemaOfMany.Evaluate(new JsonArray(Curlew(), wrong, Curlew())).IsValid);
        wrong = Curlew();
        wrong["vessel"]!["length"] = "1925 bar gauge";
        Assert.False(SchemaOfMany.Evaluate(new JsonArray(Curlew(), wrong)).IsValid);
    }

    // A list of designs, each by the schema of one.
    private static string Many()
    {
        var one = JsonNode.Parse(DesignSchema.Text)!.AsObject();
        var (dialect, parts) = (one["$schema"], one["$defs"]);
        one.Remove("$schema");
        one.Remove("$defs");
        return new JsonObject { ["$schema"] = dialect, ["type"] = "array", ["items"] = one, ["$defs"] = parts }.ToJsonString();
    }

    private static void AssertValid(JsonArray designs)
    {
        if (SchemaOfMany.Evaluate(designs).IsValid) return;
        var result = SchemaOfMany.Evaluate(designs, new EvaluationOptions { OutputFormat = OutputFormat.List });
        Assert.Fail(string.Join("\n", (result.Details ?? []).Where(d => d.Errors is { Count: > 0 })
            .Select(d => $"{d.InstanceLocation}: {string.Join("; ", d.Errors!.Values)}").Take(20)));
    }

    // Keys of the parts of a design, materials and what stands beside single values apart.
    private static void Keys(JsonNode schema, HashSet<string> keys)
    {
        string[] apart = ["$schema", "materials", "value", "from", "to", "of", "differs"];
        foreach (var (part, shape) in schema["$defs"]!.AsObject())
        {
            if (part.StartsWith("own ", StringComparison.Ordinal) || part.StartsWith("property", StringComparison.Ordinal)
                || part.EndsWith("in part", StringComparison.Ordinal) || part is "materials") continue;
            foreach (var (key, _) in shape!["properties"] as JsonObject ?? [])
                if (!apart.Contains(key)) keys.Add(key);
        }
    }

    private static void Collect(JsonNode? node, HashSet<string> keys)
    {
        if (node is JsonArray items) foreach (var item in items) Collect(item, keys);
        foreach (var (key, value) in node as JsonObject ?? [])
        {
            keys.Add(key);
            Collect(value, keys);
        }
    }
}
