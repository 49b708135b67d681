using NotebookKit.Charts.Drawings;
using NotebookKit.Provenance;

namespace NotebookKit.Charts.Results;

/// <summary>Drawings of the bench: <c>nest.Draw()</c>, <c>calendar.Draw()</c>.</summary>
public static class BuildDrawings
{
    /// <summary>One of the sheets with its pieces, to scale.</summary>
    /// <param name="nest">The layout.</param>
    /// <param name="sheet">Which sheet; 1 to the number of sheets.</param>
    /// <exception cref="OutOfRangeException">There is no such sheet.</exception>
    public static Drawing Draw(this NestResult nest, int sheet = 1)
    {
        ArgumentNullException.ThrowIfNull(nest);
        new ValidRange<double>(1, nest.Sheets).Check(sheet, "number of the sheet", "They are counted from 1.");
        return CutPlanDrawing.Draw(new CutPlan(
            nest.Sheets == 1 ? "Cutting plan" : $"Cutting plan, sheet {sheet} of {nest.Sheets}", nest.Nest.SheetLength,
                nest.Nest.SheetWidth,
            [.. nest.Placements.Where(p => p.Sheet == sheet).Select(p => (p.Piece.Name,
                (IReadOnlyList<(UnitsNet.Length, UnitsNet.Length)>)[.. p.Outline.Select(c => (c.Along, c.Across))]))])
        {
            Used = sheet == nest.Sheets ? nest.UsedOfLast : null,
        });
    }

    /// <summary>The steps over days.</summary>
    /// <param name="calendar">The calendar.</param>
    public static Drawing Draw(this BuildCalendarResult calendar)
    {
        ArgumentNullException.ThrowIfNull(calendar);
        return CalendarDrawing.Draw(calendar.Title, [.. calendar.Steps.Select(s => new CalendarRow(s.Task.Name, s.Start, s.WorkEnd,
            s.Ready, s.IsCritical))]);
    }
}
