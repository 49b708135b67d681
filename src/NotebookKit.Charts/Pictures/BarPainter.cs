using NotebookKit.Charts.Drawings;
using NotebookKit.Charts.Marks;
using NotebookKit.Charts.Theme;

namespace NotebookKit.Charts.Pictures;

/// <summary>Draws bars and histograms of a picture.</summary>
internal static class BarPainter
{
    public static void Paint(SvgSheet sheet, EngineeringChart chart, Bars bars, int slot, PlotFrame frame, double size)
    {
        foreach (var (box, i) in Boxes(chart, bars, frame))
            sheet.Rectangle(box.Left, box.Top, box.Right - box.Left, box.Bottom - box.Top,
                Palette.At(bars.Slots.Count > 0 ? bars.Slots[i] : slot), 1, Palette.Paper);
        var lying = frame.NamesY.Count > 0;
        foreach (var (box, lines) in Labels(chart, bars, frame, size))
        {
            for (var i = 0; i < lines.Count; i++)
            {
                var y = box.Top + (1.25 * size * (i + 0.76));
                if (lying) sheet.Text(box.Left, y, lines[i], "start", size);
                else sheet.Text((box.Left + box.Right) / 2, y, lines[i], "middle", size);
            }
        }
    }

    /// <summary>Where the text at the end of each bar stands, and its lines.</summary>
    public static IEnumerable<(LabelBox Box, IReadOnlyList<string> Lines)> Labels(EngineeringChart chart, Bars bars, PlotFrame frame,
        double size)
    {
        if (bars.Labels.Count == 0) yield break;
        var lying = frame.NamesY.Count > 0;
        foreach (var (bar, i) in Boxes(chart, bars, frame))
        {
            var middle = lying ? (bar.Top + bar.Bottom) / 2 : (bar.Left + bar.Right) / 2;
            var lines = TextLines.Break(bars.Labels[i], lying ? frame.Box.Right - bar.Right - 8 : 1.3 * (bar.Right - bar.Left), size);
            if (lines.Count == 0) continue;
            var (w, h) = (lines.Max(l => TextLines.Width(l, size)), 1.25 * size * lines.Count);
            yield return (lying ? new(bar.Right + 5, middle - (h / 2), bar.Right + 5 + w, middle + (h / 2))
                : new(middle - (w / 2), bar.Top - h - 3, middle + (w / 2), bar.Top - 3), lines);
        }
    }

    /// <summary>The rectangles of the bars, each with its place in the column.</summary>
    public static IEnumerable<(LabelBox Box, int Index)> Boxes(EngineeringChart chart, Bars bars, PlotFrame frame)
    {
        var all = chart.Marks.OfType<Bars>().ToList();
        var (place, group) = (all.IndexOf(bars), chart.Stacked ? 1 : all.Count);
        var lying = frame.NamesY.Count > 0;
        var names = lying ? frame.Y : frame.X;
        var values = lying ? frame.X : bars.OnRight ? frame.Right! : frame.Y;
        var thick = 0.72 * Math.Abs(names.At(1) - names.At(0)) / group;
        for (var i = 0; i < bars.Values.Count; i++)
        {
            if (!double.IsFinite(bars.Values[i])) continue;
            var foot = chart.Stacked ? all.Take(place).Sum(b => b.Values[i]) : 0;
            var (a, b) = (values.At(foot), values.At(foot + bars.Values[i]));
            var middle = names.At(i) + (chart.Stacked ? 0 : (place - ((group - 1) / 2.0)) * thick);
            var (low, high) = (Math.Min(a, b), Math.Max(a, b));
            yield return (lying ? new(low, middle - (thick / 2), high, middle + (thick / 2))
                : new(middle - (thick / 2), low, middle + (thick / 2), high), i);
        }
    }

    public static void Paint(SvgSheet sheet, Histogram histogram, int slot, PlotFrame frame)
    {
        var (centres, width, shares) = histogram.Count();
        for (var i = 0; i < centres.Length; i++)
        {
            if (shares[i] <= 0) continue;
            var (a, b) = (frame.X.At(centres[i] - (width / 2)), frame.X.At(centres[i] + (width / 2)));
            sheet.Rectangle(a, frame.Y.At(shares[i]), b - a, frame.Y.At(0) - frame.Y.At(shares[i]), Palette.Tint(Palette.At(slot), 0.75),
                0.5, Palette.Paper);
        }
    }
}
