using System.Globalization;
using NotebookKit.Charts.Theme;

namespace NotebookKit.Charts.Drawings;

/// <summary>Figures in circles on a drawing and their words below it, so that nothing on the drawing is written small.</summary>
internal sealed class NumberedKey
{
    private const double Ball = 2.5;

    private readonly List<(string Name, string What)> _entries = [];

    /// <summary>A numbered circle with a line to what it means.</summary>
    public void Point(SvgSheet sheet, double x, double y, double ballX, double ballY, string name, string what = "")
    {
        sheet.Open("pointer");
        if (Math.Abs(x - ballX) + Math.Abs(y - ballY) > Ball)
        {
            sheet.Line(x, y, ballX, ballY);
            sheet.Circle(x, y, 0.6, width: 0, fill: Palette.Ink);
        }

        _entries.Add((name, what));
        sheet.Circle(ballX, ballY, Ball, SvgSheet.Thin, Palette.Paper);
        sheet.Text(ballX, ballY + 1.15, _entries.Count.ToString(CultureInfo.InvariantCulture), "middle", bold: true, halo: false);
        sheet.Close();
    }

    /// <summary>An entry without a circle of its own, with the number it will have.</summary>
    public int Add(string name, string what)
    {
        _entries.Add((name, what));
        return _entries.Count;
    }

    /// <summary>Writes the key and gives the place below it.</summary>
    public double Write(SvgSheet sheet, double y, double width)
    {
        for (var i = 0; i < _entries.Count; i++)
        {
            var (name, what) = _entries[i];
            sheet.Circle(6.5, y - 1.15, Ball, SvgSheet.Thin, Palette.Paper);
            sheet.Text(6.5, y, (i + 1).ToString(CultureInfo.InvariantCulture), "middle", bold: true);
            y = sheet.Paragraph(11, y, what.Length == 0 ? name : $"{name}: {what}", width - 14) + 1.6;
        }

        return y;
    }

    /// <summary>The key in words.</summary>
    public string Words => string.Join("; ", _entries.Select((e, i) =>
        $"{(i + 1).ToString(CultureInfo.InvariantCulture)} {e.Name}{(e.What.Length > 0 ? $", {e.What}" : "")}"));
}
