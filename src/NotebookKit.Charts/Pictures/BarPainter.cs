using NotebookKit.Charts.Drawings;
using NotebookKit.Charts.Marks;
using NotebookKit.Charts.Theme;

namespace NotebookKit.Charts.Pictures;

/// <summary>Draws bars and histograms of a picture.</summary>
internal static class BarPainter
{
    public static void Paint(SvgSheet sheet, EngineeringChart chart, Bars bars, int slot, PlotFrame frame)
    {
        var all = chart.Marks.OfType<Bars>().ToList();
        var (place, group) = (all.IndexOf(bars), chart.Stacked ? 1 : all.Count);
        var lying = frame.NamesY.Count > 0;
        var names = lying ? frame.Y : frame.X;
        var values = lying ? frame.X : bars.OnRight ? frame.Right! : frame.Y;
        var step = Math.Abs(names.At(1) - names.At(0));
        var thick = 0.72 * step / group;
        for (var i = 0; i < bars.Values.Count; i++)
        {
            if (!double.IsFinite(bars.Values[i])) continue;
            var foot = chart.Stacked ? all.Take(place).Sum(b => b.Values[i]) : 0;
            var (a, b) = (values.At(foot), values.At(foot + bars.Values[i]));
            var middle = names.At(i) + (chart.Stacked ? 0 : (place - ((group - 1) / 2.0)) * thick);
            var colour = Palette.At(bars.Slots.Count > 0 ? bars.Slots[i] : slot);
            if (lying) sheet.Rectangle(Math.Min(a, b), middle - (thick / 2), Math.Abs(b - a), thick, colour, 1, Palette.Paper);
            else sheet.Rectangle(middle - (thick / 2), Math.Min(a, b), thick, Math.Abs(b - a), colour, 1, Palette.Paper);
            if (bars.Labels.Count == 0) continue;
            if (lying) sheet.Text(b + 5, middle + 4.5, bars.Labels[i], "start", 13);
            else sheet.Text(middle, b - 5, bars.Labels[i], "middle", 13);
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
