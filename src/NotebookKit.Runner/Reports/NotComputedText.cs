using System.Globalization;

namespace NotebookKit.Runner.Reports;

/// <summary>Says how many cells a failure left without a value.</summary>
internal static class NotComputedText
{
    /// <summary>"2 of 9 cells were not computed."; empty where all were.</summary>
    /// <param name="missing">Code cells that weren't run.</param>
    /// <param name="all">Code cells of the notebook.</param>
    public static string Of(int missing, int all) => missing == 0 ? "" : string.Create(
        CultureInfo.InvariantCulture, $"{missing} of {all} cells {(missing == 1 ? "was" : "were")} not computed.");
}
