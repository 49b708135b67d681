using System.Globalization;
using System.Text.Json.Nodes;
using NotebookKit.DesignFiles;

namespace NotebookKit.Tests.DesignFiles;

/// <summary>Designs at random, made from the published schema alone; keys and forms that were used least come first.</summary>
internal sealed class RandomDesign(int seed, Dictionary<(JsonNode Schema, string Key), int> uses)
{
    private static readonly JsonNode Schema = JsonNode.Parse(DesignSchema.Text)!;

    private readonly Random _random = new(seed);
    private int _names;

    public JsonObject Make()
    {
        var design = (JsonObject)Of(Schema[_random.Next(3) == 0 ? "then" : "else"]!, null)!;
        design["version"] = 1;
        design.Remove("$schema");
        // New materials need properties that go together, which no schema says.
        design.Remove("materials");
        foreach (var stage in design["stages"] is JsonObject stages ? stages.Select(s => s.Value!) : [design]) Mend((JsonObject)stage);
        Mend(design["requirements"] as JsonArray, design["decisions"] as JsonArray);
        Thin(design);
        return design;
    }

    // Heights of a table rise, and examples are all alike: one row is left.
    private static void Thin(JsonNode? node)
    {
        if (node is JsonArray rows && rows.Count > 1 && rows.All(r => r is JsonObject row && row.ContainsKey("height")))
            while (rows.Count > 1) rows.RemoveAt(1);
        foreach (var child in node is JsonArray array ? array.ToList() : node is JsonObject made ? [.. made.Select(m => m.Value)] : [])
            Thin(child);
    }

    // What a schema can't say: names that belong together, rows that rise.
    private static void Mend(JsonObject stage)
    {
        // A part of a vessel makes sense only over the vessel that it is laid on.
        foreach (var test in (stage["evidence"]?["tests"] as JsonArray ?? []).Select(t => (JsonObject)t!))
        {
            test.Remove("differs");
            // What a growth may be off by, and where it was read, make sense only beside the growth.
            if (test.ContainsKey("growth")) continue;
            test.Remove("growth uncertainty");
            test.Remove("growth at");
        }

        foreach (var mass in (stage["masses"] as JsonArray ?? []).Select(m => (JsonObject)m!))
        {
            mass.Remove("of");
            mass.TryAdd("at", "140 mm");
            if (!mass.ContainsKey("weighed")) mass.TryAdd("estimated", "62 g");
        }
    }

    private static void Mend(JsonArray? requirements, JsonArray? decisions)
    {
        foreach (var decision in decisions ?? [])
            decision!["stays right while"] = requirements?.FirstOrDefault()?["name"]?.GetValue<string>() ?? "none";
        if (requirements is null or { Count: 0 }) decisions?.Clear();
    }

    private JsonNode? Of(JsonNode schema, JsonArray? examples)
    {
        examples = schema["examples"] as JsonArray ?? examples;
        if (schema["$ref"] is { } reference)
        {
            var part = Schema["$defs"]![Uri.UnescapeDataString(reference.GetValue<string>()["#/$defs/".Length..])]!;
            if (schema["minimum"] is null) return Of(part, examples);
            part = part.DeepClone();
            foreach (var limit in new[] { "minimum", "maximum" }) Limit(part, limit, schema[limit]!);
            return Of(part, examples);
        }

        if (schema["enum"] is JsonArray words) return words[_random.Next(words.Count)]!.DeepClone();
        if ((schema["anyOf"] ?? schema["oneOf"]) is JsonArray forms && schema["properties"] is null) return Of(Form(forms), examples);
        return (string?)schema["type"] switch
        {
            "object" => Object((JsonObject)schema, examples),
            "array" => new JsonArray([.. Enumerable.Range(0, Count(schema)).Select(_ => Of(schema["items"]!, null))]),
            "integer" => (JsonNode)_random.Next((int)Number(schema, "minimum", 0), (int)Math.Min(Number(schema, "maximum", 9), 60) + 1),
            "number" => Number(schema, "minimum", 0) + (_random.NextDouble() * (Number(schema, "maximum", 1) - Number(schema, "minimum",
                0))),
            "boolean" => (JsonNode)(_random.Next(2) == 0),
            _ => Text(schema, examples),
        };
    }

    private JsonNode Form(JsonArray forms)
    {
        List<JsonNode> own = [.. forms.Select(f => f!).Where(f => (string?)f["$ref"] != "#/$defs/taken%20over")];
        return Used(_random.Next(2) == 0 ? own.MinBy(f => uses.GetValueOrDefault((f, "")))! : own[_random.Next(own.Count)], "");
    }

    private JsonObject Object(JsonObject schema, JsonArray? examples)
    {
        var needed = (schema["required"] as JsonArray ?? []).Select(r => r!.GetValue<string>()).ToHashSet();
        var left = new HashSet<string>();
        foreach (var rule in schema["allOf"] as JsonArray ?? [])
        {
            var pair = rule!["oneOf"] is JsonArray one ? one.Select(o => o!["required"]![0]!.GetValue<string>()).ToArray()
                : rule["not"]!["required"]!.AsArray().Select(r => r!.GetValue<string>()).ToArray();
            var taken = _random.Next(2);
            left.Add(pair[1 - taken]);
            if (rule["oneOf"] is not null) needed.Add(pair[taken]);
        }

        var made = new JsonObject();
        foreach (var key in schema["properties"]!.AsObject().Select(p => p.Key).OrderBy(_ => _random.Next()).ToList())
        {
            if (key is "from" or "to" && schema["properties"]!["value"] is not null) continue;
            if (!left.Contains(key) && (needed.Contains(key) || uses.GetValueOrDefault((schema, key)) < 12 || _random.Next(4) == 0))
                made[key] = Of(Used(schema, key)["properties"]![key]!, key is "value" ? examples : null);
        }

        return made;
    }

    private JsonNode Text(JsonNode schema, JsonArray? examples)
    {
        if (examples is { Count: > 0 }) return examples[_random.Next(examples.Count)]!.DeepClone();
        var about = (string?)schema["description"] ?? "";
        // A kind of value without a range names its example in its text.
        return about.StartsWith("For example", StringComparison.Ordinal) ? about.Split('"')[1]
            : string.Create(CultureInfo.InvariantCulture, $"text {++_names}");
    }

    private JsonNode Used(JsonNode schema, string key)
    {
        uses[(schema, key)] = uses.GetValueOrDefault((schema, key)) + 1;
        return schema;
    }

    private int Count(JsonNode schema)
    {
        var least = (int)Number(schema, "minItems", 0);
        return Math.Min(least + _random.Next(3), (int)Number(schema, "maxItems", 3));
    }

    private static void Limit(JsonNode part, string limit, JsonNode number)
    {
        if ((string?)part["anyOf"]![0]!["$ref"] is { } bare)
            part["anyOf"]![0] = Schema["$defs"]![Uri.UnescapeDataString(bare["#/$defs/".Length..])]!.DeepClone();
        part["anyOf"]![0]![limit] = number.DeepClone();
        part["anyOf"]![2]!["properties"]!["value"] = part["anyOf"]![0]!.DeepClone();
    }

    private static double Number(JsonNode schema, string key, double otherwise) => schema[key]?.GetValue<double>() ?? otherwise;
}
