using System.Globalization;
using System.Text.Json.Nodes;
using System.Text.RegularExpressions;

namespace NotebookKit.Notebooks.Tests;

/// <summary>What an executed notebook says: its text, and the lines of its results.</summary>
internal sealed partial class ShownLesson
{
    private readonly IReadOnlyList<string> _lines;

    public ShownLesson(string executedFile)
    {
        var cells = JsonNode.Parse(File.ReadAllText(executedFile))!["cells"]!.AsArray().OfType<JsonNode>().ToList();
        var texts = cells.Where(c => (string?)c["cell_type"] == "markdown").Select(c => Joined(c["source"]));
        Text = Space().Replace(string.Join(' ', texts), " ");
        _lines = [.. cells.SelectMany(c => (IEnumerable<JsonNode?>?)c["outputs"]?.AsArray() ?? []).SelectMany(o =>
            Joined(o?["data"]?["text/plain"]).Split('\n')).Select(l => l.Trim())];
    }

    /// <summary>The text between the code, with single spaces.</summary>
    public string Text { get; }

    /// <summary>How many lines hold the words.</summary>
    public int Count(string words) => _lines.Count(l => l.Contains(words, StringComparison.Ordinal));

    /// <summary>What stands after the label in its line; in the second such line for 1, and so on.</summary>
    public string After(string label, int occurrence = 0)
    {
        var line = _lines.Where(l => l.StartsWith(label, StringComparison.Ordinal)).ElementAtOrDefault(occurrence);
        Assert.True(line is not null, $"No line {occurrence + 1} starts with \"{label}\".");
        return line[label.Length..];
    }

    /// <summary>The numbers after the label, in order: the value first, then those of its remark.</summary>
    public IReadOnlyList<double> Numbers(string label, int occurrence = 0) => [.. Number().Matches(After(label, occurrence))
        .Select(m => double.Parse(m.Value.Replace('−', '-'), CultureInfo.InvariantCulture))];

    private static string Joined(JsonNode? text) =>
        text is JsonArray parts ? string.Concat(parts.Select(p => (string?)p)) : (string?)text ?? "";

    [GeneratedRegex(@"\s+")]
    private static partial Regex Space();

    [GeneratedRegex(@"(?<![\w.])[−-]?\d+(?:\.\d+)?")]
    private static partial Regex Number();
}
