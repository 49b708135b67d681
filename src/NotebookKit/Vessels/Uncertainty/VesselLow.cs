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

    // Drawing them costs more than using them, and every vessel uses the same: a column a variable.
    private const int Kept = 64;
    private static readonly Lazy<double[]>[] Columns = [.. Enumerable.Range(0, Kept).Select(v => new Lazy<double[]>(() => Column(v)))];

    private static double[] Uniforms(int variable) => variable < Kept ? Columns[variable].Value : Column(variable);

    private static double[] Column(int variable) => [.. Enumerable.Range(0, Draws).Select(d => Numbers.Uniform(d, variable))];

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
        var deep = wanted - PartPosterior.LogHazard(0, (0, 1));
        // A vessel is no stronger than its weakest part, and weaker by no more than if all its parts were that weak.
        var (weakest, widest) = (new double[draws], new double[draws]);
        Array.Fill(weakest, double.PositiveInfinity);
        var pairs = new (double LogMedian, double Unit)[parts.Count][];
        var run = WorkRun.Current;
        for (var k = 0; k < parts.Count; k++)
        {
            run.ThrowIfStopped();
            var (of, logBurst) = (pairs[k] = new (double, double)[draws], parts[k].LogBurst);
            parts[k].Belief.Draw(Uniforms(2 * k), Uniforms(2 * k + 1), of);
            for (var d = 0; d < draws; d++)
            {
                var (median, unit) = (logBurst + of[d].LogMedian, of[d].Unit);
                of[d] = (median, unit);
                weakest[d] = Math.Min(weakest[d], median + deep * unit);
                widest[d] = Math.Max(widest[d], unit);
            }
        }

        // Only draws that may lie among the lowest decide where the lowest end.
        var place = (1 - confidence) * (draws - 1);
        var i = (int)place;
        var last = weakest.Order().ElementAt(Math.Min(i + 1, draws - 1));
        var (points, all, one) = (new List<double>(), Math.Log(parts.Count), new (double, double)[parts.Count]);
        for (var d = 0; d < draws; d++)
        {
            run.ThrowIfStopped();
            if (weakest[d] - all * widest[d] > last) continue;
            for (var k = 0; k < one.Length; k++) one[k] = pairs[k][d];
            points.Add(Weakest(one, wanted, weakest[d]));
        }

        points.Sort();
        return Math.Min(least, points[i] + (place - i) * (points[i + 1] - points[i]));
    }

    /// <summary>Where the hazards of all parts add up to the wanted one, in logarithms; the sum is convex, so that steps from the right
    /// don't pass the root.</summary>
    private static double Weakest((double LogMedian, double Unit)[] pairs, double wanted, double start)
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
