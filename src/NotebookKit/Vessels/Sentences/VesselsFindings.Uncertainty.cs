using NotebookKit.Provenance;
using NotebookKit.Quantities;
using UnitsNet;

namespace NotebookKit.Vessels;

internal static partial class VesselsFindings
{
    // Vessels/Uncertainty/BurstDistribution
    internal static Finding LargestShareOfScatter(double sharePercent, string firstName) =>
        Finding.Note($"{Digits.Round(sharePercent, 2)} % of the scatter is {firstName}: measuring that is what narrows the band most.");

    // Vessels/Uncertainty/EfficiencyUpdate
    internal static Finding WorthOfTests(
        int held, double effectiveBursts, GaugePressure twinBurst, Ratio quantile, Ratio quantile2, double gainPercent) =>
        Finding.Note(
            (held == 0
                ? "No test yet: this is the prior."
                : $"Vessels that held {held}, walls burst none: that is worth {Digits.Round(effectiveBursts, 2)} of a burst.")
            + $" One short twin burst near {twinBurst} would raise the low end of the efficiency from {quantile.Show(2)} to "
            + $"{quantile2.Show(2)}, by {Digits.Round(gainPercent, 2)} %.");

    internal static Finding EfficiencyIsNotRatedOn() =>
        Finding.Note(
            "This view teaches what the wall's making delivers; a rating doesn't rest on it, but on what the same tests teach of every "
            + "part: vessel.Rate(rules, wanted, evidence).");

    internal static Finding TestsContradictBelief(double surprisePercent) =>
        Finding.Warning(
            $"The tests lie outside what was believed: a burst as far off had a chance of {Digits.Round(surprisePercent, 2)} %. Look "
            + "for the reason, materials, angle, a dry spot, a wrong gauge, before trusting the new figure.");

    internal static Finding OneBurstSetsLevelOnly() =>
        Finding.Note("One burst sets the level, not the scatter: the scatter from vessel to vessel is still the assumed one.");

    // Vessels/Uncertainty/PartEvidence
    internal static Finding TooManyTests(int testsCount, int mostTests) =>
        Finding.Error(
            $"There are {testsCount} tests; at most {mostTests} are taken. Leave out the oldest, or proofs far below the bursts.");

    internal static Finding VesselFailedAtUnknownPart(string testId, string failed, IEnumerable<string> parts) =>
        Finding.Error(
            $"Vessel {testId} failed at its \"{failed}\", which isn't one of its parts: {string.Join("; ", parts)}. Name the part as "
            + "the prediction does.");

    internal static Finding TestedVesselBurstTwice(string vesselKey, int burstsCount) =>
        Finding.Error(
            $"Vessel {vesselKey} has {burstsCount} bursts; a vessel bursts once. Give a repaired vessel a number of its own, and list "
            + "for it only the parts that are new.");

    internal static Finding VesselBurstBelowTestItHeld(string vesselKey, GaugePressure pressure) =>
        Finding.Error(
            $"Vessel {vesselKey} burst at {pressure} but held a test above that; check which is which, or whether the test had hurt "
            + "it.");

    internal static Finding PartCountOutOfRange(string whose, int partsCount, int mostParts) =>
        Finding.Error($"The {whose} has {partsCount} parts; 1 to {mostParts} are taken. List every part that was or will be under load.");

    internal static Finding PartNameIsNotUnique(string whose, int twiceCount, string twiceKey) =>
        Finding.Error($"The {whose} has {twiceCount} parts called {twiceKey}; give each a name of its own.");

    internal static Finding StressedVolumeIsGivenOnce(string partName, bool stressedGiven, string whose) =>
        Finding.Error(
            $"The stressed volume of the {partName} is given for the {(stressedGiven ? "vessel in hand" : whose)} and not for the "
            + $"{(stressedGiven ? whose : "vessel in hand")}; a short twin is stronger than a long vessel, so give both or neither.");

