using NotebookKit.Provenance;
using NotebookKit.Quantities;

namespace NotebookKit.Vessels.Uncertainty;

/// <summary>Tests of vessels made the same way: what they teach of every part, its strength over the prediction and its scatter.</summary>
/// <param name="Tests">The tests, oldest first.</param>
/// <remarks>
/// Source: Gelman et al., Bayesian Data Analysis, 3rd ed. 2013, ch. 3 and §8.7 (grid posterior, censored data); Meeker and Escobar,
/// Statistical Methods for Reliability Data, 1998, ch. 15 (competing modes); Weibull, J. Appl. Mech. 18, 1951, and Bader and Priest,
/// ICCM-IV, 1982 (size effect).
/// </remarks>
public sealed record PartEvidence(IReadOnlyList<PartTest> Tests)
{
    private const int MostParts = 40;
    private const int MostTests = 1000;

    /// <summary>Every test, oldest first; of twins and pieces as well.</summary>
    /// <param name="tests">The tests.</param>
    public static PartEvidence Of(params IReadOnlyList<PartTest> tests) => new(tests);

    /// <summary>All that is wrong with them.</summary>
    public IReadOnlyList<Finding> Validate()
    {
        var findings = new List<Finding>();
        if (Tests.Count > MostTests) findings.Add(VesselsFindings.TooManyTests(Tests.Count, MostTests));
        var range = new ValidRange<GaugePressure>(0.5.BarGauge(), 1000.BarGauge());
        foreach (var test in Tests)
        {
            if (range.Find(test.Pressure, $"pressure of the test of {test.Id}",
                "Give the gauge reading with its unit; was psi read as bar?") is { } pressure) findings.Add(pressure);
            if (string.IsNullOrWhiteSpace(test.Id)) findings.Add(VesselsFindings.TestHasNoVesselName());
            findings.AddRange(ValidateParts($"test of {test.Id}", test.Parts));
            if (test.FailedPart is { } failed && !test.Parts.Any(p => p.Is(failed)))
                findings.Add(VesselsFindings.VesselFailedAtUnknownPart(test.Id, failed, test.Parts.Select(p => p.Name)));
        }

        foreach (var vessel in Tests.GroupBy(t => t.Id.Trim(), StringComparer.OrdinalIgnoreCase))
        {
            var bursts = vessel.OfType<PartBurst>().ToList();
            if (bursts.Count > 1)
                findings.Add(VesselsFindings.TestedVesselBurstTwice(vessel.Key, bursts.Count));
            else if (bursts.Count == 1 && vessel.Any(t => t is PartHeld && t.Pressure > bursts[0].Pressure))
                findings.Add(VesselsFindings.VesselBurstBelowTestItHeld(vessel.Key, bursts[0].Pressure));
        }

        return [.. findings.Distinct()];
    }

    /// <summary>What they teach of each part of the vessel in hand. Source: see the result's model card.</summary>
    /// <param name="parts">Every part of the vessel in hand, as predicted.</param>
    /// <param name="batch">Batch that the vessel in hand is made in; the one of the tests that name none where none is given.</param>
    /// <exception cref="InvalidDesignException">A test or a part isn't valid.</exception>
    public PartLearning Learn(IReadOnlyList<PredictedPart> parts, string batch = "")
    {
        ArgumentNullException.ThrowIfNull(parts);
        ArgumentNullException.ThrowIfNull(batch);
        InvalidDesignException.ThrowIfAny("Vessel tests", [.. Validate(), .. ValidateParts("vessel in hand", parts),
            .. ValidateSizes(parts)]);
        var used = PartStudy.Independent(Tests);
        if (used.Count == 0) return new PartLearning(new PartStudy(parts, used, batch), null, batch);
        var before = new PartStudy(parts, PartStudy.Independent([.. Tests.Take(Tests.Count - 1)]), batch);
        return new PartLearning(before.Then(used, batch), before, batch);
    }

    internal static IEnumerable<Finding> ValidateParts(string whose, IReadOnlyList<PredictedPart> parts)
    {
        if (parts.Count is 0 or > MostParts) yield return VesselsFindings.PartCountOutOfRange(whose, parts.Count, MostParts);
        foreach (var finding in parts.SelectMany(p => p.Validate())) yield return finding;
        foreach (var twice in parts.GroupBy(p => p.Name.Trim(), StringComparer.OrdinalIgnoreCase).Where(g => g.Count() > 1))
            yield return VesselsFindings.PartNameIsNotUnique(whose, twice.Count(), twice.Key);
    }

    internal static IEnumerable<Finding> ValidateSizes(IReadOnlyList<PredictedPart> parts, IEnumerable<PredictedPart> tested,
        string whose) =>
        from part in parts
        from other in tested
        where other.Is(part.Name) && other.Stressed.HasValue != part.Stressed.HasValue
        select VesselsFindings.StressedVolumeIsGivenOnce(part.Name, part.Stressed.HasValue, whose);

    private IEnumerable<Finding> ValidateSizes(IReadOnlyList<PredictedPart> parts)
        => Tests.SelectMany(t => ValidateSizes(parts, t.Parts, $"test of {t.Id}"));
}
