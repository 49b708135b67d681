using NotebookKit.Charts.Marks;
using NotebookKit.Provenance;
using NotebookKit.Quantities;

namespace NotebookKit.Charts.Engineering;

/// <summary>
/// What a gain costs: rated pressure against mass for every layup in stock. Choices that nothing beats are joined by a line; the refused
/// ones stay in sight with their reason.
/// </summary>
public static class ParetoChart
{
    /// <summary>Draws the candidates.</summary>
    /// <param name="title">What it shows.</param>
    /// <param name="cost">What each costs (mass): less is better.</param>
    /// <param name="gain">What each gives (pressure): more is better.</param>
    /// <param name="names">What each is.</param>
    /// <param name="refusedBecause">Why a candidate was refused; empty for those that stand. One a candidate, or none at all.</param>
    /// <exception cref="InvalidDesignException">Columns of different length, or nothing to draw.</exception>
    public static EngineeringChart Draw(string title, Series cost, Series gain, IReadOnlyList<string> names,
        IReadOnlyList<string>? refusedBecause = null)
    {
        ArgumentNullException.ThrowIfNull(cost);
        ArgumentNullException.ThrowIfNull(gain);
        ArgumentNullException.ThrowIfNull(names);
        var reasons = refusedBecause ?? [.. names.Select(_ => "")];
        if (gain.Count != cost.Count || names.Count != cost.Count || reasons.Count != cost.Count)
        {
            throw new InvalidDesignException(
                $"Chart '{title}'",
                [Finding.Error($"There are {cost.Count} costs, {gain.Count} gains, {names.Count} names and {reasons.Count} reasons; give "
                    + "one of each a candidate.")]);
        }
        var standing = Enumerable.Range(0, cost.Count).Where(i => reasons[i].Length == 0).ToList();
        var front = Front(cost, gain, standing);
        var beaten = standing.Except(front).ToList();
        var refused = Enumerable.Range(0, cost.Count).Where(i => reasons[i].Length > 0).ToList();
        List<Mark> marks = [];
        if (front.Count > 1) marks.Add(new Curve(Pick(cost, front), Pick(gain, front)) { Name = "", Slot = 0, Stroke = Stroke.Reference });
        if (front.Count > 0) marks.Add(Group("not beaten", front, PointShape.Circle, 0, 11) with { LabelsShown = front.Count <= 10 });
        if (beaten.Count > 0) marks.Add(Group("beaten by another", beaten, PointShape.Ring, 7, 8));
        if (refused.Count > 0) marks.Add(Group("refused", refused, PointShape.Cross, 1, 9));
        return new EngineeringChart(title, Axis.For(cost), Axis.For(gain)) { Marks = marks }.Checked();

        Points Group(string name, List<int> which, PointShape shape, int slot, double size) => new(Pick(cost, which), Pick(gain, which))
        {
            Name = name,
            Labels = [.. which.Select(i => reasons[i].Length == 0 ? names[i] : $"{names[i]}: {reasons[i]}")],
            Shape = shape,
            Slot = slot,
            Size = size,
        };
    }

    /// <summary>Candidates that no other beats in both cost and gain, cheapest first.</summary>
    internal static List<int> Front(Series cost, Series gain, IEnumerable<int> among)
    {
        List<int> front = [];
        foreach (var i in among.Where(i => double.IsFinite(cost[i])
            && double.IsFinite(gain[i])).OrderBy(i => cost[i]).ThenByDescending(i => gain[i]))
        {
            if (front.Count == 0 || gain[i] > gain[front[^1]]) front.Add(i);
        }
        return front;
    }

    private static Series Pick(Series column, List<int> which) => column with { Values = [.. which.Select(i => column[i])] };
}
