using NotebookKit.Provenance;

namespace NotebookKit.Sheets;

/// <summary>A part of a sheet under one heading.</summary>
/// <param name="Heading">The heading.</param>
public sealed record SheetSection(string Heading)
{
    /// <summary>A sentence under the heading; may be empty.</summary>
    public string Text { get; init; } = "";

    /// <summary>What is known.</summary>
    public IReadOnlyList<ResultLine> Facts { get; init; } = [];

    /// <summary>What is written down by hand.</summary>
    public IReadOnlyList<SheetBlank> Blanks { get; init; } = [];

    /// <summary>What is done and ticked off, in order; never shortened.</summary>
    public IReadOnlyList<string> Steps { get; init; } = [];

    /// <summary>Rules that hold throughout, without a box.</summary>
    public IReadOnlyList<string> Rules { get; init; } = [];

    /// <summary>A table; none where there is none.</summary>
    public SheetTable? Table { get; init; }
}

/// <summary>A box to write a value into.</summary>
/// <param name="Name">What is written.</param>
/// <param name="Unit">Its unit; empty where it has none.</param>
public sealed record SheetBlank(string Name, string Unit);

/// <summary>A table on paper. A cell of <see cref="Blank"/> is written into by hand, one of <see cref="Tick"/> is a box.</summary>
/// <param name="Headings">Heading of every column, with its unit.</param>
/// <param name="Rows">Rows; as many cells each as there are headings.</param>
public sealed record SheetTable(IReadOnlyList<string> Headings, IReadOnlyList<IReadOnlyList<string>> Rows)
{
    /// <summary>A cell to write into.</summary>
    public const string Blank = "____";

    /// <summary>A box to tick.</summary>
    public const string Tick = "[ ]";
}
