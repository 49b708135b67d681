using NotebookKit.Filling.Balances;
using NotebookKit.Provenance;
using NotebookKit.Quantities;
using UnitsNet;

namespace NotebookKit.Filling.Supply;

/// <summary>How many launches the cylinders give and what is left in them after each.</summary>
/// <remarks>Source: as <see cref="LaunchBudget"/>.</remarks>
public sealed record LaunchBudgetResult : Result
{
    private readonly IReadOnlyList<double[]> _rows;

    internal LaunchBudgetResult(LaunchBudget budget, IReadOnlyList<double[]> rows, IReadOnlyList<Finding> findings)
    {
        Budget = budget;
        _rows = rows;
        LaunchesOtherwise = GasTransfer.Fills(budget with { Order = budget.Order == CylinderOrder.Cascade ? CylinderOrder.OneAtATime
            : CylinderOrder.Cascade }).Count - 1;
        LaunchesIdeal = budget.Properties == GasProperties.Real
            ? GasTransfer.Fills(budget with { Properties = GasProperties.Ideal }).Count - 1 : Launches;
        Findings = [.. findings, .. Say()];
    }

    /// <summary>The budget that was run.</summary>
    public LaunchBudget Budget { get; }

    /// <summary>Launches that reach the target.</summary>
    public int Launches => _rows.Count - 1;

    /// <summary>Launches if the cylinders were used the other way.</summary>
    public int LaunchesOtherwise { get; }

    /// <summary>Launches that an ideal-gas sum would promise.</summary>
    public int LaunchesIdeal { get; }

    /// <summary>Numbers of launches done, 0 first.</summary>
    public Series Launch => new("Launches done", "-", [.. Enumerable.Range(0, _rows.Count).Select(i => (double)i)]);

    /// <summary>Pressure of each cylinder after that many launches, in the order given.</summary>
    public IReadOnlyList<Series> CylinderPressures =>
        [.. Budget.Cylinders.Select((c, k) => new Series($"Cylinder {c.Name}", "bar gauge",
            [.. _rows.Select(r => AbsolutePressure.FromPascals(r[k]).ToGauge(Budget.Ambient).Bar)]))];

    /// <inheritdoc/>
    public override string Title => $"Launches at {Budget.Target}";

    /// <inheritdoc/>
    public override ModelCard Model => new(
        "Mass balance between cylinders and vessel",
        ["Cylinders and vessel have one temperature before and after each fill.",
            $"A cylinder stays {Budget.Margin.Show()} above the vessel.", "After a launch the vessel holds air at ambient pressure."],
        "To 300 bar gauge.",
        [Budget.Properties == GasProperties.Real ? Budget.Gas.Real!.Source : Budget.Gas.Source]);

    /// <inheritdoc/>
    public override IReadOnlyList<ResultLine> Lines =>
    [
        new("Launches", $"{Launches}", Budget.Order == CylinderOrder.Cascade ? $"in cascade; one cylinder at a time {LaunchesOtherwise}"
            : $"one cylinder at a time; in cascade {LaunchesOtherwise}"),
        new("By the ideal-gas law", $"{LaunchesIdeal}"),
        .. Budget.Cylinders.Select((c, k) => new ResultLine($"Left in {c.Name}",
            AbsolutePressure.FromPascals(_rows[^1][k]).ToGauge(Budget.Ambient).ToString(), c.ToString())),
    ];

    /// <inheritdoc/>
    public override IReadOnlyList<Caution> Cautions => Provenance.Cautions.ForFilling;

    /// <inheritdoc/>
    public override Working Working
    {
        get
        {
            var law = new GasLaw(Budget.Gas, Budget.Properties);
            double Density(AbsolutePressure p) => law.AtPressure(p.Pascals, Budget.Temperature.Kelvins).Density;
            var perLaunch = (Density(Budget.Target.ToAbsolute(Budget.Ambient)) - Density(Budget.Ambient)) * Budget.GasVolume.CubicMeters;
            var usable = Budget.Cylinders.Sum(c => Math.Max(0,
                Density(c.Pressure.ToAbsolute(Budget.Ambient)) - Density((Budget.Target
                + Budget.Margin).ToAbsolute(Budget.Ambient))) * c.Volume.CubicMeters);
            var source = Budget.Properties == GasProperties.Real ? Budget.Gas.Real!.Source : Budget.Gas.Source;
            return new(Title,
            [
                new("Gas for one launch", @"m_1 = (\rho(p) - \rho(p_a))\,V",
                    $"({Digits.Round(Density(Budget.Target.ToAbsolute(Budget.Ambient)), 4)} − "
                    + $"{Digits.Round(Density(Budget.Ambient), 4)}) kg/m³ × {Digits.Round(Budget.GasVolume.Liters, 4)} L",
                    $"{Digits.Round(perLaunch * 1000, 4)} g", source),
                new("Gas above the target in the cylinders", @"m = \sum (\rho(p_c) - \rho(p + \Delta p))\,V_c",
                    string.Join(" + ", Budget.Cylinders.Select(c => $"{c}")), $"{Digits.Round(usable * 1000, 4)} g", source),
                new("Maximum launches without cascade", @"n = \frac{m}{m_1}",
                    $"{Digits.Round(usable * 1000, 4)} g / {Digits.Round(perLaunch * 1000, 4)} g", Digits.Round(usable / perLaunch, 3),
                    source),
            ]);
        }
    }

    private IEnumerable<Finding> Say()
    {
        if (Launches == 0) yield return FillingFindings.NoLaunchIsPossible(Budget.Target, Budget.Margin);
        if (Launches >= GasTransfer.MaximumLaunches) yield return FillingFindings.CountingOfLaunchesStopped(GasTransfer.MaximumLaunches);
        if (LaunchesIdeal > Launches) yield return FillingFindings.IdealGasSumPromisesLaunches(LaunchesIdeal);
        if (LaunchesOtherwise > Launches) yield return FillingFindings.OtherOrderGivesMoreLaunches(LaunchesOtherwise);
    }
}
