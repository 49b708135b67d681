using System.Text.Json.Nodes;

namespace NotebookKit.DesignFiles.Shapes;

/// <summary>Collects the parts of a JSON Schema that more than one place refers to.</summary>
internal sealed class SchemaBook
{
    private readonly SortedDictionary<string, JsonObject> _parts = new(StringComparer.Ordinal);

    /// <summary>A reference to a part, made the first time it is asked for.</summary>
    public JsonObject Refer(string name, Func<JsonObject> make)
    {
        if (!_parts.ContainsKey(name))
        {
            // A part may refer to itself while it is made.
            _parts[name] = [];
            _parts[name] = make();
        }

        return new JsonObject { ["$ref"] = $"#/$defs/{name.Replace(" ", "%20", StringComparison.Ordinal)}" };
    }

    /// <summary>All parts by name.</summary>
    public JsonObject Parts()
    {
        var all = new JsonObject();
        foreach (var (name, part) in _parts) all[name] = part;
        return all;
    }

    public static JsonArray Words(IEnumerable<string> words) => [.. words.Select(w => (JsonNode)JsonValue.Create(w))];

    /// <summary>A single value, as such, taken over from another place, or stated with reason and, where values have an order,
    /// limits.</summary>
    public JsonObject Stated(string name, JsonObject bare, bool hasOrder) => Refer($"{name}, a value", () =>
    {
        var properties = new JsonObject { ["value"] = Refer($"{name}, bare", () => bare) };
        if (hasOrder)
        {
            properties["from"] = Refer($"{name}, bare", () => bare);
            properties["to"] = Refer($"{name}, bare", () => bare);
        }

        properties["why"] = new JsonObject { ["type"] = "string", ["description"] = "Why it has this value." };
        return new()
        {
            ["anyOf"] = new JsonArray(
                Refer($"{name}, bare", () => bare),
                Refer("taken over", () => new()
                {
                    ["type"] = "string",
                    ["pattern"] = "^= .+",
                    ["description"] = "Taken over from another value: \"= nozzle.throat\", \"= nozzle.throat + 3 mm\".",
                }),
                new JsonObject
                {
                    ["type"] = "object",
                    ["description"] = "The value with its reason"
                        + (hasOrder ? " and, where they are narrower than the program's, its limits." : "."),
                    ["properties"] = properties,
                    ["required"] = new JsonArray("value"),
                    ["additionalProperties"] = false,
                }),
        };
    });
}
