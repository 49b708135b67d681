using Microsoft.DotNet.Interactive.Formatting;

namespace NotebookKit.Runner.Engine;

/// <summary>How values without a formatter of ours show: simple ones as plain text, all others as a table with plain text beside
/// it.</summary>
internal static class PlainFormatting
{
    private static readonly Type[] Simple =
    [
        typeof(bool), typeof(char), typeof(string), typeof(byte), typeof(short), typeof(int), typeof(long), typeof(ushort), typeof(uint),
            typeof(ulong),
        typeof(float), typeof(double), typeof(decimal), typeof(DateTime), typeof(DateTimeOffset), typeof(TimeSpan), typeof(Guid),
            typeof(Enum),
    ];

    /// <summary>Registers the preferences; registering again changes nothing.</summary>
    public static void Register()
    {
        Formatter.SetPreferredMimeTypesFor(typeof(object), MediaTypes.Html, MediaTypes.Text);
        foreach (var type in Simple) Formatter.SetPreferredMimeTypesFor(type, MediaTypes.Text);
    }
}
