using System.Globalization;
using NotebookKit.Charts.Theme;
using NotebookKit.Provenance;

namespace NotebookKit.Charts.Drawings;

/// <summary>Steps over days: what is done when, what cures meanwhile, which steps can't wait.</summary>
public static class CalendarDrawing
{
    private const double Row = 6.4, Top = 20, Days = 125;
    private const string Legend = "Full: hands at work. Light: it cures or dries by itself. Outlined: any delay moves the end. Grey days: "
        + "weekend.";

    /// <summary>Draws the calendar.</summary>
    /// <param name="title">What it shows.</param>
    /// <param name="rows">The steps, the first on top.</param>
    /// <exception cref="InvalidDesignException">There is no step, or one ends before it begins.</exception>
    public static Drawing Draw(string title, IReadOnlyList<CalendarRow> rows)
    {
        ArgumentNullException.ThrowIfNull(title);
        ArgumentNullException.ThrowIfNull(rows);
        InvalidDesignException.ThrowIfAny($"Drawing '{title}'", rows.Count == 0
            ? [Finding.Error("There is no step to draw; give at least one.")]
            : [.. rows.Where(r => r.WorkEnd < r.Start || r.Ready < r.WorkEnd).Select(r => Finding.Error($"'{r.Name}' ends before it "
                + "begins; check its times."))]);
        var left = 8 + rows.Max(r => SvgSheet.WidthOf(r.Name));
        var (first, last) = (rows.Min(r => r.Start).Date, rows.Max(r => r.Ready).Date.AddDays(1));
        var day = Days / (last - first).TotalDays;
        double X(DateTime time) => left + (time - first).TotalDays * day;
        var (sheet, bottom) = (new SvgSheet(), Top + rows.Count * Row);
        sheet.Text(4, 7, title, size: 4.6, bold: true);
        var every = Math.Max(1, (int)Math.Ceiling(16 / day));
        for (var d = 0; d <= (last - first).TotalDays; d++)
        {
            var date = first.AddDays(d);
            if (date.DayOfWeek is DayOfWeek.Saturday or DayOfWeek.Sunday && d < (last - first).TotalDays) sheet.Rectangle(X(date), Top - 2,
                day, bottom - Top + 2, Palette.Tint(Palette.Ink, 0.05), 0);
            sheet.Line(X(date), Top - 2, X(date), bottom, SvgSheet.Thin, Palette.Frame);
            if (d % every == 0 && X(date) + 13 < left + Days + 6) sheet.Text(X(date) + 0.8, Top - 3.6,
                date.ToString("ddd d MMM", CultureInfo.InvariantCulture), size: 2.7, colour: Palette.Quiet);
        }

        for (var i = 0; i < rows.Count; i++) Draw(sheet, rows[i], Top + i * Row, left, X);
        var ends = rows.Max(r => r.Ready).ToString("dddd d MMMM HH:mm", CultureInfo.InvariantCulture);
        var end = sheet.Paragraph(4, bottom + 6, Legend, left + Days - 2, 2.9, Palette.Quiet);
        var description = $"{rows.Count} steps from {rows.Min(r => r.Start).ToString("dddd d MMMM HH:mm", CultureInfo.InvariantCulture)} "
            + $"to {ends}; critical: {string.Join(", ", rows.Where(r => r.IsCritical).Select(r => r.Name))}.";
        return new Drawing(title, description, sheet.Finish(left + Days + 6, end, title, description))
        {
            Narrow = Narrow(title, rows, first, last, description),
        };
    }

    // On a phone the name of a step stands over its bar.
    private static string Narrow(string title, IReadOnlyList<CalendarRow> rows, DateTime first, DateTime last, string description)
    {
        const double paper = 120, left = 4, row = 8.4, top = 21;
        var day = (paper - (2 * left)) / (last - first).TotalDays;
        double X(DateTime time) => left + (time - first).TotalDays * day;
        var (sheet, bottom) = (new SvgSheet(), top + rows.Count * row);
        sheet.Text(4, 7, title, size: 4.6, bold: true);
        var every = Math.Max(1, (int)Math.Ceiling(17 / day));
        for (var d = 0; d <= (last - first).TotalDays; d++)
        {
            var date = first.AddDays(d);
            if (date.DayOfWeek is DayOfWeek.Saturday or DayOfWeek.Sunday && d < (last - first).TotalDays) sheet.Rectangle(X(date), top - 3,
                day, bottom - top + 3, Palette.Tint(Palette.Ink, 0.05), 0);
            if (d % every != 0) continue;
            sheet.Line(X(date), top - 3, X(date), bottom, SvgSheet.Thin, Palette.Grid);
            var text = date.ToString("d MMM", CultureInfo.InvariantCulture);
            if (X(date) + sheet.Wide(text) < paper) sheet.Text(X(date), top - 5, text, colour: Palette.Quiet);
        }

        for (var i = 0; i < rows.Count; i++)
        {
            var y = top + i * row;
            sheet.Text(Math.Clamp(X(rows[i].Start), left, paper - left - (1.15 * sheet.Wide(rows[i].Name))), y + 2.6, rows[i].Name);
            Bar(sheet, rows[i], y + 3.7, 3.2, X);
        }

        var end = sheet.Paragraph(4, bottom + 5, Legend, paper - 8, colour: Palette.Quiet);
        return sheet.Finish(paper, end, title, description);
    }

    private static void Bar(SvgSheet sheet, CalendarRow row, double y, double height, Func<DateTime, double> x)
    {
        var colour = Palette.At(row.IsCritical ? 1 : 0);
        sheet.Rectangle(x(row.WorkEnd), y, x(row.Ready) - x(row.WorkEnd), height, Palette.Tint(colour, 0.25), 0);
        sheet.Rectangle(x(row.Start), y, Math.Max(0.6, x(row.WorkEnd) - x(row.Start)), height, colour, 0);
        if (row.IsCritical) sheet.Rectangle(x(row.Start), y, Math.Max(0.6, x(row.Ready) - x(row.Start)), height, "none", SvgSheet.Thin);
    }

    private static void Draw(SvgSheet sheet, CalendarRow row, double y, double left, Func<DateTime, double> x)
    {
        sheet.Open("step", ("hands-h", (row.WorkEnd - row.Start).TotalHours), ("wait-h", (row.Ready - row.WorkEnd).TotalHours));
        sheet.Text(left - 2, y + Row - 3, row.Name, "end");
        Bar(sheet, row, y, Row - 2, x);
        sheet.Close();
    }
}

/// <summary>One row of a calendar: a bar of work, then one of waiting.</summary>
/// <param name="Name">What it is.</param>
/// <param name="Start">When work begins.</param>
/// <param name="WorkEnd">When the hands are free.</param>
/// <param name="Ready">When it is ready.</param>
/// <param name="IsCritical">Whether any delay moves the end.</param>
public sealed record CalendarRow(string Name, DateTime Start, DateTime WorkEnd, DateTime Ready, bool IsCritical);
