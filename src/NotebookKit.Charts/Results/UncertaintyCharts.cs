using NotebookKit.Charts.Engineering;
using NotebookKit.Charts.Marks;
using NotebookKit.Provenance;
using NotebookKit.Quantities;

namespace NotebookKit.Charts.Results;

/// <summary>Charts of what isn't known of a vessel: <c>distribution.Chart(rating)</c>, <c>update.Chart()</c>.</summary>
public static class UncertaintyCharts
{
    /// <summary>Distribution of burst with its basis values and, where a rating is given, the pressures it allows.</summary>
    /// <param name="distribution">The bursts.</param>
    /// <param name="rating">A rating; none draws the basis values alone.</param>
    /// <exception cref="InvalidDesignException">The rating was refused.</exception>
    public static EngineeringChart Chart(this BurstDistribution distribution, Rating? rating = null)
    {
        ArgumentNullException.ThrowIfNull(distribution);
        List<(string, GaugePressure)> marks = [("A-basis", distribution.ABasis), ("B-basis", distribution.BBasis),
            ("mean", distribution.Mean)];
        if (rating is not null) marks.AddRange([("working", rating.WorkingPressure), ("MEOP", rating.MaximumExpectedPressure),
            ("proof", rating.ProofPressure)]);
        return BurstChart.Draw(distribution.Bursts, marks) with { Title = $"Burst of the next vessel like {distribution.Vessel.Name}" };
    }

    /// <summary>What drives the scatter of burst.</summary>
    /// <param name="distribution">The bursts.</param>
    public static EngineeringChart ChartDrivers(this BurstDistribution distribution)
    {
        ArgumentNullException.ThrowIfNull(distribution);
        return ShareBars.Draw("Sensitivity of burst", "Share of the variance",
            [.. distribution.Drivers.Select(d => (d.Name, d.Share))]);
    }

    /// <summary>What is believed of the fabrication efficiency before and after the tests, and what one more burst would do.</summary>
    /// <param name="update">The update.</param>
    public static EngineeringChart Chart(this EfficiencyUpdate update)
    {
        ArgumentNullException.ThrowIfNull(update);
        return new EngineeringChart("Fabrication efficiency", Axis.For(update.Prior.Efficiency), Axis.For(update.Prior.Density))
        {
            Remark = $"{update.Bursts} burst, {update.Held} only held; worth {Digits.Round(update.EffectiveBursts, 2)} bursts",
            Marks =
            [
                new Curve(update.Prior.Efficiency, update.Prior.Density) { Name = update.Prior.Name },
                new Curve(update.Posterior.Efficiency, update.Posterior.Density) { Name = update.Posterior.Name, Filled = true },
                new Curve(update.AfterTwin.Efficiency, update.AfterTwin.Density) { Name = $"were a twin burst at {update.TwinBurst}",
                    Stroke = Stroke.Reference },
            ],
        }.Checked();
    }
}
