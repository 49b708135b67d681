using NotebookKit.Charts.Engineering;
using NotebookKit.Charts.Marks;
using NotebookKit.Charts.Notes;
using NotebookKit.Quantities;

namespace NotebookKit.Charts.Results;

/// <summary>Charts of what was measured: <c>record.Chart()</c>, <c>fit.Chart()</c>, <c>budget.Chart()</c>.</summary>
public static class LogCharts
{
    /// <summary>The gauge log of a proof against proof and working pressure, with the verdict.</summary>
    /// <param name="record">The judged proof.</param>
    public static EngineeringChart Chart(this ProofRecord record)
    {
        ArgumentNullException.ThrowIfNull(record);
        var readings = record.Readings;
        return new EngineeringChart($"Proof of {readings.Proof.Vessel}", Axis.For(readings.Time), Axis.For(readings.Pressure))
        {
            Remark = $"verdict: {record.Verdict.ToString().ToLowerInvariant()}; highest {record.MaximumPressure}",
            Marks = [new Curve(readings.Time, readings.Pressure) { Name = "" }],
            Limits = [new LimitLine(readings.Proof.ProofPressure.Bar, $"proof {readings.Proof.ProofPressure}"),
                new LimitLine(readings.Proof.WorkingPressure.Bar, $"working {readings.Proof.WorkingPressure}")],
        }.Checked();
    }

    /// <summary>The readings of a fill over the fit.</summary>
    /// <param name="fit">The fit.</param>
    public static EngineeringChart Chart(this FillFit fit)
    {
        ArgumentNullException.ThrowIfNull(fit);
        return OverlayChart.Draw("Fill log and fit", fit.Log.Time, fit.Predicted with { Name = "Pressure" }, fit.Log.Time,
            fit.Log.Pressure) with
        {
            Remark = $"conductance {Digits.Round(fit.Conductance.LitresPerSecondBar)} L/(s bar), "
                + $"{Digits.Round(fit.ConductanceLow.LitresPerSecondBar)} to "
                + $"{Digits.Round(fit.ConductanceHigh.LitresPerSecondBar)} at 95 %",
        };
    }

    /// <summary>The logged height over the fitted one, and the height as it was meant.</summary>
    /// <param name="fit">The fit.</param>
    public static EngineeringChart Chart(this FlightFit fit)
    {
        ArgumentNullException.ThrowIfNull(fit);
        Series Above(Series height) => height with { Name = "Height above pad" };
        return new EngineeringChart($"{fit.Log.Vehicle.Name}, logged and fitted", Axis.For(fit.Time), Axis.For(Above(fit.Logged)))
        {
            Remark =
                $"drag {Digits.Round(fit.DragFactor)} times the assumed drag, {Digits.Round(fit.DragInterval.Low)} to "
                + $"{Digits.Round(fit.DragInterval.High)} at 95 %; effective fill pressure "
                + $"{Digits.Round(fit.EffectiveFillPressure.Bar)} bar gauge",
            Marks =
            [
                new Curve(fit.Time, Above(fit.AsMeant)) { Name = "as planned", Stroke = Stroke.Reference },
                new Curve(fit.Time, Above(fit.Predicted)) { Name = "fitted", Slot = 0 },
                new Points(fit.Time, Above(fit.Logged)) { Name = "logged", Slot = 1, Size = 4 },
            ],
        }.Checked();
    }

    /// <summary>What is left between log and fit: chance has no pattern.</summary>
    /// <param name="fit">The fit.</param>
    public static EngineeringChart ChartResidual(this FlightFit fit)
    {
        ArgumentNullException.ThrowIfNull(fit);
        return new EngineeringChart($"{fit.Log.Vehicle.Name}, residuals", Axis.For(fit.Time), Axis.For(fit.Residual))
        {
            Remark = $"scatter {Digits.Round(fit.Scatter.Meters, 2)} m",
            Marks = [new Points(fit.Time, fit.Residual) { Name = "", Size = 4 }],
        }.Checked();
    }

    /// <summary>Pressure left in each cylinder after every launch.</summary>
    /// <param name="budget">The budget.</param>
    public static EngineeringChart Chart(this LaunchBudgetResult budget)
    {
        ArgumentNullException.ThrowIfNull(budget);
        return LineChart.Draw(budget.Title, budget.Launch, new Axis("Pressure left", budget.CylinderPressures[0].Unit),
            [.. budget.CylinderPressures]);
    }
}
