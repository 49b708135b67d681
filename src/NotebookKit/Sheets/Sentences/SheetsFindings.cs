using NotebookKit.Provenance;

namespace NotebookKit.Sheets;

/// <summary>The sentences of the sheets' findings, in one place.</summary>
internal static class SheetsFindings
{
    // Sheets/FlightSheet
    internal static Finding NotShown(IReadOnlyList<string> pieces) =>
        Finding.Error($"Not shown: {string.Join(", ", pieces)}. A piece that isn't shown forbids the flight; show it and print the card "
            + "anew.");

    // Sheets/DesignSheets
    internal static Finding PadIsMissing(string stage, IReadOnlyList<string>? missing) =>
        Finding.Error($"The design of {stage} doesn't say what it is filled with at the pad: "
            + $"{string.Join(", ", missing ?? ["regulator, restrictor, parts of the line"])}. Write it under \"pad\" in its file.");

    internal static Finding SheetOfPublishedTrace(string source) =>
        Finding.Error(
            $"The fill or the vent is a published measurement ({source}); a sheet is of a vessel of one's own. Leave Trace out.");
}
