using NotebookKit.Aerodynamics.Fins;
using NotebookKit.Building.Nests;
using NotebookKit.Provenance;
using NotebookKit.Quantities;

namespace NotebookKit.Sheets;

/// <summary>The fins of a set laid on the sheet of their thickness that the stock list names. Source: none of its own;
/// the layout is that of <see cref="SheetNest"/>.</summary>
public static class FinNest
{
    /// <summary>What the sheet is called on a stock list: "fin sheet, 2 mm".</summary>
    /// <param name="fins">The fins.</param>
    public static string SheetName(FinSet fins)
    {
        ArgumentNullException.ThrowIfNull(fins);
        return $"fin sheet, {fins.Thickness.Show()}";
    }

    /// <summary>The layout; none where the list has no such sheet with its length and width, or a fin is larger than the sheet.
    /// Source: as the type.</summary>
    /// <param name="fins">The fins.</param>
    /// <param name="shelf">The stock list; may be empty.</param>
    public static NestResult? Of(FinSet fins, IReadOnlyList<ShelfItem> shelf)
    {
        ArgumentNullException.ThrowIfNull(fins);
        ArgumentNullException.ThrowIfNull(shelf);
        if (shelf.FirstOrDefault(s => s.Is(SheetName(fins))) is not { Length: { } length, Width: { } width }) return null;
        try
        {
            return new SheetNest(length, width, [new("fin", [.. fins.Planform.Corners.Select(c => new SheetPoint(c.Aft, c.Out))],
                fins.Count)]).Place();
        }
        catch (InvalidDesignException)
        {
            return null;
        }
    }
}
