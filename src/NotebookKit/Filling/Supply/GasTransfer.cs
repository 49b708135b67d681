using NotebookKit.Filling.Balances;
using NotebookKit.Numerics;

namespace NotebookKit.Filling.Supply;

/// <summary>Gas moved from cylinders to vessels at one temperature, by mass.</summary>
internal static class GasTransfer
{
    public const int MaximumLaunches = 500;

    /// <summary>Cylinder pressures after each launch that succeeded, Pa absolute, in the order the cylinders were given; the first row is
    /// before any.</summary>
    public static IReadOnlyList<double[]> Fills(LaunchBudget budget)
    {
        var law = new GasLaw(budget.Gas, budget.Properties);
        double kelvin = budget.Temperature.Kelvins, ambient = budget.Ambient.Pascals,
            target = budget.Target.ToAbsolute(budget.Ambient).Pascals;
        double gasM3 = budget.GasVolume.CubicMeters, margin = budget.Margin.Pascals;
        double[] volumes = [.. budget.Cylinders.Select(c => c.Volume.CubicMeters)];
        double[] now = [.. budget.Cylinders.Select(c => c.Pressure.ToAbsolute(budget.Ambient).Pascals)];
        List<double[]> rows = [[.. now]];
        var run = WorkRun.Current;
        while (rows.Count <= MaximumLaunches)
        {
            run.ThrowIfStopped();
            var next = (double[])now.Clone();
            var vessel = ambient;
            var order = Enumerable.Range(0, next.Length).OrderBy(i => next[i]).ThenBy(i => i).ToArray();
            foreach (var i in order)
            {
                var (cylinder, filled) = Move(law, kelvin, next[i], volumes[i], vessel, gasM3, target, margin);
                if (budget.Order == CylinderOrder.OneAtATime && filled < target) continue;
                next[i] = cylinder;
                vessel = filled;
                if (vessel >= target) break;
            }

            if (vessel < target) break;
            now = next;
            rows.Add([.. now]);
        }

        return rows;
    }

    /// <summary>Opens a cylinder to a vessel until the target is there, or the cylinder is only the margin above the vessel. Pa
    /// absolute.</summary>
    public static (double Cylinder, double Vessel) Move(GasLaw law, double kelvin, double cylinder, double cylinderM3, double vessel,
        double vesselM3, double target, double margin)
    {
        if (cylinder - margin <= vessel) return (cylinder, vessel);
        double Density(double p) => law.AtPressure(p, kelvin).Density;
        var mass = Density(cylinder) * cylinderM3 + Density(vessel) * vesselM3;
        double Excess(double p) => Density(p + margin) * cylinderM3 + Density(p) * vesselM3 - mass;
        var met = BracketedRoot.Solve(Excess, vessel, cylinder, 1e-3);
        if (met < target) return (met + margin, met);
        var left = (mass - Density(target) * vesselM3) / cylinderM3;
        return (BracketedRoot.Solve(p => Density(p) - left, 0.5 * target, cylinder, 1e-3), target);
    }
}
