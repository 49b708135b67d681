using NotebookKit.Charts.Marks;
using NotebookKit.Provenance;
using NotebookKit.Quantities;

namespace NotebookKit.Charts;

/// <summary>Finds what is wrong with a chart before it is drawn.</summary>
internal static class ChartChecks
{
    public static IReadOnlyList<Finding> Find(EngineeringChart chart)
    {
        List<Finding> findings = [];
        if (string.IsNullOrWhiteSpace(chart.Title))
            findings.Add(Finding.Error($"A chart of {chart.Y.Title} over {chart.X.Title} has no title. Say what it shows."));
        if (chart.Marks.Count == 0)
            findings.Add(Finding.Error($"Chart '{chart.Title}' has nothing to draw; add a curve, points or bars."));
        foreach (var mark in chart.Marks)
        {
            findings.AddRange(mark.Validate());
            findings.AddRange(Units(chart, mark));
        }
        findings.AddRange(Space(chart));
        findings.AddRange(Notes(chart));
        return findings;
    }

    private static IEnumerable<Finding> Space(EngineeringChart chart)
    {
        var paths = chart.Marks.Count(m => m is Path3D);
        if (paths > 0 && chart.Up is null)
            yield return Finding.Error($"Chart '{chart.Title}' has a path in space and no upward axis. Give it one.");
        if (chart.Up is not null && paths < chart.Marks.Count)
            yield return Finding.Error($"Chart '{chart.Title}' is drawn in space, where only paths can stand; draw the rest on "
                + "a flat chart.");
    }

    private static IEnumerable<Finding> Units(EngineeringChart chart, Mark mark)
    {
        if (mark.OnRight && chart.Right is null)
        {
            yield return Finding.Error($"'{mark.Name}' is to be read at the right, where chart '{chart.Title}' has no axis. Give the "
                + "chart a right axis.");
            yield break;
        }
        // Bars lie when the names stand at the left: their lengths are then read on the horizontal axis.
        var lying = chart.Y.Scale == AxisScale.Categories;
        var vertical = mark.OnRight ? chart.Right! : lying ? chart.X : chart.Y;
        foreach (var (series, axis) in Pairs(chart, mark, vertical))
        {
            if (Clash(series, axis) is { } finding) yield return finding;
        }
        if (mark is Histogram && vertical.Unit != "%")
            yield return Finding.Error($"A histogram counts shares in %; the axis '{vertical.Name}' is in {vertical.Unit}. Make it "
                + "\"Share of samples\" in %.");
    }

    private static IEnumerable<(Series Series, Axis Axis)> Pairs(EngineeringChart chart, Mark mark, Axis vertical) =>
        mark.Horizontal.Select(s => (s, chart.X))
            .Concat(mark.Vertical.Select(s => (s, vertical)))
            .Concat(chart.Up is { } up ? mark.Upward.Select(s => (s, up)) : []);

    private static Finding? Clash(Series series, Axis axis)
    {
        if (axis.Scale == AxisScale.Categories)
            return Finding.Error($"'{series.Name}' [{series.Unit}] is a column of numbers and can't be read on '{axis.Name}', an "
                + "axis of names.");
        if (!string.Equals(series.Unit, axis.Unit, StringComparison.Ordinal))
            return Finding.Error($"'{series.Name}' is in {series.Unit} and the axis '{axis.Name}' in {axis.Unit}; bring both to one unit "
                + "or use the axis at the right.");
        return axis.Scale == AxisScale.Logarithmic && series.Values.Any(v => v <= 0)
            ? Finding.Error($"'{series.Name}' has values of zero or below, which the logarithmic axis '{axis.Title}' can't show; use a "
                + "linear axis or leave them out.")
            : null;
    }

    private static IEnumerable<Finding> Notes(EngineeringChart chart)
    {
        foreach (var (what, value) in chart.Events.Select(e => (e.Label, e.At))
            .Concat(chart.Limits.Select(l => (l.Label, l.Value)))
            .Concat(chart.Spans.SelectMany(s => new[] { (s.Label, s.From), (s.Label, s.To) }))
            .Concat(chart.Callouts.SelectMany(c => new[] { (c.Text, c.X), (c.Text, c.Y) })))
        {
            if (!double.IsFinite(value))
                yield return Finding.Error(
                    $"'{what}' is to be marked at {Digits.Round(value)}, which isn't a place on an axis; leave the mark out "
                    + "or correct its value.");
        }
        if (chart.Limits.Any(l => l.OnRight) && chart.Right is null)
            yield return Finding.Error($"A limit of chart '{chart.Title}' is to be read at the right, where there is no axis. Give the "
                + "chart a right axis.");
    }
}
