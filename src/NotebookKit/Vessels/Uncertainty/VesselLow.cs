using NotebookKit.Numerics;

namespace NotebookKit.Vessels.Uncertainty;

/// <summary>Low burst of a vessel of several parts, each of which may be the weakest: the belief in all parts together.</summary>
/// <remarks>Parts are believed in one by one and drawn independently. Parts made by the same hands go up and down together, which makes the
/// weakest stronger than this.</remarks>
internal static class VesselLow
{
    public const int Draws = 4000;

    // The same numbers every time: a change of the answer is a change of the belief, never of the draw.
    private static readonly SeededSamples Numbers = new(20);

    // Drawing them costs more than using them: those of eight parts are kept.
    private const int Kept = 16;
    private static readonly double[] Uniforms = Array.ConvertAll([.. Enumerable.Range(0, Draws * Kept)],
        i => Numbers.Uniform(i / Kept, i % Kept));

    private static double Uniform(int draw, int variable) => variable < Kept ? Uniforms[draw * Kept + variable]
        : Numbers.Uniform(draw, variable);

    /// <summary>Logarithm of the pressure [ln Pa] that a share of all such vessels bursts below, said with a confidence.</summary>
    /// <param name="parts">Belief in each part, and logarithm of its predicted burst [ln Pa].</param>
    /// <param name="share">Share of the vessels that burst below [-].</param>
    /// <param name="confidence">Chance that the true one lies above [-].</param>
    /// <param name="draws">How many draws; 100 to 4000.</param>
    public static double LogPoint(IReadOnlyList<(PartPosterior Belief, double LogBurst)> parts, double share, double confidence,
        int draws = Draws)
    {
        var least = parts.Min(p => p.LogBurst + p.Belief.LowLogPoint(share, confidence));
        if (parts.Count == 1) return least;
        var wanted = Math.Log(-Math.Log(1 - share));
        var pairs = new (double LogMedian, double Unit)[draws * parts.Count];
        // A vessel is no stronger than its weakest part, and weaker by no more than if all its parts were that weak.
        var (most, fewest) = (new double[draws], new double[draws]);
        var all = Math.Log(parts.Count);
        var run = WorkRun.Current;
        for (var d = 0; d < draws; d++)
        {
            run.ThrowIfStopped();
            var (weakest, widest) = (double.PositiveInfinity, 0.0);
            for (var k = 0; k < parts.Count; k++)
            {
                var (logRatio, unit) = parts[k].Belief.Draw(Uniform(d, 2 * k), Uniform(d, 2 * k + 1));
                var median = parts[k].LogBurst + logRatio;
                pairs[d * parts.Count + k] = (median, unit);
                weakest = Math.Min(weakest, median + (wanted - PartPosterior.LogHazard(0, (0, unit))) * unit);
                widest = Math.Max(widest, unit);
            }

            (most[d], fewest[d]) = (weakest, weakest - all * widest);
        }

        // Only draws that may lie among the lowest decide where the lowest end.
        var place = (1 - confidence) * (draws - 1);
        var i = (int)place;
        var bounds = most.Order().ToArray();
        var last = bounds[Math.Min(i + 1, draws - 1)];
        var points = new List<double>();
        for (var d = 0; d < draws; d++)
        {
            run.ThrowIfStopped();
            if (fewest[d] <= last) points.Add(Weakest(pairs.AsSpan(d * parts.Count, parts.Count), wanted, most[d]));
        }

        points.Sort();
        return Math.Min(least, points[i] + (place - i) * (points[i + 1] - points[i]));
    }

    /// <summary>Where the hazards of all parts add up to the wanted one, in logarithms; the sum is convex, so that steps from the right
    /// don't pass the root.</summary>
    private static double Weakest(ReadOnlySpan<(double LogMedian, double Unit)> pairs, double wanted, double start)
    {
        // No hazard is above the wanted one where it starts, nor to the left of there.
        var x = start;
        for (var n = 0; n < 30; n++)
        {
            double sum = 0, slope = 0;
            foreach (var pair in pairs)
            {
                var below = PartPosterior.LogHazard(x, pair) - wanted;
                if (below < -35) continue;
                var share = Math.Exp(below);
                sum += share;
                slope += share / pair.Unit;
            }

            var step = Math.Log(sum) * sum / slope;
            x -= step;
            if (Math.Abs(step) < 1e-7) break;
        }

        return x;
    }
}
