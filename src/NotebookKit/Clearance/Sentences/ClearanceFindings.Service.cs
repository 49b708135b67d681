using System.Globalization;
using NotebookKit.Provenance;

namespace NotebookKit.Clearance;

internal static partial class ClearanceFindings
{
    // Clearance/Service/Filled
    internal static Finding MediumUnknown() => Finding.Error("medium is neither water nor gas; leave it out where it isn't known.");

    // Clearance/Service/Inspected
    internal static Finding ResultOfInspectionUnknown() =>
        Finding.Error("result of the inspection is neither sound nor not-sound; write not-sound if in doubt.");

    // Clearance/Service/LifeLimits
    internal static Finding NeedAfterMishapUnknown(string name) =>
        Finding.Error($"{name}: what is needed after a mishap is neither a proof nor an inspection; choose one.");

    internal static Finding LimitOutOfRange(string name, string name2, int figure, int most) =>
        Finding.Error(string.Create(CultureInfo.InvariantCulture,
            $"{name}: {name2} is {figure}; it must be 1 to {most}. Leave it out for no limit."));

    // Clearance/Service/Made
    internal static Finding DayOfMakingAfterEntry(string day) =>
        Finding.Error($"day of making is {day}, after the day of its entry; enter the vessel when it is made.");

    internal static Finding CuredMassBelowDryMass(string curedMass, string dryMass) =>
        Finding.Error(
            $"cured mass is {curedMass}, below the dry mass of {dryMass}; resin adds mass. Check whether the two were "
            + "exchanged.");

    // Clearance/Service/Proved
    internal static Finding DayOfProofAfterEntry(string day) =>
        Finding.Error($"day of the proof is {day}, after the day of its entry; enter a proof when it is done.");

    // Clearance/Service/ServiceEvent
    internal static Finding KindOfEventUnknown(string kind, IEnumerable<string> kinds) =>
        Finding.Error($"\"{kind}\" isn't a kind of event known here; the kinds are {string.Join(", ", kinds)}.");

    // Clearance/Service/ServiceFields
    internal static Finding FieldUnknown(string kind, string k, int knownCount, IEnumerable<string> known) =>
        Finding.Error($"\"{kind}\" has no {k}; {(knownCount == 0 ? "it takes no values" : $"it takes {string.Join(", ", known)}")}.");

    // Clearance/Service/ServiceFile
    internal static Finding LastLineWasCutOff(int cut) =>
        Finding.Warning(
            $"The last line was cut off and was dropped ({cut} bytes) before this line was written: the event was never "
            + "complete; ask who wrote the line, and enter the event again.");

    // Clearance/Service/ServiceJudgement
    internal static Finding RecordSaysTwiceVesselWasMade(string what) =>
        Finding.Warning($"The record says twice that the vessel was made, the second time in {what}; the first day counts.");

    internal static Finding RecordHoldsOneProofTwice(string what) =>
        Finding.Warning(
            $"The record holds one proof twice, the second time in {what}; only the first entry counts. Check whether "
            + "another proof was meant.");

    internal static Finding VesselWasFilledWhileGrounded(string what) =>
        Finding.Warning($"In {what} the vessel was filled while it was grounded; find out why the record wasn't read.");

    internal static Finding NoInspectionIsWrittenDown(string on) =>
        Finding.Warning($"No inspection of {on} is written down; inspect the vessel before its first fill of the day.");

    internal static Finding NextProofIsDue(string due) => Finding.Warning($"The next proof is due on {due}; plan the retest.");

    internal static Finding FewFillsAreLeft(int left) =>
        Finding.Warning($"{(left == 1 ? "1 fill is" : $"{left} fills are")} left; plan the next proof, or the next vessel.");

    internal static Finding VesselLifeEnds(string end) => Finding.Warning($"The vessel's life ends on {end}; plan the next vessel.");

    // Clearance/Service/ServiceRecordReader
    internal static Finding LastLineLacksLineEnd(int linesCount) =>
        Finding.Note(
            $"Line {linesCount}, the last, lacks its line end; its check sum shows that the line is whole, and the line was "
            + "kept.");

    internal static Finding LastLineIsCutOff(int linesCount, int restLength) =>
        Finding.Warning(
            $"Line {linesCount}, the last, is cut off and was dropped ({restLength} bytes): the program that wrote this "
            + "line didn't end properly; ask who used it, and enter that event again.");

    internal static Finding CutOffLineWasTakenAway(int number, int removed) =>
        Finding.Note(
            $"Before line {number} was written, a line that was cut off ({removed} bytes) was removed: that event was never complete.");

    // Clearance/Service/ServiceText
    internal static Finding TextIsNotGiven(string name) => Finding.Error($"{name} is not given; write it in a few words.");

    internal static Finding TextTooLong(string name, int textLength, int longest) =>
        Finding.Error($"{name} has {textLength} characters; it must have at most {longest}. Keep long texts elsewhere and name them here.");

    internal static Finding TextHoldsHalfCharacter(string name, int number) =>
        Finding.Error($"{name} holds half a character at place {number}; write that character again.");
}
