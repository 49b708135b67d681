using System.Text.Json;
using NotebookKit.DesignFiles.Shapes;

namespace NotebookKit.Live.Answers;

/// <summary>What a page hands over: numbers in the units that the key names, and texts.</summary>
internal static class ReadingJson
{
    /// <summary>A number; none where nothing was typed.</summary>
    public static double? Number(JsonElement owner, string key) =>
        owner.TryGetProperty(key, out var value) && value.ValueKind == JsonValueKind.Number ? value.GetDouble() : null;

    /// <summary>A text; empty where nothing was typed.</summary>
    public static string Text(JsonElement owner, string key) =>
        owner.TryGetProperty(key, out var value) && value.ValueKind == JsonValueKind.String ? value.GetString()!.Trim() : "";

    /// <summary>The items of a list; none where there is none.</summary>
    public static IEnumerable<JsonElement> Items(JsonElement owner, string key) =>
        owner.TryGetProperty(key, out var value) && value.ValueKind == JsonValueKind.Array ? value.EnumerateArray() : [];

    /// <summary>A value with its unit, as a design file writes it; none where nothing was typed.</summary>
    /// <exception cref="FormatException">It isn't one; says what one looks like.</exception>
    public static T? Quantity<T>(JsonElement owner, string key, string what) where T : struct
    {
        var text = Text(owner, key);
        if (text.Length == 0) return null;
        return UnitKind.Of<T>().Read(text) is T value ? value : throw new FormatException(UnitKind.Of<T>().Refusal(what, text));
    }
}
