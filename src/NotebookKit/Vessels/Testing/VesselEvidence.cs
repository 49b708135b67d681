using NotebookKit.Provenance;
using NotebookKit.Quantities;
using UnitsNet;

namespace NotebookKit.Vessels.Testing;

/// <summary>Bursts and held proofs of vessels made the same way: what a rating rests on, and what they teach of the making.</summary>
/// <param name="Tests">The tests, in any order.</param>
/// <remarks>
/// The burst of a wall is lognormal about the prediction at the true efficiency; a held proof, and a burst at an end, tell only that it
/// lies above (right-censored). Source: Gelman et al., Bayesian Data Analysis, 3rd ed. 2013, ch. 3 and §8.7 (censored data).
/// </remarks>
public sealed record VesselEvidence(IReadOnlyList<VesselTest> Tests)
{
    /// <summary>Batch that the vessel in hand is made in; empty where none is given, as for tests that name none.</summary>
    public string Batch { get; init; } = "";

    /// <summary>Every test, of any number of designs.</summary>
    /// <param name="tests">The tests.</param>
    public static VesselEvidence Of(params IReadOnlyList<VesselTest> tests) => new(tests);

    /// <summary>All that is wrong with them.</summary>
    public IReadOnlyList<Finding> Validate() => Validate(new());

    internal IReadOnlyList<Finding> Validate(TestedVessels known)
    {
        var findings = new List<Finding>();
        var range = new ValidRange<GaugePressure>(0.5.BarGauge(), 1000.BarGauge());
        foreach (var test in Tests)
        {
            if (range.Find(test.Pressure, $"pressure of the test of {test.Id}",
                "Give the gauge reading with its unit; was psi read as bar?") is { } pressure) findings.Add(pressure);
            if (string.IsNullOrWhiteSpace(test.Id)) findings.Add(VesselsFindings.TestHasNoVesselName());
            findings.AddRange(Seen(test));
            var wrong = known.Of(test.Vessel).Findings.Where(f => f.Severity == FindingSeverity.Error).ToList();
            findings.AddRange(wrong);
            if (wrong.Count == 0 && test is BurstTest burst && FailedPart(burst, known) is { } part) findings.Add(part);
        }

        if (Tests.Where(WasMadeOtherwise).ToList() is { Count: > 0 } others)
            findings.Add(VesselsFindings.TestedVesselsWereMadeOtherwise([.. others.Select(t => t.Id)], others[0].MadeAs!, others[0].Mark!));
        foreach (var twice in Tests.OfType<BurstTest>().GroupBy(t => t.Id, StringComparer.OrdinalIgnoreCase).Where(g => g.Count() > 1))
            findings.Add(VesselsFindings.VesselBurstTwice(twice.Key, twice.Count()));
        foreach (var group in Tests.GroupBy(t => t.Id, StringComparer.OrdinalIgnoreCase))
        {
            if (group.OfType<BurstTest>().FirstOrDefault() is { } burst && group.OfType<HeldProof>().Any(p => p.Pressure > burst.Pressure))
                findings.Add(VesselsFindings.VesselBurstBelowProofItHeld(group.Key, burst.Pressure));
        }

        return [.. findings.Distinct()];
    }

    private static bool WasMadeOtherwise(VesselTest test) => test is { MadeAs: { } made, Mark: { } mark }
        && !string.Equals(made.Trim(), mark, StringComparison.OrdinalIgnoreCase);

    private static IEnumerable<Finding> Seen(VesselTest test)
    {
        if (test.GaugeError is { } error && !(error.Bars >= 0.001 && error.Bars <= Math.Min(20, 0.5 * test.Pressure.Bar)))
            yield return VesselsFindings.GaugeErrorOutOfRange(test.Id, error, test.Pressure);
        if (test.Growth is { } growth && new ValidRange<Volume>(Volume.FromMilliliters(0.001), Volume.FromLiters(10)).Find(growth,
            $"growth of {test.Id}", "Leave it out where it wasn't measured.") is { } grown) yield return grown;
        if (test.GrowthUncertainty is { } off && new ValidRange<Volume>(Volume.FromMilliliters(0.001), Volume.FromLiters(10)).Find(off,
            $"uncertainty of the growth of {test.Id}", "Leave it out where nobody estimated it.") is { } unsure) yield return unsure;
        if (test.Growth is null && (test.GrowthUncertainty is not null || test.GrowthPressure is not null))
            yield return VesselsFindings.GrowthIsNotGiven(test.Id);
        if (test.GrowthPressure is { } at && !(at > GaugePressure.Zero && at <= test.Pressure))
            yield return VesselsFindings.GrowthPressureIsOutsideTest(test.Id, at, test.Pressure);
        if (test.Leak is not { } leak) yield break;
        if (string.IsNullOrWhiteSpace(leak.Where)) yield return VesselsFindings.LeakHasNoPlace(test.Id);
        if (!(leak.Pressure > GaugePressure.Zero && leak.Pressure <= test.Pressure))
            yield return VesselsFindings.LeakPressureIsOutsideTest(test.Id, leak.Pressure, test.Pressure);
        if (leak.DropsPerMinute is { } drops && new ValidRange<double>(0.01, 1000).Find(drops, $"drops a minute of {test.Id}",
            "Leave it out where nobody counted.") is { } counted) yield return counted;
        if (test.DropsSeen == false) yield return VesselsFindings.LeakWithoutDrops(test.Id, leak.Where);
    }

    private static Finding? FailedPart(BurstTest burst, TestedVessels known)
    {
        var parts = known.Of(burst.Vessel).Burst.Parts.Select(p => p.Name).ToList();
        return string.IsNullOrWhiteSpace(burst.Failed) ? VesselsFindings.FailedPartIsNotGiven(burst.Id, burst.Pressure, parts)
            : parts.Exists(burst.IsOf) ? null : VesselsFindings.VesselFailedAtUnknownPart(burst.Id, burst.Failed, parts);
    }
}
