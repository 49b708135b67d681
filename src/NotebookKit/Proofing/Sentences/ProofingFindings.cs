using NotebookKit.Provenance;
using NotebookKit.Quantities;
using UnitsNet;

namespace NotebookKit.Proofing;

/// <summary>The sentences of proofing's findings, in one place.</summary>
internal static partial class ProofingFindings
{
    // Proofing/Proof
    internal static Finding MediumIsAir(GaugePressure proofPressure) =>
        Finding.Error(
            $"The medium is air; it must be water. Air at {proofPressure} holds hundreds of times the energy of water and kills when "
            + "a vessel bursts: fill it with water and bleed it.");

    internal static Finding VesselHasNoName() =>
        Finding.Error("The vessel has no name; a proof belongs to one vessel, so write the name that stands on it.");

    internal static Finding StepsOfProofDoNotRise(IEnumerable<string> shares) =>
        Finding.Error($"The steps are {string.Join(", ", shares)} % of proof pressure; they must rise from above 0 and end at 100 %.");

    // Proofing/ProofJudgement
    internal static Finding VesselHeldWithoutSet(string vessel, GaugePressure? heldAtLeast, GaugePressure? workingPressureShown) =>
        Finding.Note(
            $"{vessel} held {heldAtLeast} and kept no expansion beyond the limit: one survived proof, not a burst "
                + "test; the proof says that this "
            + $"vessel, as it was that day, has shown a working pressure of {workingPressureShown}.");

    internal static Finding RejectedVesselIsCutUp() => Finding.Note("A rejected vessel is cut up, so that nobody fills it by mistake.");

    internal static Finding GaugeFellBetweenTwoReadings(double timeSeconds, GaugePressure pressure, GaugePressure pressure2) =>
        Finding.Error(
            $"At {Digits.Round(timeSeconds, 5)} s the gauge fell from {pressure} to {pressure2} between two readings: the vessel or a "
            + "closure let go at that pressure. A vessel that is vented by hand falls over many readings: open the valve slowly.");

    internal static Finding HoldsAreNotInTheLog(bool severe, IReadOnlyList<string> holds)
    {
        var message = $"The log doesn't show the planned hold{(holds.Count == 1 ? "" : "s")} at "
            + (holds.Count == 1 ? holds[0] : $"{string.Join(", ", holds.SkipLast(1))} and {holds[^1]}") + ".";
        return severe ? Finding.Error(message) : Finding.Warning(message);
    }

    internal static Finding ProofPressureWasNotReached(GaugePressure highest, GaugePressure planned) =>
        Finding.Error(
            $"The highest reading is {highest}; proof pressure is {planned}. A lower proof proves a lower working pressure, and that "
            + "only where it was held.");

    internal static Finding ProofHoldFellShort(
        GaugePressure holdMinimum, double plannedBars, GaugePressure planned, double errorBars, GaugePressure? workingPressureShown,
        GaugePressure planned2) =>
        Finding.Error(
            $"The lowest reading of the proof hold is {holdMinimum}, {Digits.Round(plannedBars, 2)} bar short of the proof pressure "
            + $"of {planned}; the gauge can't tell {Digits.Round(errorBars, 2)} bar apart. A lower proof proves a lower working "
            + "pressure: "
            + (workingPressureShown is { } less
                ? $"it shows {less}"
                : "none, it wasn't held for long enough")
            + $". Proof-test the vessel again, pumped past {planned2} so that the pressure stays above through the "
            + "hold, or rate it lower.");

    internal static Finding GaugeErrorLeavesProofShort(
        double errorBars, GaugePressure? heldAtLeast, GaugePressure good, GaugePressure workingPressure, GaugePressure planned) =>
        Finding.Warning(
            $"With the gauge's {Digits.Round(errorBars, 2)} bar on the safe side the vessel held {heldAtLeast}, which proves {good}, not "
            + $"{workingPressure}. Limit the working pressure to {good}, or proof-test the vessel at {planned} by the gauge or above.");

