using Microsoft.DotNet.Interactive;
using Microsoft.DotNet.Interactive.Commands;
using Microsoft.DotNet.Interactive.Events;
using NotebookKit.Interactive.Help;
using NotebookKit.Runner.Wording;

namespace NotebookKit.Runner.Engine;

/// <summary>Asks the kernel what could stand at a place, and what stands there.</summary>
/// <param name="kernel">The session's kernel.</param>
/// <param name="names">Completes what the compiler can't know.</param>
internal sealed class LanguageHelp(Kernel kernel, NameCompletion names) : ILanguageHelp
{
    private const string MarkdownType = "text/markdown";

    /// <inheritdoc />
    public async Task<CompletionList> CompleteAsync(string code, int position, CancellationToken cancellation)
    {
        position = Math.Clamp(position, 0, code.Length);
        if (names.At(code, position) is { Entries.Count: > 0 } known) return known;
        var start = CodePlace.StartOfName(code, position);
        var begun = code[start..position];
        var result = await Task.Run(() => kernel.SendAsync(new RequestCompletions(code, CodePlace.ToLine(code, position)), cancellation),
            cancellation);
        var found = result.Events.OfType<CompletionsProduced>().LastOrDefault();
        if (found?.LinePositionSpan is { } span && code[start..position].Length == 0) start = Math.Min(position,
            CodePlace.ToPosition(code, span.Start));
        var entries = (found?.Completions ?? [])
            .Where(c => (c.FilterText ?? c.DisplayText).StartsWith(begun, StringComparison.OrdinalIgnoreCase))
            .OrderBy(c => c.DisplayText.StartsWith(begun, StringComparison.Ordinal) ? 0 : 1)
            .ThenBy(c => c.SortText ?? c.DisplayText, StringComparer.Ordinal)
            .Select(c => new CompletionEntry(NameOf(c), c.Kind))
            .DistinctBy(c => c.Text);
        return new CompletionList(start, position, [.. entries]);
    }

    private static int EndOfName(string code, int start)
    {
        var end = start;
        while (end < code.Length && (char.IsLetterOrDigit(code[end]) || code[end] == '_')) end++;
        return end;
    }

    // The inputs of a verb with unit and range: the hover text holds the summary alone.
    private static string Inputs(string name) => string.Concat(LibraryDocs.Named(name).SelectMany(n => n.Parameters)
        .Where(p => p.Text.Length > 0).Distinct().Select(p => $"\n\n{p.Name}: {p.Text}"));

    // Without the type arguments that an editor would have the author fill in.
    private static string NameOf(CompletionItem item)
    {
        var text = item.InsertTextFormat is null && item.InsertText is { } plain ? plain : item.DisplayText;
        return text.IndexOf('<', StringComparison.Ordinal) is > 0 and var end ? text[..end] : text;
    }

    /// <inheritdoc />
    public async Task<Description?> DescribeAsync(string code, int position, CancellationToken cancellation)
    {
        // The place after a name is where a cursor usually stands; the name itself is what is meant.
        position = Math.Clamp(position, 0, code.Length);
        var start = CodePlace.StartOfName(code, position);
        if (start == position && position > 0 && code[position - 1] == '(') start = CodePlace.StartOfName(code, position - 1);
        var place = CodePlace.ToLine(code, start);
        var result = await Task.Run(() => kernel.SendAsync(new RequestHoverText(code, place), cancellation), cancellation);
        var content = result.Events.OfType<HoverTextProduced>().LastOrDefault()?.Content;
        if (content is null || content.Count == 0) return null;
        var markdown = (content.FirstOrDefault(c => c.MimeType == MarkdownType) ?? content.First()).Value.ReplaceLineEndings("\n");
        markdown = (markdown + Inputs(code[start..EndOfName(code, start)])).Trim();
        return new Description(markdown, markdown.Replace("```csharp", "", StringComparison.Ordinal).Replace("```", "",
            StringComparison.Ordinal).Trim());
    }
}
