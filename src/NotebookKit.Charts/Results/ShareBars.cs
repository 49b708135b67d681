using NotebookKit.Charts.Marks;
using NotebookKit.Quantities;
using UnitsNet;

namespace NotebookKit.Charts.Results;

/// <summary>Shares as lying bars, the largest on top.</summary>
internal static class ShareBars
{
    public static EngineeringChart Draw(string title, string name, IReadOnlyList<(string What, Ratio Share)> shares)
    {
        var sorted = shares.OrderBy(s => s.Share).ToList();
        var column = new Series(name, "%", [.. sorted.Select(s => s.Share.Percent)]);
        return new EngineeringChart(title, Axis.For(column), Axis.OfNames("Input"))
        {
            Marks = [new Bars([.. sorted.Select(s => s.What)], column) { Name = "",
                Labels = [.. sorted.Select(s => $"{Digits.Round(s.Share.Percent, 2)} %")] }],
        }.Checked();
    }
}
