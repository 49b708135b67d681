using NotebookKit.Provenance;
using NotebookKit.Quantities;
using UnitsNet;

namespace NotebookKit.Building.Resins;

/// <summary>Resin divided into cups. Source: see <see cref="Model"/>.</summary>
public sealed record ResinPlanResult : Result
{
    internal ResinPlanResult(ResinPlan plan, IReadOnlyList<Finding> findings)
    {
        Plan = plan;
        var system = plan.System;
        var byTime = plan.GramsPerMinute * system.PotLife.Minutes * plan.UsableLife.DecimalFractions;
        MaximumBatch = Mass.FromGrams(Math.Min(byTime, system.PotLifeMass.Grams));
        Batches = Divide();
        Findings =
        [
            .. findings,
            .. byTime < system.PotLifeMass.Grams / 5
                ? [BuildingFindings.ResinThickensBeforeItIsLaid(byTime, system.Name)]
                : Array.Empty<Finding>(),
        ];
    }

    /// <summary>What was asked.</summary>
    public ResinPlan Plan { get; }

    /// <summary>Most that may be mixed at once: what the hands lay on in the usable pot life, and no more than the pot life is stated
    /// for.</summary>
    public Mass MaximumBatch { get; }

    /// <summary>The cups in order.</summary>
    public IReadOnlyList<ResinBatch> Batches { get; }

    /// <summary>Resin to have, hardener apart.</summary>
    public Mass Resin => Mass.FromGrams(Batches.Sum(b => b.Resin.Grams));

    /// <summary>Hardener to have.</summary>
    public Mass Hardener => Mass.FromGrams(Batches.Sum(b => b.Hardener.Grams));

    /// <inheritdoc/>
    public override string Title => $"Resin plan, {Plan.System.Name}";

    /// <inheritdoc/>
    public override ModelCard Model { get; } = new(
        "Cups within the pot life",
        [
            "What stays on the work, and the waste over it, is mixed in cups of at most the mass that the pot life is stated for.",
            "Each cup is on the work within the usable share of the pot life, at the pace given; the next is mixed when it is empty.",
            "A cup ends with a ply where the next ply would not fit it; a ply larger than a cup is divided evenly.",
        ],
        "Pot life is for the data sheet's temperature, mostly 20 to 25 °C; ten degrees warmer halves it (common practice).",
        [BuildingSources.BenchPractice]);

    /// <inheritdoc/>
    public override IReadOnlyList<ResultLine> Lines =>
    [
        .. Batches.Select((b, i) => new ResultLine(
            $"Cup {i + 1}", $"{Digits.Round(b.Resin.Grams)} g + {Digits.Round(b.Hardener.Grams)} g",
                $"resin + hardener, on the work in {Digits.Round(b.Time.Minutes, 2)} min: {string.Join(", ", b.For)}")),
        new("Resin to have", $"{Digits.Round(Resin.Grams)} g", $"{Plan.Waste.Show(2)} of waste in it"),
        new("Hardener to have", $"{Digits.Round(Hardener.Grams)} g", $"{Plan.System.HardenerPerResin.Show(3)} of the resin"),
    ];

    /// <inheritdoc/>
    public override IReadOnlyList<Caution> Cautions => Provenance.Cautions.ForBench;

    /// <inheritdoc/>
    public override Working Working => new(Title,
    [
        new("Maximum cup", @"m = \min(\dot m\,\eta\,t_{pot},\; m_{ref})",
            $"min({Digits.Round(Plan.GramsPerMinute)} g/min × {Plan.UsableLife.Show(2)} × {Digits.Round(Plan.System.PotLife.Minutes)} "
                + $"min, {Plan.System.PotLifeMass.Show()})", $"{Digits.Round(MaximumBatch.Grams)} g", BuildingSources.BenchPractice),
        new("Resin and hardener of a cup", @"m_r = \frac{m}{1 + h},\quad m_h = h\,m_r",
            $"{Digits.Round(Batches[0].Mixed.Grams, 4)} g / (1 + {Digits.Round(Plan.System.HardenerPerResin.DecimalFractions, 3)})",
                $"{Digits.Round(Batches[0].Resin.Grams)} g and {Digits.Round(Batches[0].Hardener.Grams)} g", BuildingSources.BenchPractice),
    ]);

    private List<ResinBatch> Divide()
    {
        List<ResinBatch> batches = [];
        List<string> current = [];
        double load = 0, largest = MaximumBatch.Grams;
        foreach (var share in Plan.Shares)
        {
            var grams = share.Mass.Grams * (1 + Plan.Waste.DecimalFractions);
            if (load > 0 && load + grams > largest + 1e-9) Close();
            var cups = (int)Math.Ceiling(grams / largest - 1e-9);
            for (var i = 1; i < cups; i++)
            {
                (load, current) = (grams / cups, [$"{share.For}, part {i} of {cups}"]);
                Close();
            }

            load += grams / cups;
            current.Add(cups > 1 ? $"{share.For}, part {cups} of {cups}" : share.For);
        }

        Close();
        return batches;

        void Close()
        {
            var resin = load / (1 + Plan.System.HardenerPerResin.DecimalFractions);
            batches.Add(new(Mass.FromGrams(resin), Mass.FromGrams(load - resin), current,
                Duration.FromMinutes(load / Plan.GramsPerMinute)));
            (load, current) = (0, []);
        }
    }
}

/// <summary>One cup of resin.</summary>
/// <param name="Resin">Resin to weigh in.</param>
/// <param name="Hardener">Hardener to weigh in.</param>
/// <param name="For">What it is for, in order.</param>
/// <param name="Time">Time it takes to lay on.</param>
public sealed record ResinBatch(Mass Resin, Mass Hardener, IReadOnlyList<string> For, Duration Time)
{
    /// <summary>Both together.</summary>
    public Mass Mixed => Resin + Hardener;
}
