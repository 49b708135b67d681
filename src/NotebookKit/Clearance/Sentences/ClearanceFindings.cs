using NotebookKit.Provenance;
using NotebookKit.Quantities;
using UnitsNet;

namespace NotebookKit.Clearance;

/// <summary>The sentences of clearance's findings, in one place.</summary>
internal static partial class ClearanceFindings
{
    // Clearance/FillAllowance
    internal static Finding ServiceRecordIsNotShown() =>
        Finding.Error("not shown: service record. The vessel's history since its proof is not known. Read its service file.");

    internal static Finding NoPublishedStressRuptureData(string hours, string limitsName) =>
        Finding.Note(
            $"no published stress-rupture data for hand-laid carbon are at hand; the limit of {hours} at pressure is used "
            + $"instead ({limitsName}).");

    internal static Finding LimitsSetNoTimeAtPressure(string limitsName) =>
        Finding.Warning(
            $"no published stress-rupture data for hand-laid carbon are at hand, and {limitsName} set no time at pressure. Judge the "
            + "vessel by limits that set one.");

    // Clearance/FlightCard
    internal static Finding ApogeeAboveCeilingAtLightDrag(Length maximumApogee, Length above) =>
        Finding.Warning(
            $"at the light end of the drag band the apogee is {maximumApogee.Show()}, above the ceiling of {above.Show()}. Use less "
            + "pressure, or measure the drag first.");

    // Clearance/Learned/LearnedVerbs
    internal static Finding TestsWereLeftOut(IReadOnlyList<string> ids) =>
        Finding.Error($"the later tests leave out {string.Join(", ", ids)}, which the earlier ones hold. A test that was made can't be "
            + "taken back: add the new tests to the earlier ones.");

    internal static Finding TestsAllowNoRating(string which, string why) =>
        Finding.Warning($"the {which} tests allow no rating: {why}");

    // Clearance/ProofVerbs
    internal static Finding RatingWasRefused(string name) =>
        Finding.Error($"the rating of {name} was refused, so no proof follows from it. Follow the findings of the rating.");

    internal static Finding BurstsAreThoseOfAnotherDesign(string burstsVesselName, string ratingVesselName) =>
        Finding.Error(
            $"the bursts are those of another design ({burstsVesselName}), not of {ratingVesselName} as it was rated. Sample the "
            + "bursts of the design that was rated.");

    // Clearance/ResinHeat
    internal static Finding EvidenceIsNotShown(IReadOnlyList<string> evidence, string remedy) =>
        Finding.Error($"not shown: {string.Join(", ", evidence)}. {remedy}");

    internal static Finding ResinGlassTemperatureIsNotGiven(string resinName) =>
        Finding.Error(
            "the resin's glass temperature isn't given: heat can't be judged. Measure the glass temperature of "
            + $"{resinName}, or take the value from its data sheet, and give that value with the resin.");

    internal static Finding ResinGlassTemperatureIsNotMeasured(Temperature glass, string source) =>
        Finding.Warning(
            $"the resin's glass temperature of {glass.Show()} isn't measured: {source}. Measure the glass temperature "
            + "before you rely on the resin's strength in the heat.");

    internal static Finding WaterInResinIsReckoned(Ratio water, string source) =>
        Finding.Note($"{water.Show()} of water in the resin is assumed: {source}. A measured content replaces this value.");

    internal static Finding MoistureIsNotCounted(Ratio claimed, string source, Ratio saturated) =>
        Finding.Warning(
            $"the resin's moisture of {claimed.Show()} isn't counted: {source}. {saturated.Show()} is taken, as in a saturated resin. "
            + "Weigh and dry a strip of the batch, and write beside the moisture \"resin moisture by\": how it was measured.");

    internal static Finding VesselTooWarm(Temperature wall, string name, Temperature most) =>
        Finding.Error(
            $"temperature of the vessel is {wall.Show()}; the {name} may be used up to {most.Show()}. Cool the vessel and "
            + "keep it in the shade.");

    // Clearance/StageJudge
    internal static Finding FinsWereJudgedWithGustBelowWindLimit(string own, Speed gust, Speed limit) =>
        Finding.Warning(
            $"{own}the fins were judged with a gust of {gust.Show()}, below the wind of {limit.Show()} that rail, drift and canopy allow. "
            + $"Fly in no more wind than {gust.Show()}, or judge the fins with a larger gust.");
}
