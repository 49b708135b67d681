using NotebookKit.Charts.Drawings;
using NotebookKit.Charts.Engineering;
using NotebookKit.Charts.Marks;
using NotebookKit.Charts.Notes;
using NotebookKit.Quantities;

namespace NotebookKit.Charts.Results;

/// <summary>Charts and the set-up of a proof: <c>plan.Chart()</c>, <c>plan.ChartEnergy()</c>, <c>plan.Draw()</c>.</summary>
public static class ProofCharts
{
    /// <summary>The steps: pressure held against time held, pumping not counted.</summary>
    /// <param name="plan">The plan.</param>
    public static EngineeringChart Chart(this ProofPlan plan)
    {
        ArgumentNullException.ThrowIfNull(plan);
        List<double> minutes = [0], bar = [0];
        foreach (var step in plan.Steps)
        {
            minutes.AddRange([minutes[^1], minutes[^1] + step.Hold.Minutes]);
            bar.AddRange([step.Pressure.Bar, step.Pressure.Bar]);
        }
        minutes.Add(minutes[^1]);
        bar.Add(0);
        return new EngineeringChart(plan.Title, new Axis("Time held", "min"), new Axis("Pressure", "bar gauge"))
        {
            Remark = "holds only; the pumping between them is not counted",
            Marks = [new Curve(new Series("Time held", "min", minutes), new Series("Pressure", "bar gauge", bar)) { Filled = true }],
            Limits = [new LimitLine(plan.ProofPressure.Bar, $"proof {plan.ProofPressure}"),
                new LimitLine(plan.Proof.WorkingPressure.Bar, $"working {plan.Proof.WorkingPressure}")],
        }.Checked();
    }

    /// <summary>Water the pump should have brought by each pressure: more says trapped air or a leak.</summary>
    /// <param name="plan">The plan.</param>
    public static EngineeringChart ChartWater(this ProofPlan plan)
    {
        ArgumentNullException.ThrowIfNull(plan);
        var rising = plan.Steps.OrderBy(s => s.Pressure).ToList();
        var pressure = new Series("Pressure", "bar gauge", [0, .. rising.Select(s => s.Pressure.Bar)]);
        Series Column(string name, Func<ProofStep, UnitsNet.Volume> volume)
            => new(name, "mL", [0, .. rising.Select(s => volume(s).Milliliters)]);
        return LineChart.Draw(
            "Water to pump", pressure, new Axis("Volume", "mL"),
            Column("in all", s => s.WaterToPump), Column("expansion of the wall", s => s.WallExpansion),
                Column("compression of the water", s => s.WaterCompressed), Column("compression of trapped air", s => s.AirCompressed));
    }

    /// <summary>Energy a burst at proof pressure would set free, in water and, were it done, in air.</summary>
    /// <param name="plan">The plan.</param>
    public static EngineeringChart ChartEnergy(this ProofPlan plan)
    {
        ArgumentNullException.ThrowIfNull(plan);
        return EnergyChart.Draw(plan.EnergyInWater + plan.EnergyInWall + plan.EnergyInTrappedAir, plan.EnergyIfAir) with
        {
            Remark = $"at {plan.ProofPressure}; water counts the stretched wall and trapped air",
        };
    }

    /// <summary>How it is set up.</summary>
    /// <param name="plan">The plan.</param>
    public static Drawing Draw(this ProofPlan plan)
    {
        ArgumentNullException.ThrowIfNull(plan);
        return ProofDrawing.Draw(plan.ProofPressure, plan.StandOff.Distance, plan.LongestSpan);
    }
}
