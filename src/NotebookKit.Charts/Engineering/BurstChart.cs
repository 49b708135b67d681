using NotebookKit.Charts.Marks;
using NotebookKit.Charts.Notes;
using NotebookKit.Provenance;
using NotebookKit.Quantities;

namespace NotebookKit.Charts.Engineering;

/// <summary>Distribution of predicted burst with the pressures it is judged by: working, MEOP, proof, B-basis.</summary>
public static class BurstChart
{
    /// <summary>Draws the distribution.</summary>
    /// <param name="burst">Sampled burst pressures, in "bar gauge".</param>
    /// <param name="ratings">Name and value of each pressure to mark.</param>
    /// <exception cref="InvalidDesignException">No samples, or samples that aren't in bar gauge.</exception>
    public static EngineeringChart Draw(Series burst, params IReadOnlyList<(string Name, GaugePressure Value)> ratings)
    {
        ArgumentNullException.ThrowIfNull(burst);
        ArgumentNullException.ThrowIfNull(ratings);
        return PressureAxis.Require(burst, new EngineeringChart("Predicted burst pressure", Axis.For(burst),
            new Axis("Share of samples", "%"))
        {
            Remark = $"{WholeNumber.Show(burst.Count)} samples",
            Marks = [new Histogram(burst) { Name = "" }],
            Limits = [.. ratings.OrderBy(r => r.Value).Select(r => new LimitLine(r.Value.Bar,
                $"{r.Name} {r.Value}") { IsVertical = true })],
        }.Checked());
    }
}
