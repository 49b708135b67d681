using NotebookKit.Provenance;
using NotebookKit.Quantities;
using UnitsNet;

namespace NotebookKit.Vessels;

internal static partial class VesselsFindings
{
    // Vessels/Testing/EvidenceCheck
    internal static Finding WallBurstBelowPrediction(string testId, GaugePressure pressure, GaugePressure wallLow) =>
        Finding.Warning(
            $"The wall of vessel {testId} burst at {pressure}, below the low end of its prediction, {wallLow}: the prediction isn't borne "
            + "out, and the rating rests on what the test teaches. Find the reason before the next vessel is made.");

    internal static Finding VesselHeldAbovePrediction(string testId, bool isBurstTest, GaugePressure pressure, GaugePressure most) =>
        Finding.Warning(
            $"Vessel {testId} {(isBurstTest ? "burst only at" : "held")} {pressure}, above all that was predicted of it, at most "
            + $"{most}: check the gauge, its unit and the design that was entered before the rating is relied on.");

    internal static Finding VesselHeldFarAbovePrediction(
        string testId, bool isBurstTest, GaugePressure pressure, GaugePressure most, double maximumRatio) =>
        Finding.Error(
            $"Vessel {testId} {(isBurstTest ? "burst only at" : "held")} {pressure}, more than {Digits.Round(maximumRatio)} times all that "
            + $"was predicted of it, {most}; such a test counts for nothing. Check the gauge, its unit (was psi read as bar?) and the "
            + "design that was entered.");

    internal static Finding TestIsOfAnotherLayup(string testId, string testLayup, string vesselName, string layup) =>
        Finding.Error(
            $"Vessel {testId} is of another layup ({testLayup}) than {vesselName} ({layup}), and the test says nothing of this wall. "
            + "Leave the test out, or test a twin of this layup.");

    internal static Finding TwinLeaked(string testId, string where, GaugePressure pressure, double? dropsPerMinute, GaugePressure proof) =>
        Finding.Warning(
            $"Vessel {testId} leaked at the {where} from {pressure} on ("
            + (dropsPerMinute is { } drops ? $"{Digits.Round(drops)} drops a minute" : "drops not counted")
            + $"), below the proof at {proof}: mend the seal before the next vessel is proved; a leak is no burst and lowers no rating.");

    internal static Finding PartOfSameDesignGaveWay(bool wallBurst, string id, GaugePressure pressure, GaugePressure proof) =>
        Finding.Error(
            $"{(wallBurst ? "The wall" : "An end")} of vessel {id}, of the same design, gave way at {pressure}; the rating would "
            + $"prove the next one at {proof}, and nothing is proved at what has burst its like. Ask for less, or find the cause and "
            + "change the part.");

    internal static Finding EndModelIsContradicted(string seen, string vesselName) =>
        Finding.Warning(
            $"{seen}: the model of the ends is contradicted, and the rating of {vesselName} rests on what the test teaches of that end. "
            + "Find the reason, and redesign or test the end.");

    internal static Finding OtherEndsShareContradictedModel(string seen, string vesselName) =>
        Finding.Warning(
            $"{seen}: {vesselName} has other ends, but computed by the same model. Find out why the end let go before this rating is "
            + "relied on.");

    // Vessels/Testing/GrowthComparison
    internal static Finding GrewMoreThanPredicted(string testId, GaugePressure at, Volume seen, Volume off, Volume predicted,
        double ratio) =>
        Finding.Warning(
            $"Vessel {testId} grew by {seen.Show()} ± {off.Show()} at {at}, {Digits.Round(ratio)} times the {predicted.Show()} predicted "
            + "of its wall: the wall is not the layup described, or it is damaged, or water was lost past the burette. Weigh and measure a "
            + "piece of the wall, check the readings, and hold a proof with the growth read before the rating is relied on.");

    internal static Finding GrewLessThanPredicted(string testId, GaugePressure at, Volume seen, Volume off, Volume predicted,
        double ratio) =>
        Finding.Note(
            $"Vessel {testId} grew by {seen.Show()} ± {off.Show()} at {at}, {Digits.Round(ratio)} times the {predicted.Show()} predicted "
            + "of its wall: the wall is stiffer than described, or the gauge or the burette misses some. A stiffer wall raises no rating; "
            + "check the readings and the layup that was entered.");

