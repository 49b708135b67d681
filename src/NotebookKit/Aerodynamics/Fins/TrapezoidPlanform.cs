using NotebookKit.Aerodynamics.Airflow;
using NotebookKit.Provenance;
using UnitsNet;

namespace NotebookKit.Aerodynamics.Fins;

/// <summary>A fin with straight edges and a tip parallel to the body.</summary>
/// <param name="Root">Chord at the body; 1 mm to 2 m.</param>
/// <param name="Tip">Chord at the tip; 0 to 2 m.</param>
/// <param name="Span">Body surface to tip; 1 mm to 2 m.</param>
/// <param name="Sweep">How far the tip leading edge lies aft of the root leading edge; −5 to 5 m, negative where it lies forward.</param>
public sealed record TrapezoidPlanform(Length Root, Length Tip, Length Span, Length Sweep) : FinPlanform
{
    /// <inheritdoc/>
    public override IReadOnlyList<PlanformPoint> Corners =>
        [new(Length.Zero, Length.Zero), new(Sweep, Span), new(Sweep + Tip, Span), new(Root, Length.Zero)];

    internal override IReadOnlyList<FinStrip> Strips => [new(0, Span.Meters, 0, Sweep.Meters, Root.Meters, Tip.Meters)];

    /// <inheritdoc/>
    public override FinPlanform Scaled(double factor) => 
        Checked(factor) is var by ? new TrapezoidPlanform(Root * by, Tip * by, Span * by, Sweep * by) : this;

    /// <inheritdoc/>
    public override FinPlanform Stretched(double factor) => this with { Span = Span * Checked(factor) };

    /// <inheritdoc/>
    public override IReadOnlyList<Finding> Validate()
    {
        var findings = new List<Finding>();
        findings.AddIf(Ranges.Chord.Find(Root, "fin root chord", "Measure along the body."));
        findings.AddIf(new ValidRange<Length>(Length.Zero, Ranges.Chord.Maximum).Find(Tip, "fin tip chord", "Zero makes a pointed tip."));
        findings.AddIf(Ranges.Chord.Find(Span, "fin span", "Measure from the body surface to the tip; leave the fins out for a body "
            + "without them."));
        if (!(Math.Abs(Sweep.Meters) <= 5))
            findings.Add(AerodynamicsFindings.FinSweepOutOfRange(Sweep));
        return findings;
    }

    private static double Checked(double factor) =>
        new ValidRange<double>(0, 1e6).Check(factor, "scale of the fin", "1 leaves the fin.");
}
