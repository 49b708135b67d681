using NotebookKit.Proofing.Plans;
using NotebookKit.Provenance;
using NotebookKit.Quantities;
using NotebookKit.Vessels.Bursting;
using NotebookKit.Vessels.Design;
using NotebookKit.Vessels.Laying;
using UnitsNet;
using UnitsNet.Units;

namespace NotebookKit.Sheets;

/// <summary>The paper that goes behind cover: every step of a proof with its box, what to expect, where to write, when to stop. Source:
/// the proof plan.</summary>
public sealed record ProofSheet : Result, ISheet
{
    private ProofSheet(ProofPlan plan, PressureVessel? vessel)
    {
        (Plan, Vessel) = (plan, vessel);
        Outside = vessel?.Layup().OuterDiameter is { } diameter ? (Math.PI * diameter).ToUnit(LengthUnit.Millimeter) : null;
        var free = vessel is null ? null : plan.Steps.Select(s => vessel.Expansion(s.Pressure)).ToList();
        // The growth of the bore is taken for that of the outside; the wall thins a little, which is left out.
        Girths = free is null ? [] : [.. free.Select(e => Outside!.Value + (Math.PI * e.BoreIncrease))];
        Content = Compose();
    }

    /// <summary>The plan.</summary>
    public ProofPlan Plan { get; }

    /// <summary>The vessel; none where the girth isn't to be expected.</summary>
    public PressureVessel? Vessel { get; }

    /// <summary>Girth around the outside without pressure; none without the vessel.</summary>
    public Length? Outside { get; }

    /// <summary>Girth to expect at every step, over the straight part; empty without the vessel. Source: growth of the bore.</summary>
    public IReadOnlyList<Length> Girths { get; }

    /// <inheritdoc/>
    public SheetContent Content { get; }

    /// <inheritdoc/>
    public override string Title => $"Proof sheet, {Plan.Proof.Vessel}";

    /// <inheritdoc/>
    public override ModelCard Model => Plan.Model;

    /// <inheritdoc/>
    public override IReadOnlyList<ResultLine> Lines =>
    [
        new("Proof pressure", Plan.ProofPressure.ToString(), $"for a working pressure of {Plan.Proof.WorkingPressure}"),
        new("Stand-off", Plan.StandOff.Distance.Show(), "everybody, and behind cover"),
        new("Water to pump to proof", Millilitres(Plan.WaterToPump)),
        new("Steps of pressure", Digits.Round(Plan.Steps.Count)),
    ];

    /// <inheritdoc/>
    public override IReadOnlyList<Finding> Findings => Plan.Findings;

    /// <inheritdoc/>
    public override IReadOnlyList<Caution> Cautions => Plan.Cautions;

    /// <inheritdoc/>
    public override Working Working => Plan.Working;

    /// <summary>The sheet of a plan. Source: the plan's.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="vessel">The vessel, for the girth to expect; without it the girth is "not given".</param>
    public static ProofSheet Of(ProofPlan plan, PressureVessel? vessel = null)
    {
        ArgumentNullException.ThrowIfNull(plan);
        return new(plan, vessel);
    }

    private SheetContent Compose()
    {
        var proof = Plan.Proof;
        return new(Title, "Goes behind cover with the people who pump. Tick every box, write every reading, stop on any doubt.",
        [
            new("Vessel and proof")
            {
                Facts =
                [
                    new("Vessel", proof.Vessel, $"{proof.Volume.ToUnit(VolumeUnit.Liter).Show()} inside"),
                    new("Proof pressure", Plan.ProofPressure.ToString(), $"for a working pressure of {proof.WorkingPressure}, "
                        + proof.Rule.Name),
                    new("Stand-off", Plan.StandOff.Distance.Show(), "everybody, and behind cover; nobody in line of a closure"),
                    new("Water to pump to proof", Millilitres(Plan.WaterToPump)),
                    new("Girth without pressure", Outside?.Show(4) ?? "not given", "outside, over the straight part, as designed"),
                ],
                Blanks = [new("Serial", ""), new("Date", ""), new("Water temperature", "°C"), new("Dry mass", "g"),
                    new("Girth before", "mm"), new("Gauge, serial or name", "")],
            },
            new("Before any pressure") { Steps = ProofChecklist.Before(Plan) },
            new("Pressure, step by step") { Text = "Raise slowly. Write the reading at the end of each hold.", Table = Steps() },
            new("While holding, and after") { Steps = ProofChecklist.After(Plan),
                Blanks = [new("Girth after", "mm"), new("Water that stays in", "mL"), new("Lowest gauge at proof", "bar gauge"),
                    new("Mark for the vessel's label, as \"vessel proved\" names it", "")] },
            new("When to stop") { Rules = SheetRules.AbortProof(Plan.StandOff.Distance) },
        ])
        {
            Findings = [.. Findings.Where(f => f.Severity != FindingSeverity.Note)],
            Cautions = Cautions,
            Signatures = ["Proved by", "Witness"],
        };
    }

    private SheetTable Steps() => new(
        ["Done", "Gauge [bar gauge]", "Hold", "Water in, expected [mL]", "Girth, expected [mm]", "Gauge read [bar gauge]", "Water in [mL]",
            "Girth [mm]", "Water [°C]"],
        [.. Plan.Steps.Select((s, i) => (IReadOnlyList<string>)
        [
            SheetTable.Tick, $"{(ProofChecklist.IsDown(Plan, i) ? "down to" : "up to")} {Digits.Round(s.Pressure.Bar)}",
            ProofPlan.Seconds(s.Hold), Digits.Round(s.WaterToPump.Milliliters),
            Girths.Count > 0 ? Digits.Round(Girths[i].Millimeters, 4) : "not given", SheetTable.Blank, SheetTable.Blank, SheetTable.Blank,
            SheetTable.Blank,
        ])]);

    private static string Millilitres(Volume volume) => ProofPlan.Millilitres(volume);
}
