using NotebookKit.Provenance;

namespace NotebookKit.Sheets;

/// <summary>What stands on a sheet of paper, without any layout.</summary>
/// <param name="Title">Heading: "Proof sheet, Curlew".</param>
/// <param name="Purpose">One sentence: what the sheet is for and who holds it.</param>
/// <param name="Sections">Sections in reading order.</param>
public sealed record SheetContent(string Title, string Purpose, IReadOnlyList<SheetSection> Sections)
{
    /// <summary>The verdict in capitals, "GO" or "NO-GO"; empty where the sheet decides nothing.</summary>
    public string Verdict { get; init; } = "";

    /// <summary>Whether the verdict is in favour; false where there is none.</summary>
    public bool IsInFavour { get; init; }

    /// <summary>What has to be said with the verdict; may be empty.</summary>
    public string VerdictNote { get; init; } = "";

    /// <summary>The mark of what flies where: the bits of its expected flight; empty where the sheet is of no flight, or of one that has no
    /// answer. A name alone would let the card of another vehicle stand for this one.</summary>
    public string Subject { get; init; } = "";

    /// <summary>Errors and warnings, each once.</summary>
    public IReadOnlyList<Finding> Findings { get; init; } = [];

    /// <summary>Cautions, each in full.</summary>
    public IReadOnlyList<Caution> Cautions { get; init; } = [];

    /// <summary>Who signs; empty where nobody does.</summary>
    public IReadOnlyList<string> Signatures { get; init; } = [];
}
