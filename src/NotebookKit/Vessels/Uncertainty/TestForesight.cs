using NotebookKit.Numerics;
using NotebookKit.Quantities;

namespace NotebookKit.Vessels.Uncertainty;

/// <summary>Plays tests before they are made: draws what may come out from what is believed, and learns from each.</summary>
internal static class TestForesight
{
    private const int Outcomes = 64;
    private const int Draws = 400;

    // The same for every test to choose from, so that they differ by what they are alone.
    private static readonly SeededSamples Numbers = new(21);

    public static TestChoice Choose(PartStudy now, GaugePressure bBasis, IReadOnlyList<TestOption> options)
    {
        var before = Math.Exp(now.LowLogPascals(0.10, Draws));
        var known = options.SelectMany(o => o.Parts).Where(p => !now.Parts.Any(own => own.Is(p.Name))).DistinctBy(p => p.Name.Trim(),
            StringComparer.OrdinalIgnoreCase)
            .ToDictionary(p => p.Name.Trim(), p => PartPosterior.Before(p.Before), StringComparer.OrdinalIgnoreCase);
        for (var k = 0; k < now.Parts.Count; k++) known[now.Parts[k].Name.Trim()] = now.Beliefs[k];
        var run = WorkRun.Current;
        var worths = options.Select(option =>
        {
            var after = new double[Outcomes];
            Parallel.For(0, Outcomes, run.Parallel(), n =>
            {
                run.ThrowIfStopped();
                after[n] = Math.Exp(now.With(Play(now, known, option, n)).LowLogPascals(0.10, Draws));
            });
            // Fewer draws here than for the B-basis itself: what they say of it is how it changes.
            var expected = bBasis * (after.Average() / before);
            return new TestGain(option, expected, (expected.Bar - bBasis.Bar) / option.Work.Hours,
                after.Count(a => a < before * (1 - 1e-9)) / (double)Outcomes);
        });
        return new TestChoice(bBasis, [.. worths.OrderByDescending(w => w.GainPerHour)]);
    }

    /// <summary>One outcome: the weakest part gives way, or the proof is held.</summary>
    private static PartTest Play(PartStudy now, Dictionary<string, PartPosterior> known, TestOption option, int n)
    {
        var weakest = double.PositiveInfinity;
        var failed = "";
        for (var k = 0; k < option.Parts.Count; k++)
        {
            var part = option.Parts[k];
            var pair = known[part.Name.Trim()].Draw(Numbers.Uniform(n, 3 * k), Numbers.Uniform(n, 3 * k + 1));
            var size = now.Parts.FirstOrDefault(p => p.Is(part.Name)) is { } own ? PartStudy.LogSize(own, part) : 0;
            var strength = part.LogBurst + PartPosterior.LogStrength(pair, Numbers.Uniform(n, 3 * k + 2), size);
            if (strength < weakest) (weakest, failed) = (strength, part.Name);
        }

        var burst = GaugePressure.FromPascals(Math.Exp(weakest));
        return option.Proof is { } proof && proof < burst ? new PartHeld("next", proof, option.Parts)
            : new PartBurst("next", burst, failed, option.Parts);
    }
}