    internal static Finding ProofPressureWasPassed(GaugePressure highest, GaugePressure planned) =>
        Finding.Warning(
            $"The gauge went to {highest}, more than 5 % above the planned {planned}: inspect the vessel with care, as "
                + "the laminate has carried that pressure.");

    internal static Finding GaugeFellAtWorkingPressure(double fallPercent, double leakRateMillilitersPerMinute, Ratio limit) =>
        Finding.Error(
            $"At working pressure the gauge fell by {Digits.Round(fallPercent, 2)} % in ten minutes with warmth and sudden drops "
            + $"taken off, {Digits.Round(leakRateMillilitersPerMinute, 2)} mL/min; {limit.Show()} is the limit. Seal the fittings and "
            + "proof-test the vessel again; reject a vessel whose wall weeps.");

    internal static Finding LogCannotTellLeak(Ratio limit, double errorPercent) =>
        Finding.Error(
            $"The log can't tell a leak of {limit.Show()} in ten minutes from no leak (two standard errors are "
            + $"{Digits.Round(errorPercent, 2)} %): hold longer or read a finer gauge.");

    internal static Finding NoTemperatureWasLogged(double risePerKelvinBars, double fallBars) =>
        Finding.Warning(
            $"No temperature was logged: {Digits.Round(risePerKelvinBars, 2)} bar for each kelvin of warming or cooling may hide in "
            + $"the fall of {Digits.Round(fallBars, 2)} bar.");

    internal static Finding PermanentExpansionCannotBeTold(string why) =>
        Finding.Error($"Permanent expansion can't be told: {why} Permanent expansion is half of what a proof says.");

    internal static string NoWaterIsLogged() => "the log has no water in and out. Log the burette beside the gauge, or read tape and rule.";

    internal static string NoGrowthWithoutHold(GaugePressure proof, GaugePressure highest) =>
        $"the log shows no hold at {proof}, at which the growth is read; the highest reading is {highest}. Hold the proof pressure.";

    internal static string WaterIsNotLoggedToTheEnd() => "after the proof hold the log has fewer than three readings without pressure. Go "
        + "on logging until the vessel is depressurised and the burette stands still.";

    internal static string NoGrowthIsSeen() => "the water that went in is no more than what water and air take as they are compressed. "
        + "Check the burette, and bleed the vessel again.";

    internal static Finding PermanentExpansionPastLimit(
        double permanentMilliliters, string millilitres, double permanentSharePercent, Ratio permanentLimit, string ruleName) =>
        Finding.Error(
            $"{Digits.Round(permanentMilliliters, 2)} mL of {millilitres} stay, {Digits.Round(permanentSharePercent, 2)} %; "
            + $"{permanentLimit.Show()} is the limit of {ruleName}: the laminate has cracked or crept.");

    internal static Finding TooMuchMoreWaterCameOut(double stays, double valuePercent, Ratio permanentLimit) =>
        Finding.Error(
            $"{Digits.Round(stays, 2)} mL more came out than went in, {Digits.Round(valuePercent, 2)} % of the total expansion: the "
            + $"burette errs by more than the {permanentLimit.Show()} it is to judge. Check its zero and proof-test the vessel again.");

    internal static Finding MoreWaterCameOutThanWent(double stays) =>
        Finding.Warning($"More water came out than went in ({Digits.Round(stays, 2)} mL): check the burette's zero.");

    internal static Finding AirIsTrapped(string millilitres, string millilitres2) =>
        Finding.Error(
            $"The curve of water against pressure points to {millilitres} of trapped air; {millilitres2} is the limit. Bleed again: "
            + "air makes a burst dangerous and a leak invisible.");

    internal static Finding WallGrewTooMuch(string grew, double mostGrowth) =>
        Finding.Error(
            $"{grew}; {mostGrowth} times is the limit (common practice, no source): the wall is softer than the layup it was rated "
            + "by, or water was lost. Find out which before the vessel is filled with gas: weigh it, measure its wall, "
            + "correct the prediction, "
            + "and proof-test it again.");

