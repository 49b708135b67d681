using NotebookKit.Provenance;
using NotebookKit.Quantities;
using NotebookKit.Vessels.Design;

namespace NotebookKit.Vessels.Ends;

/// <summary>What sleeves carried over a closure hold.</summary>
/// <remarks>
/// The yarns' pull along the axis has to equal the thrust: 2·Σσt·cos²θ/R, times what a dome delivers of it. Source: netting analysis,
/// Evans and Gibson, Proc. R. Soc. A 458, 2002; the dome's share is common practice, no source.
/// </remarks>
internal static class SleeveStrength
{
    public const string Cause = "sleeve torn over the closure";

    public static double FailurePascals(CarriedSleeve sleeve, in EndContext context) =>
        2 * context.SleeveAxialStrength / context.SleeveRadius * sleeve.Delivers.DecimalFractions;

    public static IEnumerable<WorkingStep> Work(CarriedSleeve sleeve, EndContext context)
    {
        yield return new WorkingStep(
            "Sleeve carried over the closure tears", @"p = \frac{2\,\sum\sigma_f t_f\cos^2\theta}{R}\,\eta_{end}",
            $"2 × {Digits.Round(context.SleeveAxialStrength / 1000)} N/mm / {Digits.Round(1000 * context.SleeveRadius)} mm × "
                + $"{sleeve.Delivers.Show()}",
            GaugePressure.FromPascals(FailurePascals(sleeve, context)).ToString(), VesselSources.Netting);
    }
}
