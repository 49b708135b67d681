using NotebookKit.Provenance;
using NotebookKit.Quantities;

namespace NotebookKit.Vessels.Testing;

/// <summary>Bursts and held proofs of vessels made the same way: what they teach of the fabrication efficiency.</summary>
/// <param name="Tests">The tests, in any order.</param>
/// <remarks>
/// The burst of a wall is lognormal about the prediction at the true efficiency; a held proof, and a burst at an end, tell only that it
/// lies
/// above (right-censored). Source: Gelman et al., Bayesian Data Analysis, 3rd ed. 2013, ch. 3 and §8.7 (censored data).
/// </remarks>
public sealed record VesselEvidence(IReadOnlyList<VesselTest> Tests)
{
    /// <summary>Every test, of any number of designs.</summary>
    /// <param name="tests">The tests.</param>
    public static VesselEvidence Of(params IReadOnlyList<VesselTest> tests) => new(tests);

    /// <summary>All that is wrong with them.</summary>
    public IReadOnlyList<Finding> Validate()
    {
        var findings = new List<Finding>();
        var range = new ValidRange<GaugePressure>(0.5.BarGauge(), 1000.BarGauge());
        foreach (var test in Tests)
        {
            if (range.Find(test.Pressure, $"pressure of the test of {test.Id}",
                "Give the gauge reading with its unit; was psi read as bar?") is { } pressure) findings.Add(pressure);
            if (string.IsNullOrWhiteSpace(test.Id)) findings.Add(VesselsFindings.TestHasNoVesselName());
            findings.AddRange(test.Vessel.Validate().Where(f => f.Severity == FindingSeverity.Error));
        }

        foreach (var twice in Tests.OfType<BurstTest>().GroupBy(t => t.Id, StringComparer.OrdinalIgnoreCase).Where(g => g.Count() > 1))
            findings.Add(VesselsFindings.VesselBurstTwice(twice.Key, twice.Count()));
        foreach (var group in Tests.GroupBy(t => t.Id, StringComparer.OrdinalIgnoreCase))
        {
            if (group.OfType<BurstTest>().FirstOrDefault() is { } burst && group.OfType<HeldProof>().Any(p => p.Pressure > burst.Pressure))
                findings.Add(VesselsFindings.VesselBurstBelowProofItHeld(group.Key, burst.Pressure));
        }

        return [.. findings.Distinct()];
    }
}
