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
        if (Tests.Count > MostTests) findings.Add(Finding.Error($"There are {Tests.Count} tests; at most {MostTests} are taken. Leave out the oldest, or proofs far below the bursts."));
        var range = new ValidRange<GaugePressure>(0.5.BarGauge(), 1000.BarGauge());
        foreach (var test in Tests)
        {
            if (range.Find(test.Pressure, $"pressure of the test of {test.Id}", "Give the gauge reading with its unit; was psi read as bar?") is { } pressure) findings.Add(pressure);
            if (string.IsNullOrWhiteSpace(test.Id)) findings.Add(Finding.Error("A test has no vessel's name or number; two tests of one vessel must be told from tests of two."));
            findings.AddRange(ValidateParts($"test of {test.Id}", test.Parts));
            if (test.FailedPart is { } failed && !test.Parts.Any(p => p.Is(failed)))
                findings.Add(Finding.Error($"Vessel {test.Id} failed at its \"{failed}\", which isn't one of its parts: {string.Join(", ", test.Parts.Select(p => p.Name))}. Name the part as the prediction does."));
        }

        foreach (var vessel in Tests.GroupBy(t => t.Id.Trim(), StringComparer.OrdinalIgnoreCase))
        {
            var bursts = vessel.OfType<PartBurst>().ToList();
            if (bursts.Count > 1)
                findings.Add(Finding.Error($"Vessel {vessel.Key} has {bursts.Count} bursts; a vessel bursts once. Give a repaired vessel a number of its own, and list for it only the parts that are new."));
            else if (bursts.Count == 1 && vessel.Any(t => t is PartHeld && t.Pressure > bursts[0].Pressure))
                findings.Add(Finding.Error($"Vessel {vessel.Key} burst at {bursts[0].Pressure} but held a test above that; check which is which, or whether the test had hurt it."));
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
        InvalidDesignException.ThrowIfAny("Vessel tests", [.. Validate(), .. ValidateParts("vessel in hand", parts), .. ValidateSizes(parts)]);
        var used = PartStudy.Independent(Tests);
        return new PartLearning(new PartStudy(parts, used, batch), used.Count > 0 ? new PartStudy(parts, PartStudy.Independent([.. Tests.Take(Tests.Count - 1)]), batch) : null, batch);
    }

    internal static IEnumerable<Finding> ValidateParts(string whose, IReadOnlyList<PredictedPart> parts)
    {
        if (parts.Count is 0 or > MostParts) yield return Finding.Error($"The {whose} has {parts.Count} parts; 1 to {MostParts} are taken. List every part that was or will be under load.");
        foreach (var finding in parts.SelectMany(p => p.Validate())) yield return finding;
        foreach (var twice in parts.GroupBy(p => p.Name.Trim(), StringComparer.OrdinalIgnoreCase).Where(g => g.Count() > 1))
            yield return Finding.Error($"The {whose} has {twice.Count()} parts called {twice.Key}; give each a name of its own.");
    }

    internal static IEnumerable<Finding> ValidateSizes(IReadOnlyList<PredictedPart> parts, IEnumerable<PredictedPart> tested, string whose) =>
        from part in parts
        from other in tested
        where other.Is(part.Name) && other.Stressed.HasValue != part.Stressed.HasValue
        select Finding.Error($"The stressed volume of the {part.Name} is given for the {(part.Stressed.HasValue ? "vessel in hand" : whose)} and not for the {(part.Stressed.HasValue ? whose : "vessel in hand")}; a short twin is stronger than a long vessel, so give both or neither.");

    private IEnumerable<Finding> ValidateSizes(IReadOnlyList<PredictedPart> parts) => Tests.SelectMany(t => ValidateSizes(parts, t.Parts, $"test of {t.Id}"));
}
