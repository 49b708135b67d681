using NotebookKit.Charts.Marks;
using NotebookKit.Quantities;

namespace NotebookKit.Charts;

/// <summary>What a chart says, in words: what is drawn over what, from where to where, and where each curve has its maximum and
/// minimum.</summary>
internal static class ChartMessage
{
    private const int MostNamed = 6;

    public static string Of(EngineeringChart chart) =>
        $"{chart.Title}: {chart.Y.Title}{(chart.Right is null ? "" : " and " + chart.Right.Title)} over {chart.X.Title}{Range(chart)}."
        + string.Concat(chart.Marks.Take(MostNamed).Select(m => m switch
        {
            Curve curve => Peak(Named(curve, curve.Y), curve.X, curve.Y),
            Points points => Peak(Named(points, points.Y), points.X, points.Y),
            Band band => Peak(Named(band, band.Upper) + ", upper edge", band.X, band.Upper),
            Bars bars => Longest(bars),
            _ => "",
        }))
        + (chart.Marks.Count > MostNamed ? $" {chart.Marks.Count - MostNamed} more are drawn." : "")
        + string.Concat(chart.Limits.Where(l => l.Label.Length > 0).Select(l => $" Line: {l.Label}."));

    private static string Named(Mark mark, Series values) => mark.Name.Length > 0 ? mark.Name : values.Name;

    private static string Range(EngineeringChart chart)
    {
        var values = chart.Marks.SelectMany(m => m.Horizontal).SelectMany(s => s.Values).Where(double.IsFinite).ToList();
        return values.Count == 0 || chart.X.Scale == AxisScale.Categories ? "" : $", {Shown(values.Min())} to {Shown(values.Max())}";
    }

    private static string Peak(string name, Series x, Series y)
    {
        var known = Enumerable.Range(0, Math.Min(x.Count, y.Count)).Where(i => double.IsFinite(x[i]) && double.IsFinite(y[i])).ToList();
        if (known.Count == 0) return "";
        var (high, low) = (known.MaxBy(i => y[i]), known.MinBy(i => y[i]));
        return y[high] <= y[low] ? $" {name}: {At(x, y, high)} throughout."
            : $" {name}: maximum {At(x, y, high)}, minimum {At(x, y, low)}.";
    }

    private static string Longest(Bars bars)
    {
        var known = Enumerable.Range(0, Math.Min(bars.Names.Count, bars.Values.Count)).Where(i => double.IsFinite(bars.Values[i])).ToList();
        if (known.Count == 0) return "";
        var (high, low) = (known.MaxBy(i => bars.Values[i]), known.MinBy(i => bars.Values[i]));
        return $" {bars.Values.Name}: largest {With(bars.Values[high], bars.Values.Unit)} for {bars.Names[high]}, smallest "
            + $"{With(bars.Values[low], bars.Values.Unit)} for {bars.Names[low]}.";
    }

    private static string At(Series x, Series y, int i) => $"{With(y[i], y.Unit)} at {With(x[i], x.Unit)}";

    private static string With(double value, string unit) => unit is "" or "-" ? Shown(value) : $"{Shown(value)} {unit}";

    private static string Shown(double value) => Digits.Round(value, 3);
}
