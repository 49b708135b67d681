using NotebookKit.Numerics.Fits;

namespace NotebookKit.Tests.Published.Numerics;

/// <summary>Several estimates made one, against trials that every text on the subject works.</summary>
public class RandomEffectsPublishedTests
{
    private const string Trials = "G. A. Colditz et al., J. Am. Med. Assoc. 271 (1994) 698, thirteen trials of a vaccine; log risk "
        + "ratios combined after "
        + "DerSimonian and Laird: Q = 152.23, variance 0.3088, mean −0.7141, standard error 0.1787, as W. Viechtbauer, J. Stat. "
        + "Software 36(3) (2010), prints them; unverified, recomputed with NumPy and SciPy";

    // Cases among the treated, treated, cases among the others, others.
    private static readonly (double A, double N, double C, double M)[] Table =
    [
        (4, 123, 11, 139), (6, 306, 29, 303), (3, 231, 11, 220), (62, 13598, 248, 12867), (33, 5069, 47, 5808), (180, 1541, 372, 1451),
        (8, 2545, 10, 629), (505, 88391, 499, 88391), (29, 7499, 45, 7277), (17, 1716, 65, 1665), (186, 50634, 141, 27338),
        (5, 2498, 3, 2341), (27, 16913, 29, 17854),
    ];

    private static double[] Values => [.. Table.Select(t => Math.Log(t.A / t.N / (t.C / t.M)))];

    private static double[] Errors => [.. Table.Select(t => Math.Sqrt(1 / t.A - 1 / t.N + 1 / t.C - 1 / t.M))];

    [Fact]
    [PublishedCase("E02", Trials)]
    public void Thirteen_trials_are_combined_to_the_published_mean()
    {
        var all = RandomEffects.Of(Values, Errors);
        Tolerance.Relative(152.23300808, all.Heterogeneity, 1e-9);
        Tolerance.Relative(0.30876026286, all.BetweenVariance, 1e-9);
        Tolerance.Relative(-0.71411722207, all.Mean, 1e-9);
        Tolerance.Relative(0.17874208954, all.StandardError, 1e-9);
        Tolerance.Relative(0.18069662834, all.WidenedError, 1e-9);
        Tolerance.Relative(0.39370413209, all.HalfWidth, 1e-8);
        Tolerance.Relative(1.28604512973, all.NextHalfWidth, 1e-8);
    }
}
