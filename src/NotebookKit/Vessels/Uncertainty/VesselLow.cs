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
        var points = new double[draws];
        var wanted = Math.Log(-Math.Log(1 - share));
        var pairs = new (double LogMedian, double Unit)[parts.Count];
        var run = WorkRun.Current;
        for (var d = 0; d < draws; d++)
        {
            run.ThrowIfStopped();
            for (var k = 0; k < pairs.Length; k++)
            {
                var (logRatio, unit) = parts[k].Belief.Draw(Uniform(d, 2 * k), Uniform(d, 2 * k + 1));
                pairs[k] = (parts[k].LogBurst + logRatio, unit);
            }

            points[d] = Weakest(pairs, wanted);
        }

        Array.Sort(points);
        var place = (1 - confidence) * (draws - 1);
        var i = (int)place;
        return Math.Min(least, points[i] + (place - i) * (points[i + 1] - points[i]));
    }

    /// <summary>Where the hazards of all parts add up to the wanted one, in logarithms; the sum is convex, so that steps from the right
    /// don't pass the root.</summary>
    private static double Weakest((double LogMedian, double Unit)[] pairs, double wanted)
    {
        var x = double.PositiveInfinity;
        foreach (var pair in pairs) x = Math.Min(x, pair.LogMedian + (wanted - PartPosterior.LogHazard(0, (0, pair.Unit))) * pair.Unit);
        // No hazard is above the wanted one where it starts, nor to the left of there.
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
