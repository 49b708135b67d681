using NotebookKit.Charts.Engineering;
using NotebookKit.Charts.Marks;
using NotebookKit.Charts.Notes;
using NotebookKit.Quantities;

namespace NotebookKit.Charts.Results;

/// <summary>Charts of the normal force: <c>force.Chart()</c>, <c>angles.Chart()</c>.</summary>
public static class NormalForceCharts
{
    /// <summary>Every part's normal-force slope, with the station it acts at.</summary>
    /// <param name="force">The normal force by parts.</param>
    public static EngineeringChart Chart(this NormalForceResult force)
    {
        ArgumentNullException.ThrowIfNull(force);
        var parts = force.Components.Reverse().ToList();
        var slopes = new Series("Normal-force slope", "1/rad", [.. parts.Select(p => p.Slope)]);
        return new EngineeringChart(force.Title, Axis.For(slopes), Axis.OfNames("Part"))
        {
            Marks = [new Bars([.. parts.Select(p => p.Name)], slopes) { Name = "",
                Labels = [.. parts.Select(p => $"{Digits.Round(p.Slope)} at {Digits.Round(p.At.Millimeters, 4)} mm")] }],
            Remark = $"together {Digits.Round(force.TotalSlope)} /rad at {Digits.Round(force.CentreOfPressure.Millimeters, 4)} mm "
                + "aft of the tip",
        }.Checked();
    }

    /// <summary>Static margin against angle of attack, with one calibre as the least that is accepted.</summary>
    /// <param name="angles">The margin at angles of attack.</param>
    public static EngineeringChart Chart(this AngleOfAttackResult angles)
    {
        ArgumentNullException.ThrowIfNull(angles);
        EventLine[] events = angles.MarginGoneAt is { } gone ? [new(gone.Degrees, "margin gone")] : [];
        return MarginChart.Draw(angles.Angle, angles.Margin, 1, events) with { Title = angles.Title };
    }
}
