using Microsoft.DotNet.Interactive;
using Microsoft.DotNet.Interactive.Commands;
using Microsoft.DotNet.Interactive.Events;

namespace NotebookKit.Runner.Engine;

/// <summary>Asks the kernel what could stand at a place, and what stands there.</summary>
/// <param name="kernel">The session's kernel.</param>
internal sealed class LanguageHelp(Kernel kernel) : ILanguageHelp
{
    private const string MarkdownType = "text/markdown";

    /// <inheritdoc />
    public async Task<CompletionList> CompleteAsync(string code, int position, CancellationToken cancellation)
    {
        position = Math.Clamp(position, 0, code.Length);
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
        return new Description(markdown, markdown.Replace("```csharp", "", StringComparison.Ordinal).Replace("```", "",
            StringComparison.Ordinal).Trim());
    }
}
