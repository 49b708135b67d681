using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Json.Nodes;
using NotebookKit.DesignFiles.Keys;
using NotebookKit.DesignFiles.Shapes;

namespace NotebookKit.DesignFiles;

/// <summary>The JSON Schemas of design files and of files of a day: editors complete and check a file by them. Made from the tables that
/// the readers read by.</summary>
public static class DesignSchema
{
    /// <summary>Name of the file that the schema of designs is published in.</summary>
    public const string FileName = "design.schema.json";

    /// <summary>Name of the file that the schema of days is published in.</summary>
    public const string DayFileName = "day.schema.json";

    private static readonly JsonSerializerOptions Format = new()
    {
        WriteIndented = true,
        NewLine = "\n",
        Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping,
    };

    /// <summary>The schema of designs, draft 2020-12.</summary>
    public static string Text { get; } = Make(DesignKeys.All.Schema, "Design of a pressurised-water rocket",
        "JSON with comments. Every value has its unit; what is left out is not given, or a default that is named here.");

    /// <summary>The schema of what is measured and decided on the day of a flight, draft 2020-12.</summary>
    public static string DayText { get; } = Make(DayKeys.All.Schema, "Day of a flight",
        "JSON with comments. What is left out is not given, and the flight card says so.");

    private static string Make(Func<SchemaBook, JsonObject> of, string title, string description)
    {
        var book = new SchemaBook();
        var design = of(book);
        var schema = new JsonObject
        {
            ["$schema"] = "https://json-schema.org/draft/2020-12/schema",
            ["title"] = title,
            ["description"] = description,
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
