using NotebookKit.Charts.Engineering;
using NotebookKit.Charts.Marks;
using NotebookKit.Provenance;
using NotebookKit.Quantities;
using UnitsNet;

namespace NotebookKit.Charts.Results;

/// <summary>Charts of drag: <c>body.ChartDrag(20.MetresPerSecond(), ...)</c>.</summary>
public static class DragCharts
{
    /// <summary>Drag coefficient by part at several speeds, middle of the band, stacked.</summary>
    /// <param name="body">The body.</param>
    /// <param name="speeds">Speeds; 1 m/s up to Mach 0.9; at least one.</param>
    /// <exception cref="InvalidDesignException">No speeds, or a body that can't be computed.</exception>
    /// <exception cref="OutOfRangeException">A speed is beyond the model.</exception>
    public static EngineeringChart ChartDrag(this FinnedBody body, params IReadOnlyList<Speed> speeds)
    {
        ArgumentNullException.ThrowIfNull(body);
        ArgumentNullException.ThrowIfNull(speeds);
        if (speeds.Count == 0) throw new InvalidDesignException("Chart 'Drag by part'",
            [Finding.Error("There is no speed to draw drag at; give at least one.")]);
        var results = speeds.Select(s => body.Drag(s)).ToList();
        var names = results.SelectMany(r => r.Components).Select(c => c.Name).Distinct().ToList();
        var parts = names.Select(name => new Series(name, "-",
            [.. results.Select(r => r.Components.Where(c => c.Name == name).Sum(c => c.Middle))]));
        return DragShareChart.Draw(new Series("Speed", "m/s", [.. speeds.Select(s => s.MetersPerSecond)]), [.. parts]) with
        {
            Title = $"Drag by part, {body.Name}",
            Remark = "middle of the band between published forms",
        };
    }

    /// <summary>Every part's drag coefficient with its share.</summary>
    /// <param name="drag">The drag by parts.</param>
    public static EngineeringChart Chart(this DragResult drag)
    {
        ArgumentNullException.ThrowIfNull(drag);
        var sorted = drag.Components.OrderBy(c => c.Middle).ToList();
        var middle = new Series("Drag coefficient", "-", [.. sorted.Select(c => c.Middle)]);
        return new EngineeringChart(drag.Title, Axis.For(middle), Axis.OfNames("Part"))
        {
            Remark = $"{Digits.Round(drag.Middle)} in all ({Digits.Round(drag.Low)} to {Digits.Round(drag.High)}) at {drag.Speed.Show()}",
            Marks = [new Bars([.. sorted.Select(c => c.Name)], middle) { Name = "",
                Labels = [.. sorted.Select(c => $"{Digits.Round(c.Middle, 2)}, {c.Share.Show(2)}")] }],
        }.Checked();
    }

    /// <summary>Drag coefficient against Mach number with the band between the published forms.</summary>
    /// <param name="curves">Low, middle and high tables.</param>
    public static EngineeringChart Chart(this DragCurves curves)
    {
        ArgumentNullException.ThrowIfNull(curves);
        var (mach, middle) = curves.Middle.AsSeries();
        return new EngineeringChart("Drag coefficient", Axis.For(mach), Axis.For(middle))
        {
            Marks =
            [
                new Band(mach, curves.Low.AsSeries().Coefficient, curves.High.AsSeries().Coefficient) { Slot = 0,
                    Name = "between the published forms" },
                new Curve(mach, middle) { Slot = 0, Name = "middle" },
            ],
        }.Checked();
    }
}