    // Vessels/Uncertainty/PartLearning
    internal static Finding NoTestToChoose() => Finding.Error("There is no test to choose from; give at least one.");

    internal static Finding NoBatchIsNamed() =>
        Finding.Note(
            "No batch is named: all tests and the vessel in hand are taken as made in one. Name the batch of each where hands, "
            + "sleeve or resin changed.");

    internal static Finding PartsHaveNeverGivenWay(IReadOnlyList<string> partNames, bool held) =>
        Finding.Note(partNames.Count == 1
            ? $"The {partNames[0]} has never given way in a test: its ratio and its scatter are "
            + $"{(held ? "mostly the assumed ones" : "the assumed ones")}. A test that ends there would teach most of it."
            : $"{partNames.Count} parts have never given way in a test: {string.Join("; ", partNames)}. Their ratios and scatters are "
            + $"{(held ? "mostly the assumed ones" : "the assumed ones")}; a test that ends in one of them would teach most of it.");

    internal static Finding PartHasGivenWayOnce(string partName) =>
        Finding.Note($"The {partName} has given way once: that sets the level, not the scatter, which is still mostly the assumed one.");

    internal static Finding PartScattersTooMuch(string partName, double scatterPercent, double highestStudiedPercent) =>
        Finding.Warning(
            $"The {partName} scatters by {Digits.Round(scatterPercent, 2)} % from vessel to vessel; past "
            + $"{Digits.Round(highestStudiedPercent)} % more than 5 % of B-basis values turned out too high in simulated clubs. Find "
            + "out what differs from vessel to vessel before rating on it.");

    internal static Finding PriorIsBolderThanDefault(string partName) =>
        Finding.Warning(
            $"The prior of the {partName} is bolder than the default; the share of clubs that would be rated too high with it has not "
            + "been studied. Leave the prior out, or test more vessels.");

    internal static Finding VesselFailedAtPartNotInHand(string testId, string failed) =>
        Finding.Warning(
            $"Vessel {testId} failed at its {failed}, which the vessel in hand doesn't have: the test only shows what its other parts "
            + "held. Check the name.");

    internal static Finding EndOfSameDesignLetGo(string testId, string failed, GaugePressure pressure, string like) =>
        Finding.Warning(
            $"Vessel {testId} let go at its {failed} at {pressure}, which is of the design of the {like} here; the test counts for that "
            + "end. Find the reason, and redesign or test the end.");

    internal static Finding VesselFailedAtPartOfOtherEnds(string testId, string failed) =>
        Finding.Note(
            $"Vessel {testId} failed at its {failed}; the vessel in hand has other ends. The test counts as held at least for the parts "
            + "that both have.");

    internal static Finding PartGaveWayFarFromBelief(
        string failed, string testId, double below, GaugePressure pressure, GaugePressure burst) =>
        Finding.Warning(
            $"The {failed} of vessel {testId} gave way {(below < 0.5 ? "far below" : "far above")} what was believed before any test: "
            + $"at {pressure} against {burst} predicted. Look for the reason, a dry spot, a wrong gauge, a wrong material, before "
            + "trusting the new figure.");

    // Vessels/Uncertainty/PredictedPart
    internal static Finding PartHasNoName() =>
        Finding.Error("A part has no name; give it the one that the burst prediction lists, so that tests of it find it.");

    // Vessels/Uncertainty/TestChoice
    internal static Finding BestTestForWork(string optionName, double gainPerHourBar) =>
        Finding.Note($"The {optionName} brings most for its work: {Digits.Round(gainPerHourBar, 2)} bar of B-basis for each hour.");

    internal static Finding NoTestRaisesBasis() =>
        Finding.Note(
            "None of these tests may be expected to raise the B-basis. Strengthen the weakest part instead, or test that part alone.");

    // Vessels/Uncertainty/TestOption
    internal static Finding TestOptionHasNoName() => Finding.Error("A test to choose from has no name; say what it is.");
}
