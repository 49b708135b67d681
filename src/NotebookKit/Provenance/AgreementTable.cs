using NotebookKit.Quantities;

namespace NotebookKit.Provenance;

/// <summary>Our numbers beside those of others. Making it fails where one of them disagrees, so a page can't show a broken comparison as if
/// it held.</summary>
public sealed record AgreementTable : Result
{
    private static readonly ValidRange<double> ToleranceRange = new(1e-12, 1);

    /// <summary>Compares.</summary>
    /// <param name="title">What is compared.</param>
    /// <param name="source">Where the other numbers come from.</param>
    /// <param name="rows">The numbers.</param>
    /// <exception cref="DisagreementException">At least one number is further off than its tolerance.</exception>
    public AgreementTable(string title, Source source, params IReadOnlyList<Agreement> rows)
    {
        ArgumentNullException.ThrowIfNull(rows);
        Title = title;
        Source = source;
        Rows = rows;
        foreach (var row in rows) ToleranceRange.Check(row.Allowed, $"tolerance of {row.What}", "It comes from the printed digits.");
        if (rows.Any(r => !r.Holds)) throw new DisagreementException(title, [.. rows.Where(r => !r.Holds)], IsPublished);
    }

    /// <summary>Where the other numbers come from.</summary>
    public Source Source { get; }

    /// <summary>Whether the numbers stand in print; else they are a reference of another kind, as their source says.</summary>
    public bool IsPublished => Source.Kind is SourceKind.Standard or SourceKind.Published or SourceKind.DataSheet or SourceKind.Unverified;

    /// <summary>The numbers.</summary>
    public IReadOnlyList<Agreement> Rows { get; }

    /// <inheritdoc/>
    public override string Title { get; }

    /// <inheritdoc/>
    public override ModelCard Model => new(IsPublished ? "Comparison with published values" : "Comparison with reference values",
        ["Tolerances come from the printed digits or from a stated difference of models."], "As the source.", [Source]);

    /// <inheritdoc/>
    public override IReadOnlyList<ResultLine> Lines =>
    [
        .. Rows.Select(r => new ResultLine(
            r.What,
            QuantityDisplay.Join(Digits.Round(r.Ours, 6), r.Unit),
            $"{(IsPublished ? "published" : "reference")} {QuantityDisplay.Join(Digits.Round(r.Published, 7), r.Unit)}"
                + $", {Digits.Round(100 * Math.Abs(r.Difference), 2)} % apart, {Digits.Round(100 * r.Allowed, 2)} % allowed")),
    ];

    /// <inheritdoc/>
    public override IReadOnlyList<Finding> Findings =>
        [Finding.Note($"{Rows.Count switch { 1 => "It agrees", 2 => "Both agree", var count => $"All {count} agree" }} with {Source}.")];

    /// <inheritdoc/>
    public override IReadOnlyList<Caution> Cautions => [];

    /// <inheritdoc/>
    public override Working Working => new(Title, []);
}
