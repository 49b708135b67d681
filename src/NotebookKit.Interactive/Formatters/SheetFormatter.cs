using System.Text.Json;
using NotebookKit.Provenance;
using NotebookKit.Sheets;

namespace NotebookKit.Interactive.Formatters;

/// <summary>A sheet on screen: its result, then every section whole. On paper the runner writes it as a page of its own.</summary>
internal static class SheetFormatter
{
    /// <summary>A flight's sheet itself, for the program that runs notebooks and writes the paper.</summary>
    public const string Mime = "application/vnd.notebookkit.sheet+json";

    public static void Html(ISheet sheet, TextWriter writer)
    {
        ResultFormatter.Html(sheet, writer);
        foreach (var section in sheet.Content.Sections)
        {
            ListFormatter.Html([section.Heading, .. section.Steps.Select(s => $"[ ] {s}"), .. section.Rules], writer);
            LinesFormatter.Html(section.Facts, writer);
        }
    }

    public static void Plain(ISheet sheet, TextWriter writer)
    {
        ResultFormatter.Plain(sheet, writer);
        foreach (var section in sheet.Content.Sections)
        {
            writer.WriteLine(section.Heading);
            LinesFormatter.Plain(section.Facts, writer);
            ListFormatter.Plain([.. section.Steps.Select(s => $"  [ ] {s}"), .. section.Rules.Select(r => $"  {r}")], writer);
        }
    }

    /// <summary>The sheet's content as JSON.</summary>
    /// <param name="sheet">The sheet.</param>
    /// <param name="changed">What the run has changed, a sentence; empty where it changed nothing.</param>
    public static string Json(ISheet sheet, string changed) => JsonSerializer.Serialize(changed.Length == 0 ? sheet.Content
        : sheet.Content with { Findings = [Finding.Warning($"Changed givens: {changed}"), .. sheet.Content.Findings] });
}