    internal static Finding GrewAsPredicted(string testId, GaugePressure at, Volume seen, Volume off, Volume predicted) =>
        Finding.Note(
            $"Vessel {testId} grew by {seen.Show()} ± {off.Show()} at {at}, which agrees with the {predicted.Show()} predicted of its "
            + "wall. Agreement in stiffness says nothing of strength and raises no rating.");

    internal static Finding GrowthUncertaintyIsNotGiven(string testId, GaugePressure at, Volume seen, Volume predicted, double ratio) =>
        Finding.Note(
            $"Vessel {testId} grew by {seen.Show()} at {at}, {Digits.Round(ratio)} times the {predicted.Show()} predicted of its wall; "
            + "how far the reading may be off is not given, so it neither agrees nor contradicts. Give the uncertainty of the growth.");

    internal static Finding GrowthPressureIsNotGiven(string testId, Volume seen) =>
        Finding.Note(
            $"Vessel {testId} grew by {seen.Show()}, at what pressure is not given, and nobody reads a burette at a burst; the growth is "
            + "compared with nothing. Give the pressure at which the growth was read.");

    internal static Finding NoGrowthIsPredicted(string testId, GaugePressure at, Volume seen) =>
        Finding.Note(
            $"Vessel {testId} grew by {seen.Show()} at {at}, where its wall was predicted to have burst; no growth is predicted there. "
            + "Give a growth read at a lower pressure.");

    // Vessels/Testing/VesselEvidence
    internal static Finding GaugeErrorOutOfRange(string testId, Pressure error, GaugePressure pressure) =>
        Finding.Error(
            $"The gauge of the test of vessel {testId} is off by {error.ToUnit(UnitsNet.Units.PressureUnit.Bar).Show()}; it must be 0.001 "
            + $"bar to 20 bar and no more than half of the {pressure} read. Compare it with a better gauge, or leave it out where nobody "
            + "did.");

    internal static Finding GrowthIsNotGiven(string testId) =>
        Finding.Error(
            $"The test of vessel {testId} has an uncertainty or a pressure of its growth, and no growth; give the growth, or leave both "
            + "out.");

    internal static Finding GrowthPressureIsOutsideTest(string testId, GaugePressure at, GaugePressure pressure) =>
        Finding.Error(
            $"The growth of vessel {testId} was read at {at}, and the test went from 0 bar gauge to {pressure}; give the pressure at which "
            + "the growth was read.");

    internal static Finding FailedPartIsNotGiven(string testId, GaugePressure pressure, IEnumerable<string> parts) =>
        Finding.Error(
            $"Vessel {testId} burst at {pressure}, and the part that gave way isn't given: give one of {string.Join("; ", parts)}. Look "
            + "at the pieces; where two are possible, rate with each and take the lower rating.");

    internal static Finding LeakHasNoPlace(string testId) =>
        Finding.Error($"The leak of vessel {testId} has no place; say where the water came out.");

    internal static Finding LeakPressureIsOutsideTest(string testId, GaugePressure leak, GaugePressure pressure) =>
        Finding.Error(
            $"The leak of vessel {testId} was seen at {leak}, and the test went from 0 bar gauge to {pressure}; give the lowest pressure "
            + "at which water came out.");

    internal static Finding LeakWithoutDrops(string testId, string where) =>
        Finding.Error(
            $"Vessel {testId} has a leak at the {where} and no drops seen; check which is true, and leave the other out.");

    internal static Finding TestHasNoVesselName() =>
        Finding.Error("A test has no vessel's name or number; two tests of one vessel must be told from tests of two.");

    internal static Finding TestedVesselsWereMadeOtherwise(IReadOnlyList<string> ids, string made, string mark) =>
        Finding.Error($"The test{(ids.Count == 1 ? "" : "s")} of {string.Join(", ", ids)} {(ids.Count == 1 ? "was" : "were")} of another "
            + $"vessel than this file's: {ids[0]} was made as {made}, and the file's vessel, with what the test says that differs, is made "
            + $"as {mark}. The vessel was changed since: say in each test in what the tested vessel differs (length, ends); a test of "
            + "another bore, ply or resin is taken out.");

    internal static Finding VesselBurstTwice(string twiceKey, int twiceCount) =>
        Finding.Error($"Vessel {twiceKey} has {twiceCount} bursts; a vessel bursts once. Give each vessel its own number.");

    internal static Finding VesselBurstBelowProofItHeld(string groupKey, GaugePressure pressure) =>
        Finding.Error(
            $"Vessel {groupKey} burst at {pressure} but held a proof above that; check which is which, or whether the proof had hurt "
            + "it.");
}
