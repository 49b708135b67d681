using NotebookKit.Provenance;
using NotebookKit.Quantities;

namespace NotebookKit.Vessels;

/// <summary>The sentences of vessels's findings, in one place.</summary>
internal static partial class VesselsFindings
{
    // Vessels/Allowables/MeasuredBursts
    internal static Finding TooFewBurstsForBasisValues(int burstsCount) =>
        Finding.Error(
            $"There {(burstsCount == 1 ? "is one burst" : "are no bursts")}; basis values need at least two to know their scatter.");

    internal static Finding BurstIsNotPositive() => Finding.Error("A burst is 0 bar gauge or below; check the list.");

    internal static Finding BasisRestsOnFewBursts(int n, double b) =>
        Finding.Warning(
            $"Only {n} bursts: the B-basis lies {Digits.Round(b)} standard deviations below the mean, as the scatter is not known well. "
            + "A fifth and a sixth burst would raise the B-basis more than better making.");

    // Vessels/Allowables/NormalBelief
    internal static Finding MeanOfBeliefIsNotFinite() =>
        Finding.Error("The mean of a belief isn't a finite number; give one, or start from Jeffreys.");

    internal static Finding NormalBeliefOutOfRange(double equivalentTests, double freedom, double deviation) =>
        Finding.Error(
            $"The belief is worth {Digits.Round(equivalentTests)} values, with {Digits.Round(freedom)} degrees of freedom and a "
            + $"deviation of {Digits.Round(deviation)}; each must be above 0. Start from Jeffreys where nothing is known.");

    internal static Finding NoPriorNeedsTwoValues() =>
        Finding.Error(
            "Without a prior a scatter needs two values that differ; there are fewer. Test more, or start from a prior.");

    // Vessels/Allowables/WeibullRateBelief
    internal static Finding RateBeliefOutOfRange(double failures, double exposure) =>
        Finding.Error(
            $"The belief is worth {Digits.Round(failures)} failures at an exposure of {Digits.Round(exposure)}; both must be above 0 "
            + "and finite.");
}
