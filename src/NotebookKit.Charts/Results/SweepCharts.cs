using NotebookKit.Charts.Engineering;
using NotebookKit.Charts.Marks;
using NotebookKit.Charts.Notes;
using NotebookKit.DesignFiles.Parts;
using NotebookKit.Quantities;

namespace NotebookKit.Charts.Results;

/// <summary>Charts of a sweep: <c>sweep.Charts()</c>.</summary>
public static class SweepCharts
{
    private const string Apogee = "apogee";
    private const int MostKinds = 7;
    private const int LongestRemark = 120;

    private static readonly PointShape[] Shapes = [PointShape.Cross, PointShape.Diamond, PointShape.Triangle, PointShape.Square,
        PointShape.Ring];

    /// <summary>One value swept: a chart a figure that a requirement is of, and of the apogee, with the limits. Two values: a map of which
    /// designs meet every requirement and what stands against the others. More: none, for they have no place on paper.</summary>
    /// <param name="sweep">The sweep.</param>
    public static IReadOnlyList<EngineeringChart> Charts(this DesignSweep sweep)
    {
        ArgumentNullException.ThrowIfNull(sweep);
        return sweep.Axes.Count switch { 1 => [.. Figures(sweep)], 2 => [Map(sweep)], _ => [] };
    }

    private static IEnumerable<EngineeringChart> Figures(DesignSweep sweep)
    {
        foreach (var figure in sweep.Design.Requirements.Select(r => r.Of).Append(Apogee).Distinct())
        {
            var column = sweep.Column(figure);
            if (!column.Values.Any(double.IsFinite)) continue;
            LimitLine[] limits = [.. sweep.Design.Requirements.Where(r => r.Of == figure).Select(r => Limit(sweep, r, column.Unit))];
            var chart = IsOfWords(sweep, 0) ? Bars(sweep, column, [.. limits.Select(l => l with { IsVertical = true })])
                : LineChart.Draw(column.Name, sweep.Input(0), column).With(limits);
            yield return (chart with { Remark = Counted(sweep) }).Checked();
        }
    }

    private static EngineeringChart Bars(DesignSweep sweep, Series column, LimitLine[] limits)
    {
        var names = sweep.Axes[0].Labels;
        return new EngineeringChart(column.Name, Axis.For(column), Axis.OfNames(sweep.Axes[0].Name))
        {
            Marks = [new Bars(names, column)
            {
                Labels = [.. column.Values.Select(v => double.IsFinite(v) ? $"{Digits.Round(v)} {column.Unit}".Replace(" -", "",
                    StringComparison.Ordinal) : "can't be computed")],
            }],
        }.With(limits);
    }

    private static EngineeringChart Map(DesignSweep sweep)
    {
        var (x, y) = (sweep.Input(0), sweep.Input(1));
        var kinds = sweep.Designs.Select((d, i) => (Kind: d.Holds ? "" : d.Outcomes is null ? "can't be made" : $"against: {d.Against}",
            Index: i)).GroupBy(d => d.Kind, d => d.Index).OrderBy(g => g.Key.Length > 0).ThenByDescending(g => g.Count()).ToList();
        List<Mark> marks = [];
        foreach (var kind in kinds.Take(MostKinds).Select((k, i) => (k.Key, At: k.ToList(), Place: i)))
            marks.Add(kind.Key.Length == 0
                ? new Points(At(x, kind.At), At(y, kind.At)) { Name = "all requirements hold", Slot = 2, Size = 13 }
                : new Points(At(x, kind.At), At(y, kind.At))
                {
                    Name = Shortened(kind.Key, 60), Slot = kind.Place + (kind.Place >= 2 ? 1 : 0),
                    Shape = Shapes[kind.Place % Shapes.Length],
                });
        List<int> rest = [.. kinds.Skip(MostKinds).SelectMany(k => k)];
        if (rest.Count > 0) marks.Add(new Points(At(x, rest), At(y, rest)) { Name = "against: several, see the table", Slot = 7 });
        var words = string.Join("; ", Enumerable.Range(0, 2).Where(k => IsOfWords(sweep, k)).Select(k => $"{sweep.Axes[k].Name}: "
            + string.Join(", ", sweep.Axes[k].Labels.Select((l, i) => FormattableString.Invariant($"{i + 1} {l}")))));
        return new EngineeringChart($"Which designs hold, by {sweep.Axes[0].Name} and {sweep.Axes[1].Name}", Axis.For(x), Axis.For(y))
        {
            Marks = marks, Remark = Shortened(words.Length > 0 ? words : Counted(sweep), LongestRemark),
        }.Checked();
    }

    private static Series At(Series column, IReadOnlyList<int> places) => column with { Values = [.. places.Select(i => column[i])] };

    private static LimitLine Limit(DesignSweep sweep, DesignRequirement requirement, string unit)
    {
        var limit = sweep.LimitOf(requirement);
        return new(limit, $"{requirement.Name}: {(requirement.Side == Record.Limit.AtMost ? "at most" : "at least")} "
            + $"{Digits.Round(limit)}{(unit == "-" ? "" : " " + unit)}") { Slot = 3 };
    }

    private static string Counted(DesignSweep sweep) => FormattableString.Invariant(
        $"{sweep.Designs.Count(d => d.Holds)} of {sweep.Designs.Count} designs meet every requirement");

    // A column of numbers has the unit of its values in its name's place; words have their order.
    private static bool IsOfWords(DesignSweep sweep, int axis) => sweep.Input(axis).Name != sweep.Axes[axis].Name;

    private static string Shortened(string text, int most) => text.Length <= most ? text : text[..(most - 1)] + "…";
}
