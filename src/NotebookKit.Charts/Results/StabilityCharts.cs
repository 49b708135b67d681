using NotebookKit.Charts.Engineering;

namespace NotebookKit.Charts.Results;

/// <summary>Charts of a stability result: <c>stability.Chart()</c>.</summary>
public static class StabilityCharts
{
    /// <summary>Static margin along the flight with the least that is accepted.</summary>
    /// <param name="stability">The result.</param>
    public static EngineeringChart Chart(this StabilityResult stability)
    {
        ArgumentNullException.ThrowIfNull(stability);
        return MarginChart.Draw(stability.Abscissa, stability.Margin, stability.Limits.Minimum) with { Title = stability.Title };
    }

    /// <summary>Where the centre of gravity goes against the centre of pressure.</summary>
    /// <param name="stability">The result.</param>
    public static EngineeringChart ChartCentres(this StabilityResult stability)
    {
        ArgumentNullException.ThrowIfNull(stability);
        return LineChart.Draw("Centres of gravity and pressure", stability.Abscissa,
            new Axis("Distance aft of the nose tip", stability.CentreOfGravity.Unit), stability.CentreOfGravity,
            stability.CentreOfPressure);
    }
}
