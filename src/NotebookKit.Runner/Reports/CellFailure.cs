using System.Globalization;
using NotebookKit.Runner.Engine;

namespace NotebookKit.Runner.Reports;

/// <summary>A cell that failed the notebook.</summary>
/// <param name="Cell">The cell's number, as shown in brackets beside it; 0 where it was the notebook as a whole.</param>
/// <param name="Status">How it failed.</param>
/// <param name="Error">What went wrong.</param>
/// <param name="CellStart">First line of the cell, to find it by where no line is known.</param>
internal sealed record CellFailure(int Cell, CellStatus Status, CellError Error, string CellStart)
{
    /// <summary>Where it is: "cell 3, line 2: var p = 63.Bar();".</summary>
    public string Place =>
        Cell == 0 ? "the notebook"
        : Error is { Line: { } line, SourceLine.Length: > 0 }
            ? string.Create(CultureInfo.InvariantCulture, $"cell {Cell}, line {line}: {Error.SourceLine}")
        : string.Create(CultureInfo.InvariantCulture, $"cell {Cell}, which starts: {CellStart}");
}
