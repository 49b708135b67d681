using System.Globalization;

namespace NotebookKit.Charts;

/// <summary>Counts as people read them: "5 000".</summary>
internal static class WholeNumber
{
    private static readonly NumberFormatInfo Grouped = new() { NumberGroupSeparator = "\u202F" };

    public static string Show(int count) => count.ToString("#,0", Grouped);
}
