namespace NotebookKit.Provenance;

/// <summary>Where a formula or a number comes from.</summary>
/// <param name="Author">Author or issuing body.</param>
/// <param name="Title">Title of the work.</param>
/// <param name="Year">Year of the edition; none where there is none.</param>
/// <param name="Where">Equation, table or page.</param>
/// <param name="Kind">How far its origin alone carries it.</param>
public sealed record Source(string Author, string Title, int? Year, string Where = "", SourceKind Kind = SourceKind.Published)
{
    /// <summary>A value or rule that the trade uses without a source.</summary>
    /// <param name="what">The practice in a few words.</param>
    public static Source CommonPractice(string what) => new("", what, null, "", SourceKind.CommonPractice);

    /// <summary>One line, as a reference list prints it; says so where the text wasn't in hand.</summary>
    public override string ToString()
    {
        if (Kind == SourceKind.CommonPractice) return $"{Title} (common practice, no source)";
        var text = string.Join(", ", new[] { Author, Title, Year?.ToString(System.Globalization.CultureInfo.InvariantCulture),
            Where }.Where(s => !string.IsNullOrEmpty(s)));
        return Kind switch
        {
            SourceKind.Unverified => $"{text} (unverified: source not at hand; confirm before relying on it)",
            SourceKind.Independent => $"{text} (computed independently of this library)",
            SourceKind.Typical => $"{text} (typical value)",
            _ => text,
        };
    }
}
