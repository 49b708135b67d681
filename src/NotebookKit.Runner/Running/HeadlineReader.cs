using System.Text.Json;
using NotebookKit.Record;
using NotebookKit.Runner.Engine;
using NotebookKit.Runner.Notebooks;

namespace NotebookKit.Runner.Running;

/// <summary>Finds the main numbers among what a cell shows.</summary>
internal static class HeadlineReader
{
    /// <summary>The main numbers of a cell that has run; text of that type that can't be read is no main number.</summary>
    /// <param name="cell">Cell.</param>
    public static IReadOnlyList<Headline> Read(NotebookCell cell)
    {
        var found = new List<Headline>();
        foreach (var output in cell.Outputs)
        {
            if (output?["data"]?[MediaTypes.Headline] is not { } json) continue;
            try
            {
                found.AddRange(json.Deserialize<List<Headline>>() ?? []);
            }
            catch (JsonException)
            {
                continue;
            }
        }

        return found;
    }
}
