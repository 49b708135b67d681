using NotebookKit.Charts.Engineering;
using NotebookKit.Provenance;

namespace NotebookKit.Charts.Results;

/// <summary>Charts of a vessel firing: <c>firing.Chart()</c>.</summary>
public static class FiringCharts
{
    /// <summary>Thrust against time, with the moments that part water from gas.</summary>
    /// <param name="curve">The curve.</param>
    public static EngineeringChart Chart(this ThrustCurve curve)
    {
        ArgumentNullException.ThrowIfNull(curve);
        return ThrustChart.Draw(curve.Time, curve.Thrust, EventLines.From(curve.Events));
    }

    /// <summary>Gas pressure at the left and gas temperature at the right against time.</summary>
    /// <param name="curve">The curve.</param>
    public static EngineeringChart ChartPressure(this ThrustCurve curve)
    {
        ArgumentNullException.ThrowIfNull(curve);
        return TwinAxesChart.Draw("Gas in the vessel", curve.Time, curve.Pressure, curve.Temperature, EventLines.From(curve.Events));
    }

    /// <summary>Thrust of a firing on the stand against time.</summary>
    /// <param name="firing">The firing.</param>
    /// <exception cref="InvalidDesignException">The firing did not reach its end.</exception>
    public static EngineeringChart Chart(this StaticFiringResult firing)
    {
        ArgumentNullException.ThrowIfNull(firing);
        if (firing.Status == ResultStatus.Failed) throw new InvalidDesignException(firing.Title, firing.Findings);
        return firing.Curve.Chart() with { Title = $"Thrust, {char.ToLowerInvariant(firing.Title[0])}{firing.Title[1..]}" };
    }
}