    internal static Finding LayupIsNotWhatPredictionTook(string grew) =>
        Finding.Warning($"{grew}: the layup isn't what the prediction took, or the burette was misread.");

    internal static Finding GaugeFellSuddenlyInHold(
        double durationSeconds, GaugePressure pressure, double fallBars, double volumeMilliliters) =>
        Finding.Warning(
            $"At {Digits.Round(durationSeconds, 5)} s, holding {pressure}, the gauge fell suddenly by {Digits.Round(fallBars, 2)} "
            + $"bar, {Digits.Round(volumeMilliliters, 2)} mL: a fitting that settled, or a crack. Look for water at every fitting and "
            + "listen on the next proof.");

    // Proofing/ProofPlan
    internal static Finding TrappedAirHoldsMoreThanWater(string showEnergy, string showEnergy2) =>
        Finding.Warning($"The trapped air holds {showEnergy}, more than the water's {showEnergy2}: bleed again.");

    internal static Finding SupportsStandTooFarApart(string span, string span2, Ratio bendingShare) =>
        Finding.Warning(
            $"The supports stand {span} apart; above {span2} bending adds more than {bendingShare.Show()} to the axial stress. Move "
            + "them closer.");

    internal static Finding FactorsAreUnverified(string ruleName) =>
        Finding.Warning(
            $"The factors of {ruleName} are unverified, since their source is not at hand, and the standard doesn't cover a hand-laid "
            + "wet braid: confirm before relying on them.");

    // Proofing/ProofReadings
    internal static Finding TooFewReadings(int timeCount) =>
        Finding.Error($"There are {timeCount} readings; a proof is judged from at least 20. Log once a second or so.");

    internal static Finding LogIsOfAnotherVessel(string name, string vessel) =>
        Finding.Error(
            $"The log is of vessel \"{name}\", the proof was planned for \"{vessel}\". Read the log of the vessel that was planned "
            + "for.");

    internal static Finding TimesDoNotRise() =>
        Finding.Error("The times don't rise from reading to reading; sort the log or cut it where the logger was restarted.");

    internal static Finding UnitOfReadingsRefused(string name, string columnUnit, string unit) =>
        Finding.Error($"The {name} is in {columnUnit}; it must be in {unit}. Read the log with its units.");

    internal static Finding ReadingsAndClockDiffer(string name, int columnCount, int timeCount) =>
        Finding.Error($"The {name} has {columnCount} readings and the clock {timeCount}; they must be one to one.");

    internal static Finding ReadingsAreNotNumbers(string name) =>
        Finding.Error($"The {name} has readings that aren't numbers; leave those rows out or fill them.");

    // Proofing/ProvedVessel
    internal static Finding ProofWasNotAccepted(string toLowerInvariant) =>
        Finding.Error(
            $"the verdict of the proof record is \"{toLowerInvariant}\"; only an accepted record proves a vessel. Do what its "
            + "findings name.");

    internal static Finding ProofPressureWasNotHeld() =>
        Finding.Error("the proof pressure wasn't held for the time planned, so nothing is proved. Proof-test the vessel again.");

    internal static Finding RatingWasRefused() =>
        Finding.Error("the rating was refused; a proof can't stand in for one. Do what the findings of the rating name.");

    internal static Finding RuleSetAsksTooLittle(string rulesName, double proof, double burst, double overshoot, Ratio maximumProofUse) =>
        Finding.Error(
            $"the rule set \"{rulesName}\" of the rating asks for less than each of the published ones: proof {Digits.Round(proof)}, "
            + $"burst {Digits.Round(burst)}, overshoot {Digits.Round(overshoot)}, a proof at up to {maximumProofUse.Show()} of the "
            + "strength. Rate the vessel by the Club rule or by a stricter set.");

