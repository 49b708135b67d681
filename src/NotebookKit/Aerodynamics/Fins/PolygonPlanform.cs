using NotebookKit.Aerodynamics.Airflow;
using NotebookKit.Provenance;
using UnitsNet;

namespace NotebookKit.Aerodynamics.Fins;

/// <summary>
/// A fin of any straight-sided outline that a line parallel to the body crosses once going in and once coming out. The component method's
/// trapezoid forms are the closed form of the integrals over chord that are taken here, strip by strip (derived; a trapezoid given as a
/// polygon gives the trapezoid's numbers). The sweep in the lift slope is the area-weighted mean over strips, an approximation.
/// Source: J. S. Barrowman, M.S. thesis, 1967, ch. 3 (unverified).
/// </summary>
/// <param name="Outline">Corners in order from the root leading edge round the tip to the root trailing edge; the first and the last lie on
/// the body (Out = 0).</param>
public sealed record PolygonPlanform(IReadOnlyList<PlanformPoint> Outline) : FinPlanform
{
    /// <inheritdoc/>
    public override IReadOnlyList<PlanformPoint> Corners => Outline;

    internal override IReadOnlyList<FinStrip> Strips
    {
        get
        {
            var stations = Outline.Select(p => p.Out.Meters).Distinct().Order().ToArray();
            var strips = new List<FinStrip>();
            for (var i = 0; i + 1 < stations.Length; i++)
            {
                var crossings = Crossings(stations[i], stations[i + 1]);
                if (crossings.Count != 2) continue;
                var (lead, trail) = (crossings[0], crossings[1]);
                strips.Add(new FinStrip(stations[i], stations[i + 1], lead.Inner, lead.Outer, trail.Inner - lead.Inner,
                    trail.Outer - lead.Outer));
            }

            return strips;
        }
    }

    /// <inheritdoc/>
    public override FinPlanform Scaled(double factor) => !double.IsFinite(Checked(factor)) ? this :
        new PolygonPlanform(Outline.Select(p => new PlanformPoint(p.Aft * factor, p.Out * factor)).ToArray());

    /// <inheritdoc/>
    public override FinPlanform Stretched(double factor) => !double.IsFinite(Checked(factor)) ? this :
        new PolygonPlanform(Outline.Select(p => p with { Out = p.Out * factor }).ToArray());

    /// <inheritdoc/>
    public override IReadOnlyList<Finding> Validate()
    {
        var findings = new List<Finding>();
        if (Outline.Count is < 3 or > 200)
        {
            findings.Add(AerodynamicsFindings.FinOutlineCornerCountOutOfRange(Outline.Count));
            return findings;
        }

        var (first, last) = (Outline[0], Outline[^1]);
        if (Math.Abs(first.Out.Meters) > 1e-9 || Math.Abs(last.Out.Meters) > 1e-9)
            findings.Add(AerodynamicsFindings.FinOutlineStartsOrEndsOffBody(first.Out, last.Out));
        findings.AddIf(Ranges.Chord.Find(last.Aft - first.Aft, "fin root chord",
            "List the corners from the root leading edge round the tip to the root trailing edge."));
        foreach (var point in Outline.Where(p => !(p.Out.Meters >= 0)))
            findings.Add(AerodynamicsFindings.FinCornerLiesInsideBody(point.Out));
        findings.AddIf(Ranges.Chord.Find(Length.FromMeters(Outline.Max(p => p.Out.Meters)), "fin span",
            "Measure from the body surface to the tip."));
        if (findings.Count > 0) return findings;

        var stations = Outline.Select(p => p.Out.Meters).Distinct().Order().ToArray();
        for (var i = 0; i + 1 < stations.Length; i++)
        {
            var count = Crossings(stations[i], stations[i + 1]).Count;
            if (count == 2) continue;
            findings.Add(AerodynamicsFindings.FinOutlineIsCrossedTooOften(
                count, Length.FromMeters(stations[i]), Length.FromMeters(stations[i + 1])));
        }

        return findings;
    }

    /// <summary>Where the sides that span a strip cross its two stations, fore to aft [m].</summary>
    private List<(double Inner, double Outer)> Crossings(double innerM, double outerM)
    {
        var crossings = new List<(double Inner, double Outer)>();
        for (var i = 0; i + 1 < Outline.Count; i++)
        {
            var (ax, ay) = (Outline[i].Aft.Meters, Outline[i].Out.Meters);
            var (bx, by) = (Outline[i + 1].Aft.Meters, Outline[i + 1].Out.Meters);
            if (Math.Min(ay, by) > innerM || Math.Max(ay, by) < outerM) continue;
            crossings.Add((At(innerM), At(outerM)));

            double At(double y) => ax + ((bx - ax) * (y - ay) / (by - ay));
        }

        crossings.Sort((a, b) => (a.Inner + a.Outer).CompareTo(b.Inner + b.Outer));
        return crossings;
    }

    private static double Checked(double factor) =>
        new ValidRange<double>(0, 1e6).Check(factor, "scale of the fin", "1 leaves the fin.");
}
