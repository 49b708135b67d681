using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Json.Nodes;
using NotebookKit.DesignFiles.Keys;
using NotebookKit.DesignFiles.Shapes;

namespace NotebookKit.DesignFiles;

/// <summary>The JSON Schema of design files: editors complete and check a file by it. Made from the table that the reader reads
/// by.</summary>
public static class DesignSchema
{
    /// <summary>Name of the file that it is published in.</summary>
    public const string FileName = "design.schema.json";

    private static readonly JsonSerializerOptions Format = new()
    {
        WriteIndented = true,
        NewLine = "\n",
        Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping,
    };

    /// <summary>The schema, draft 2020-12.</summary>
    public static string Text { get; } = Make();

    private static string Make()
    {
        var book = new SchemaBook();
        var design = DesignKeys.All.Schema(book);
        var schema = new JsonObject
        {
            ["$schema"] = "https://json-schema.org/draft/2020-12/schema",
            ["title"] = "Design of a pressurised-water rocket",
            ["description"] = "JSON with comments. Every value has its unit; what is left out is not given, or a default that "
                + "is named here.",
        };
        foreach (var (key, part) in design.ToList())
        {
            design.Remove(key);
            schema[key] = part;
        }

        schema["$defs"] = book.Parts();
        return schema.ToJsonString(Format) + "\n";
    }
}
