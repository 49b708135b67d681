using NotebookKit.Charts.Marks;

namespace NotebookKit.Charts.Figures;

/// <summary>The ranges that the axes of a chart without placed words must have.</summary>
/// <param name="X">Range the horizontal axis must have; none leaves it to the figure.</param>
/// <param name="Y">Range the vertical axis must have; none leaves it to the figure.</param>
internal sealed record Extent((double From, double To)? X, (double From, double To)? Y)
{
    public static Extent Of(EngineeringChart chart)
    {
        // A map fills its frame.
        if (chart.Marks.OfType<Field>().FirstOrDefault() is { } field)
            return new Extent((field.X[0], field.X[^1]), (field.Y[0], field.Y[^1]));
        if (chart.Y.Scale == AxisScale.Categories && chart.Marks.OfType<Bars>().FirstOrDefault() is { } bars)
        {
            // Lying bars carry their text at the end and the limits' names above the first bar.
            var longest = bars.Values.Values.Concat(chart.Limits.Where(l => l.IsVertical).Select(l =>
                l.Value)).Where(double.IsFinite).DefaultIfEmpty(1).Max();
            var room = bars.Labels.Count > 0 ? 1.55 : 1.08;
            return new Extent((0, longest * room),
                (-0.6, bars.Names.Count - 0.4 + (0.42 * chart.Limits.Count(l => l.IsVertical))));
        }
        return new Extent(null, null);
    }
}