    internal static Finding RiskIsTooHigh(
        string rulesName, string chance, double mostChance, int tests, double proof, double leastProof) =>
        Finding.Error(
            $"the rule set \"{rulesName}\" rates by risk: the chance of a burst at the maximum expected pressure is {chance} by {tests} "
            + $"tests, the proof {Digits.Round(proof)} times; at most 1 in {Digits.Round(1 / mostChance)} (common practice, no source), by "
            + $"one test or more, and a proof of {Digits.Round(leastProof)} times is required. Rate the vessel lower, or test more twins.");

    internal static Finding VesselHasBurst(string id, GaugePressure pressure) =>
        Finding.Error(
            $"vessel {id} gave way at {pressure} in a test that the rating rests on; a vessel that gave way is not filled again. Hand over "
            + "the proof of another vessel, or check the serial.");

    internal static Finding ProofLogGivesNoSerial() =>
        Finding.Error(
            "the proof log gives no serial; a proof belongs to one vessel. Write its serial on the vessel and into the log.");

    internal static Finding ProofLogGivesNoDay() =>
        Finding.Error("the proof log gives no day; a proof holds for a time only. Write the day into the log as 2026-03-14.");

    internal static Finding ProofIsOfAnotherVessel(string vessel, string vesselName) =>
        Finding.Error(
            $"the proof is of vessel \"{vessel}\", the rating of \"{vesselName}\". Take the rating of the vessel that was proved.");

    internal static Finding ProofIsOfAnotherVolume(Volume proofVolume, Volume vesselVolume, double volumeTolerancePercent) =>
        Finding.Error(
            $"the proof is of a vessel of {proofVolume.Show()}, the rating of one of {vesselVolume.Show()}; they must agree within "
            + $"{Digits.Round(volumeTolerancePercent)} %. Plan the proof from the rating.");

    internal static Finding ProofWasPlannedForAnotherWall(double plannedOverRated, double growthTolerancePercent) =>
        Finding.Error(
            $"the proof was planned for a wall that grows {Digits.Round(plannedOverRated, 2)} times as much as that of the rating; "
            + $"they must agree within {Digits.Round(growthTolerancePercent)} % (common practice, no source). Take the rating of the "
            + "layup that was proved.");

    internal static Finding ProofWasHeldTooShort(string seconds, string seconds2) =>
        Finding.Error($"the proof was held for {seconds}; at least {seconds2} is required. Proof-test the vessel again.");

    internal static Finding LeaksWereLookedForTooShort(string seconds, string seconds2) =>
        Finding.Error(
            $"leaks were looked for during {seconds}; at least {seconds2} at working pressure is required (common practice, no source). "
            + "Proof-test the vessel again.");

    internal static Finding ReadingsOfHoldTooFarApart(double gapSeconds, string seconds) =>
        Finding.Error(
            $"during the proof hold {Digits.Round(gapSeconds, 2)} s pass between two readings; at most {seconds} may (common "
            + "practice, no source), as a fall in between is not seen. Log the gauge more often and proof-test the vessel again.");

    internal static Finding LimitOfLeakWasSetTooHigh(Ratio leakLimit, Ratio mostLeak) =>
        Finding.Error(
            $"the limit of the leak was set to {leakLimit.Show()} in ten minutes; at most {mostLeak.Show()} proves a vessel (common "
            + "practice, no source). Judge the log by that.");

    internal static Finding LimitOfExpansionWasSetTooHigh(Ratio rulePermanentLimit, Ratio clubPermanentLimit) =>
        Finding.Error(
            $"the limit of permanent expansion was set to {rulePermanentLimit.Show()}; at most {clubPermanentLimit.Show()} proves a "
            + "vessel. Judge the log by that.");

    // Proofing/StandOff
    internal static Finding FloorOfDistanceGoverns(Length floor, Length byFormula) =>
        Finding.Note(
            $"The {floor.Show()} floor governs: the cube-root formula alone gives {byFormula.Show()}, but it covers blast only, and "
            + "fragments fly farther.");
}
