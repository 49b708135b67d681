namespace NotebookKit.Interactive.Tables;

/// <summary>A small table of text.</summary>
/// <param name="Title">What it shows.</param>
/// <param name="Headings">Heading of each column.</param>
/// <param name="Rows">Rows, a text a column.</param>
public sealed record TextTable(string Title, IReadOnlyList<string> Headings, IReadOnlyList<IReadOnlyList<string>> Rows)
{
    /// <summary>A sentence below the table; may be empty.</summary>
    public string Remark { get; init; } = "";
}
