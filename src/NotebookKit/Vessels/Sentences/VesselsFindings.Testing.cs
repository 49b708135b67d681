using NotebookKit.Provenance;
using NotebookKit.Quantities;

namespace NotebookKit.Vessels;

internal static partial class VesselsFindings
{
    // Vessels/Testing/EvidenceCheck
    internal static Finding WallBurstBelowPrediction(string testId, GaugePressure pressure, GaugePressure wallLow) =>
        Finding.Warning(
            $"The wall of vessel {testId} burst at {pressure}, below the low end of its prediction, {wallLow}: a rating that rests on "
            + "that prediction isn't borne out. Find the reason, and rate on what the test teaches of the making.");

    internal static Finding VesselHeldAbovePrediction(string testId, bool isBurstTest, GaugePressure pressure, GaugePressure most) =>
        Finding.Warning(
            $"Vessel {testId} {(isBurstTest ? "burst only at" : "held")} {pressure}, above all that was predicted of it, at most "
            + $"{most}: check the gauge, its unit and the design that was entered before the test counts for anything.");

    internal static Finding PartOfSameDesignGaveWay(bool wallBurst, string id, GaugePressure pressure, GaugePressure proof) =>
        Finding.Error(
            $"{(wallBurst ? "The wall" : "An end")} of vessel {id}, of the same design, gave way at {pressure}; the rating would "
            + $"prove the next one at {proof}, and nothing is proved at what has burst its like. Ask for less, or find the cause and "
            + "change the part.");

    internal static Finding EndModelIsContradicted(string seen, string vesselName) =>
        Finding.Error(
            $"{seen}: the model of the ends is contradicted, and no rating of {vesselName} stands until that end is redesigned or its "
            + "model takes the test in.");

    internal static Finding OtherEndsShareContradictedModel(string seen, string vesselName) =>
        Finding.Warning(
            $"{seen}: {vesselName} has other ends, but computed by the same model. Find out why the end let go before this rating is "
            + "relied on.");

    // Vessels/Testing/VesselEvidence
    internal static Finding TestHasNoVesselName() =>
        Finding.Error("A test has no vessel's name or number; two tests of one vessel must be told from tests of two.");

    internal static Finding VesselBurstTwice(string twiceKey, int twiceCount) =>
        Finding.Error($"Vessel {twiceKey} has {twiceCount} bursts; a vessel bursts once. Give each vessel its own number.");

    internal static Finding VesselBurstBelowProofItHeld(string groupKey, GaugePressure pressure) =>
        Finding.Error(
            $"Vessel {groupKey} burst at {pressure} but held a proof above that; check which is which, or whether the proof had hurt "
            + "it.");
}
