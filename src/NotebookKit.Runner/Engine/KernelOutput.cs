using System.Text.Json.Nodes;
using Microsoft.DotNet.Interactive.Events;

namespace NotebookKit.Runner.Engine;

/// <summary>Turns the kernel's events into outputs of ours.</summary>
internal static class KernelOutput
{
    /// <summary>The output an event stands for; none where it stands for nothing shown.</summary>
    /// <param name="event">Event of the kernel.</param>
    public static CellOutput? From(KernelEvent @event) => @event switch
    {
        StandardOutputValueProduced e => new StreamOutput("stdout", TextOf(e)),
        StandardErrorValueProduced e => new StreamOutput("stderr", TextOf(e)),
        ReturnValueProduced e => new ResultOutput(DataOf(e)),
        DisplayedValueUpdated e => new UpdateOutput(DataOf(e), e.ValueId),
        DisplayedValueProduced e => new DisplayOutput(DataOf(e), e.ValueId),
        _ => null,
    };

    /// <summary>Size of an event's text [bytes, counting two a character].</summary>
    /// <param name="event">Event of the kernel.</param>
    public static long SizeOf(KernelEvent @event) =>
        @event is DisplayEvent shown ? shown.FormattedValues.Sum(v => 2L * v.Value.Length) : 0;

    private static string TextOf(DisplayEvent e) => string.Concat(e.FormattedValues.Take(1).Select(v => v.Value));

    private static JsonObject DataOf(DisplayEvent e)
    {
        var data = new JsonObject();
        foreach (var value in e.FormattedValues) data[value.MimeType] = MediaTypes.Store(value.MimeType, value.Value);
        return data;
    }
}
