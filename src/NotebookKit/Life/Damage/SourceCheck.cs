using NotebookKit.Provenance;

namespace NotebookKit.Life.Damage;

/// <summary>Whether a parameter that life rests on can be looked up by somebody else.</summary>
internal static class SourceCheck
{
    public static bool IsPublished(Source? source) =>
        source is { Kind: SourceKind.Standard or SourceKind.Published, Year: not null }
        && !string.IsNullOrWhiteSpace(source.Author) && !string.IsNullOrWhiteSpace(source.Title);
}
