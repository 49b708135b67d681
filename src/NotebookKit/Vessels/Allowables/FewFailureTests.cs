using MathNet.Numerics.Distributions;
using NotebookKit.Numerics;
using NotebookKit.Provenance;

namespace NotebookKit.Vessels.Allowables;

/// <summary>What tests with few failures, or none, show of the chance of failure.</summary>
/// <remarks>Source: C. J. Clopper and E. S. Pearson, Biometrika 26, 1934 (upper limit, exact binomial).</remarks>
public static class FewFailureTests
{
    /// <summary>Chance of failure that is not exceeded with a confidence, one-sided [-]. Source: Clopper and Pearson 1934.</summary>
    /// <param name="failures">Tests that failed; 0 to the number of tests.</param>
    /// <param name="tests">All tests; 1 to 10 000 000.</param>
    /// <param name="confidence">Confidence [-]; 0.5 to 0.999999.</param>
    /// <exception cref="OutOfRangeException">An input is out of range.</exception>
    public static double AtMost(int failures, int tests, double confidence)
    {
        new ValidRange<int>(1, 10_000_000).Check(tests, "number of tests", "Without a test nothing is shown.");
        new ValidRange<int>(0, tests).Check(failures, "number of failures", "No more can fail than are tested.");
        Confidence(confidence);
        if (failures == tests) return 1;
        return failures == 0 ? SampleSize.BoundWhereNoneWasSeen(tests, confidence)
            : Beta.InvCDF(failures + 1, tests - failures, confidence);
    }

    /// <summary>Fewest tests, with so many failures among them, that show a chance of failure. Source: Clopper and Pearson 1934.</summary>
    /// <param name="chance">Chance of failure to show [-]; 0.000001 to 0.5.</param>
    /// <param name="failures">Tests that may fail; 0 to 20.</param>
    /// <param name="confidence">Confidence [-]; 0.5 to 0.999999.</param>
    /// <exception cref="OutOfRangeException">An input is out of range.</exception>
    public static int Needed(double chance, int failures, double confidence)
    {
        new ValidRange<double>(1e-6, 0.5).Check(chance, "chance of failure to show",
            "Rarer than one in a million nobody can show by counting.");
        new ValidRange<int>(0, 20).Check(failures, "number of failures", "With more, find out why they fail.");
        Confidence(confidence);
        if (failures == 0) return ZeroFailureTests.Needed(1 - chance, confidence);
        // Too many tests are enough, none too few: the first that is enough, by halving.
        int low = failures, high = 100_000_000;
        while (high - low > 1)
        {
            var middle = low + (high - low) / 2;
            if (Beta.CDF(failures + 1, middle - failures, chance) >= confidence) high = middle;
            else low = middle;
        }

        return high;
    }

    private static double Confidence(double confidence) => new ValidRange<double>(0.5, 0.999999).Check(confidence, "confidence",
        "0.95 is usual.");
}
