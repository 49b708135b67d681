using NotebookKit.Aerodynamics.Airflow;
using NotebookKit.Aerodynamics.Bodies;
using NotebookKit.Aerodynamics.Fins;
using NotebookKit.Provenance;
using NotebookKit.Quantities;
using UnitsNet;

namespace NotebookKit.Aerodynamics.NormalForces;

/// <summary>Normal force and centre of pressure of a finned body.</summary>
public static class BodyNormalForce
{
    /// <summary>
    /// Normal force and centre of pressure at a small angle of attack, part by part.
    /// Source: J. S. Barrowman, M.S. thesis, 1967, ch. 3 (unverified).
    /// </summary>
    /// <param name="body">The body and its fins.</param>
    /// <param name="mach">Mach number [-]; 0 to 0.9.</param>
    /// <exception cref="InvalidDesignException">The body can't be computed; carries all findings.</exception>
    /// <exception cref="OutOfRangeException">The Mach number is beyond the model.</exception>
    public static NormalForceResult NormalForce(this FinnedBody body, double mach = 0)
    {
        Ranges.CheckMach(mach);
        var findings = body.Validate();
        InvalidDesignException.ThrowIfAny($"Body of {body.Name}", findings);

        var parts = new List<(string Name, double Slope, double AtM)>();
        var steps = new List<WorkingStep>();
        var referenceM2 = body.ReferenceM2;
        foreach (var (part, fore) in body.Placed())
        {
            if (Math.Abs(part.AftM - part.ForeM) < 1e-9) continue;
            var (slope, fromFore) = NormalForceModel.Body(part, referenceM2);
            parts.Add((part.Name, slope, fore + fromFore));
            steps.Add(BodyStep(body, part, slope));
        }

        foreach (var fins in body.Fins)
        {
            var fin = fins.Planform.Integrals;
            var radius = body.RadiusUnderM(fins);
            var slope = NormalForceModel.SetSlope(fins.Count, fin, radius, referenceM2, mach);
            var at = fins.LeadingEdgeAt.Meters + fin.CentreM;
            parts.Add((fins.Name, slope, at));
            steps.AddRange(FinSteps(body, fins, fin, radius, slope, at, mach));
        }

        var total = parts.Sum(p => p.Slope);
        var centre = parts.Sum(p => p.Slope * p.AtM) / total;
        steps.Add(new WorkingStep("Centre of pressure", @"x = \frac{\sum C_{N\alpha,i}\,x_i}{\sum C_{N\alpha,i}}",
            string.Join(" + ", parts.Select(p => $"{Digits.Round(p.Slope, 4)} × {MillimetreText.Of(p.AtM)}"))
                + $", over {Digits.Round(total, 4)}",
            MillimetreText.Of(centre), Literature.BarrowmanThesis));

        return new NormalForceResult
        {
            Title = $"Normal force and centre of pressure, {body.Name}",
            Mach = mach,
            ReferenceDiameter = body.ReferenceDiameter,
            Components = parts.Select(p => new NormalForceComponent(p.Name, p.Slope, Length.FromMeters(p.AtM),
                Ratio.FromPercent(100 * p.Slope / total))).ToArray(),
            Findings = [.. findings, .. NormalForceFindings(body, mach)],
            Working = new Working("Centre of pressure by components", steps),
        };
    }

    private static IEnumerable<Finding> NormalForceFindings(FinnedBody body, double mach)
    {
        if (body.Fins.Count == 0)
            yield return AerodynamicsFindings.BodyWithoutFinsIsUnstable();
        foreach (var fins in body.Fins.Where(f => f.Count == 5))
            yield return AerodynamicsFindings.FiveFinsAreNotInSource(fins.Name);
        if (body.Fins.Count > 1)
            yield return AerodynamicsFindings.MoreThanOneSetOfFins();
        if (mach > 0.8)
            yield return AerodynamicsFindings.MachBeyondPrandtlGlauert(mach);
    }

    private static WorkingStep BodyStep(FinnedBody body, BodyPart part, double slope) => new(
        $"Slope of {part.Name}", @"C_{N\alpha} = 2\,\frac{A_2 - A_1}{A}",
        $"2 × (({MillimetreText.Of(part.AftM)})² − ({MillimetreText.Of(part.ForeM)})²) / ({MillimetreText.Of(body.ReferenceM)})²",
        $"{Digits.Round(slope, 4)} /rad", Literature.Munk);

    private static IEnumerable<WorkingStep> FinSteps(FinnedBody body, FinSet fins, FinIntegrals fin, double radiusM, double slope,
        double atM, double mach)
    {
        var panel = NormalForceModel.PanelSlope(fin, body.ReferenceM2, mach);
        var factor = NormalForceModel.Interference(fins.Count, radiusM, fin.SpanM);
        var beta = Math.Sqrt(1 - (mach * mach));
        yield return new WorkingStep($"Slope of one panel, {fins.Name}",
            @"C_{N\alpha,1} = \frac{2\pi\,AR\,A_f/A}{2 + \sqrt{4 + (\beta\,AR/\cos\Gamma)^2}}",
            $"2π × {Digits.Round(fin.AspectRatio, 4)} × {Digits.Round(fin.AreaM2 / body.ReferenceM2, 4)} / (2 + √(4 + "
                + $"({Digits.Round(beta, 4)} × {Digits.Round(fin.AspectRatio, 4)} / {Digits.Round(fin.CosMidSweep, 4)})²))",
            $"{Digits.Round(panel, 4)} /rad", Literature.Diederich);
        yield return new WorkingStep($"Interference, {fins.Name}",
            fins.Count <= 4 ? @"K = 1 + \frac{r}{s + r}" : @"K = 1 + \frac{r}{2\,(s + r)}",
            $"r = {MillimetreText.Of(radiusM)}, s = {MillimetreText.Of(fin.SpanM)}", Digits.Round(factor, 4), Literature.BarrowmanReport);
        yield return new WorkingStep($"Slope of {fins.Name}", @"C_{N\alpha} = \frac{n}{2}\,C_{N\alpha,1}\,K",
            $"{fins.Count} / 2 × {Digits.Round(panel, 4)} × {Digits.Round(factor, 4)}", $"{Digits.Round(slope, 4)} /rad",
                Literature.BarrowmanThesis);
        yield return new WorkingStep($"Centre of {fins.Name}", @"x = x_{LE} + x_{mac} + \frac{c_{mac}}{4}",
            $"{MillimetreText.Of(fins.LeadingEdgeAt.Meters)} + {MillimetreText.Of(fin.MeanChordLeadM)} + "
                + $"{MillimetreText.Of(fin.MeanChordM)} / 4", MillimetreText.Of(atM), Literature.BarrowmanThesis);
    }
}
