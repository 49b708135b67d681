using NotebookKit.Provenance;
using NotebookKit.Quantities;
using UnitsNet;

namespace NotebookKit.Vessels.Ends;

/// <summary>The sleeves are carried over the closure and hold it in: no bond takes the thrust. Cloth and hoop wraps stop at the straight part.</summary>
/// <remarks>
/// The yarns' pull along the axis has to equal the thrust: 2·Σσt·cos²θ/R, times what a dome delivers of it. Source: netting analysis,
/// Evans and Gibson, Proc. R. Soc. A 458, 2002; the dome's share is common practice, no source.
/// </remarks>
public sealed record CarriedSleeve : EndJoint
{
    /// <summary>Share of the straight part's strength that yarns deliver bent over the closure's edge; 30 to 100 %.</summary>
    public Ratio Delivers { get; init; } = 85.Percent();

    /// <inheritdoc/>
    public override string Name => "sleeve carried over";

    /// <inheritdoc/>
    public override IReadOnlyList<Finding> Validate(Length bore) =>
        new ValidRange<Ratio>(30.Percent(), 100.Percent()).Find(Delivers, "share delivered over the closure", "85 % is assumed; a sharp edge takes more away.") is { } finding ? [finding] : [];

    internal override string Cause => "sleeve torn over the closure";

    internal override double FailurePascals(in EndContext context) =>
        2 * context.SleeveAxialStrength / context.SleeveRadius * Delivers.DecimalFractions;

    internal override IEnumerable<WorkingStep> Work(EndContext context)
    {
        yield return new WorkingStep(
            "Sleeve carried over the closure tears", @"p = \frac{2\,\sum\sigma_f t_f\cos^2\theta}{R}\,\eta_{end}",
            $"2 × {Digits.Round(context.SleeveAxialStrength / 1000)} N/mm / {Digits.Round(1000 * context.SleeveRadius)} mm × {Delivers.Show()}",
            GaugePressure.FromPascals(FailurePascals(context)).ToString(), VesselSources.Netting);
    }
}
