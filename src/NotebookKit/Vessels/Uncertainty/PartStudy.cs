using NotebookKit.Numerics;

namespace NotebookKit.Vessels.Uncertainty;

/// <summary>The belief in all parts of one vessel after some tests.</summary>
internal sealed class PartStudy
{
    /// <param name="parts">Parts of the vessel in hand.</param>
    /// <param name="tests">Tests, one a vessel.</param>
    /// <param name="batch">Batch of the vessel in hand.</param>
    public PartStudy(IReadOnlyList<PredictedPart> parts, IReadOnlyList<PartTest> tests, string batch = "")
    {
        Parts = parts;
        Tests = tests;
        var own = tests.Where(t => IsOf(t, batch)).ToList();
        var others = tests.Where(t => !IsOf(t, batch)).GroupBy(t => t.Batch.Trim(), StringComparer.OrdinalIgnoreCase).ToList();
        Beliefs = [.. parts.Select(p => own.Aggregate(Before(p, others), (belief, test) => With(belief, p, test)))];
    }

    private PartStudy(IReadOnlyList<PredictedPart> parts, IReadOnlyList<PartTest> tests, PartPosterior[] beliefs)
        => (Parts, Tests, Beliefs) = (parts, tests, beliefs);

    public IReadOnlyList<PredictedPart> Parts { get; }

    public IReadOnlyList<PartTest> Tests { get; }

    public PartPosterior[] Beliefs { get; }

    /// <summary>One test a vessel: its burst, or the highest that it held; in the order of the list.</summary>
    public static IReadOnlyList<PartTest> Independent(IReadOnlyList<PartTest> tests)
    {
        var best = tests.GroupBy(t => t.Id.Trim(), StringComparer.OrdinalIgnoreCase)
            .SelectMany(g => g.OfType<PartBurst>().Cast<PartTest>().Take(1).DefaultIfEmpty(g.MaxBy(t =>
                t.Pressure.Pascals)!)).ToHashSet(ReferenceEqualityComparer.Instance);
        return [.. tests.Where(best.Contains)];
    }

    /// <summary>The belief after one more outcome.</summary>
    public PartStudy With(PartTest test) => new(Parts, [.. Tests, test], [.. Beliefs.Select((b, k) => With(b, Parts[k], test))]);

    /// <summary>The belief after a list of tests: of this one where the list goes on from its own by one test of the batch in hand, else
    /// from the start.</summary>
    public PartStudy Then(IReadOnlyList<PartTest> tests, string batch) => tests.Count == Tests.Count + 1 && IsOf(tests[^1], batch)
        && Tests.Zip(tests).All(t => ReferenceEquals(t.First, t.Second)) ? With(tests[^1]) : new PartStudy(Parts, tests, batch);

    /// <summary>Logarithm of the pressure [ln Pa] that a share of such vessels bursts below, with 95 % confidence.</summary>
    public double LowLogPascals(double share, int draws) => VesselLow.LogPoint([.. Beliefs.Select((b, k) => (b, Parts[k].LogBurst))],
        share, 0.95, draws);

    /// <summary>Chance that the next such vessel bursts below the logarithm of a pressure [-].</summary>
    /// <param name="logPascals">Logarithm of the pressure [ln Pa].</param>
    public double ChanceBelow(double logPascals)
    {
        // Added up as logarithms of holding: a chance of one in a million isn't lost beside one.
        var logHeld = 0.0;
        for (var k = 0; k < Beliefs.Length; k++)
            logHeld += Math.Log(Math.Max(1 - Beliefs[k].NextBelow(logPascals - Parts[k].LogBurst, 0), 1e-300));
        return -double.ExpM1(logHeld);
    }

    /// <summary>Logarithm of the pressure [ln Pa] that the next such vessel bursts below with a chance; errs low.</summary>
    /// <param name="chance">The chance [-].</param>
    public double LogPascalsOfChance(double chance)
    {
        var high = Parts.Min(p => p.LogBurst) + 1.5;
        var low = high - 14;
        var run = WorkRun.Current;
        while (high - low > 1e-5)
        {
            run.ThrowIfStopped();
            var middle = 0.5 * (low + high);
            if (ChanceBelow(middle) < chance) low = middle;
            else high = middle;
        }

        return low;
    }

    /// <summary>Logarithm of the stressed volume of a tested part over that of the part in hand [-]; 0 where the part doesn't grow with the
    /// vessel.</summary>
    public static double LogSize(PredictedPart part, PredictedPart tested) =>
        part.Stressed is { } own && tested.Stressed is { } other ? Math.Log(other.CubicMeters / own.CubicMeters) : 0;

    /// <summary>Each other batch shows the mean of all batches within its own shift, and that mean shows the batch in hand within
    /// another.</summary>
    private static PartPosterior Before(PredictedPart part, List<IGrouping<string, PartTest>> others)
    {
        var prior = PartPosterior.Before(part.Before);
        return others.Count == 0
            ? prior
            : prior.Times(others.Select(b => b.Aggregate(PartPosterior.Nothing, (belief, test) => With(belief, part, test)).Shifted())
                .Aggregate((a, b) => a.Times(b)).Shifted());
    }

    private static bool IsOf(PartTest test, string batch) => string.Equals(test.Batch.Trim(), batch.Trim(),
        StringComparison.OrdinalIgnoreCase);

    private static PartPosterior With(PartPosterior belief, PredictedPart part, PartTest test) =>
        (test.Parts.FirstOrDefault(p => p.Is(part.Name)) ?? (test is PartBurst { AtOtherEnd: { } like } && part.Is(like)
            ? part : null)) is { } tested
            ? belief.With(Math.Log(test.Pressure.Pascals) - tested.LogBurst, test.HasFailed(part), LogSize(part, tested))
            : belief;
}
