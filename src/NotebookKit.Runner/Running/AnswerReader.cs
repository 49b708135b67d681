using System.Text.Json;
using System.Text.Json.Nodes;
using NotebookKit.Interactive.Formatters;
using NotebookKit.Record;
using NotebookKit.Runner.Engine;
using NotebookKit.Runner.Notebooks;
using NotebookKit.Sheets;

namespace NotebookKit.Runner.Running;

/// <summary>Finds the main numbers and the decisions among what a cell shows.</summary>
internal static class AnswerReader
{
    /// <summary>The main numbers of a cell that has run; text of that type that can't be read is no main number.</summary>
    /// <param name="cell">Cell.</param>
    public static IEnumerable<Headline> Numbers(NotebookCell cell) => Read<List<Headline>>(cell, MediaTypes.Headline).SelectMany(n => n);

    /// <summary>The decisions of a cell that has run; one that can't be read, or had nothing to decide, is none.</summary>
    /// <param name="cell">Cell.</param>
    public static IEnumerable<MainVerdict> Verdicts(NotebookCell cell) =>
        Read<MainVerdict>(cell, MediaTypes.Verdict).Where(v => v is { Subject.Length: > 0, Words.Length: > 0, Remark: not null });

    /// <summary>The sheets of a cell that has run; one that can't be read is none.</summary>
    /// <param name="cell">Cell.</param>
    public static IEnumerable<SheetContent> Sheets(NotebookCell cell) =>
        Read<SheetContent>(cell, MediaTypes.Sheet).Where(s => s is { Title.Length: > 0, Sections: not null });

    /// <summary>The design records of a cell that has run; one that can't be read is none.</summary>
    /// <param name="cell">Cell.</param>
    public static IEnumerable<DesignRecord> Records(NotebookCell cell)
    {
        foreach (var json in Read<JsonObject>(cell, MediaTypes.Record))
        {
            DesignRecord? record = null;
            try
            {
                record = DesignRecord.FromJson(json.ToJsonString());
            }
            catch (FormatException)
            {
                continue;
            }

            yield return record;
        }
    }

    private static List<T> Read<T>(NotebookCell cell, string mediaType)
    {
        var found = new List<T>();
        foreach (var output in cell.Outputs)
        {
            if (output?["data"]?[mediaType] is not { } json) continue;
            try
            {
                if (json.Deserialize<T>() is { } value) found.Add(value);
            }
            catch (JsonException)
            {
                continue;
            }
        }

        return found;
    }
}
