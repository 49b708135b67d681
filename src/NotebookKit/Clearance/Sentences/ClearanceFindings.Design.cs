using NotebookKit.Provenance;
using NotebookKit.Quantities;

namespace NotebookKit.Clearance;

internal static partial class ClearanceFindings
{
    // Clearance/DesignCheck
    internal static Finding RequirementNoLongerHolds(string name, string of, string value, string condition, string why) =>
        Finding.Error($"no longer holds: {name}. The {of} is {value}; it must be {condition}. {why}");

    internal static Finding RequirementsCannotBeTold(IReadOnlyList<string> names, string reason) =>
        Finding.Warning($"can't tell whether {string.Join(", ", names.Select(n => $"\"{n}\""))} {(names.Count == 1 ? "holds" : "hold")}: "
            + reason);

    internal static Finding DecisionWantsAnotherLook(string name, string chosen, string requirement) =>
        Finding.Warning($"the decision \"{name}\" ({chosen}) was to stay right while \"{requirement}\" holds. Decide again.");

    internal static string CardAllowsLess(GaugePressure fill, string heat, bool isGlassMeasured) =>
        $"less than the design's fill of {fill}: {heat}, which is taken where nobody measured more on the day. "
        + $"{(isGlassMeasured ? "Measured moisture" : "A measured glass temperature or measured moisture")} raises what is allowed.";

    internal static string WindIsNotGiven() => "the design's site gives no wind. Add \"wind\" to the site.";

    internal static string SiteIsNotGiven() => "the design gives no site. Add \"site\".";

    internal static string FillIsNotGiven(string stage) => $"the design gives no fill pressure of {stage}. Add \"charge\".";

    internal static string FieldIsNotGiven() => "the design's site gives no field. Add \"field\" to the site.";

    internal static string ScatterIsNotGiven() => "the design doesn't say how its landings scatter. Add \"scatter\".";

    internal static string NothingLanded() => "fewer than two flights of the scatter landed by the model. Look at one flight first.";

    internal static string NoOpeningLoad(string stage) =>
        $"no opening load is published for the way in which the canopy of {stage} comes out. Deploy it nearer to the apogee.";

    internal static string EquipmentIsNotGiven(string figure, string stage, string key) =>
        $"the {figure} of {stage} needs what the design doesn't give. Add \"{key}\".";

    internal static Finding TestsDoNotSayWhatWasTested(IReadOnlyList<(string Id, string Mark)> tests) =>
        Finding.Note($"{(tests.Count == 1 ? "one test doesn't" : $"{tests.Count} tests don't")} say which vessel was tested: should the "
            + "design's vessel be changed, nothing tells that the test was of the old one. While the vessel is as it was tested, write "
            + $"into {(tests.Count == 1 ? "the test" : "each test")}: {string.Join("; ", tests.Select(t => $"{t.Id}, \"made as\": "
            + $"\"{t.Mark}\""))}.");

    // Clearance/DayVerbs
    internal static Finding DayNamesOtherVessels(int named, int stages) =>
        Finding.Error($"the file of the day names {named} vessel{(named == 1 ? "" : "s")}; the design has {stages}. Name each vessel that "
            + "is filled by its serial, the booster's first.");

    internal static Finding NotChangedForADay(string place, string path) =>
        Finding.Error($"{place}\"{path}\" isn't changed for a day: what was tested, is required or is permitted stands in the design. Take "
            + "the change out of the file of the day; where the design is wrong, change the design.");

    internal static string WindOfDayIsNotGiven() =>
        "The wind wasn't measured today. Measure the wind and add its speed, and the height above ground at which it was measured, to "
            + "\"changes\" in the file of the day: { \"of\": \"site.wind.speed\", \"is\": \"4 m/s\" }, "
            + "{ \"of\": \"site.wind.reference\", \"is\": \"2 m\" }.";

    internal static Finding ChangedTwiceForTheDay(string place, string path) =>
        Finding.Error($"{place}\"{path}\" is changed twice, or as part of another change. Keep the right change and take the other out.");

    internal static Finding ChangedForTheDay(string name, string value) => Finding.Note($"today {name} is {value}.");

    internal static Finding RequirementForbids(string name, string what) =>
        Finding.Error($"a requirement of the design doesn't hold: {name} ({what}). Change the design until the requirement holds.");

    internal static string ProvedVesselWasChanged(string serial, string? made, string mark) => made is null
        ? $"The record of the proof of {serial} doesn't say which vessel was proved. Let the log of the proof be judged "
            + "again: vessel proved."
        : $"The vessel was changed since the proof of {serial}: proved was one made as {made}, the design's is made as {mark}. Take the "
            + "change back, or proof-test the vessel as it is now.";

    internal static string DayGivesNoFillOrder() =>
        "The file of the day doesn't say which vessel is filled first. Add \"fill order\": \"booster first\".";

    internal static string DayGivesNoWallTemperature(string serial) =>
        $"The file of the day gives no wall temperature of {serial}. Measure the wall at its warmest place, in the sun, and add \"wall "
            + "temperature\" to the vessel.";

    internal static string NoProofOfVessel(string serial, IReadOnlyList<string> known) =>
        $"No record of a proof of {serial} is at hand{(known.Count == 0 ? "" : $"; there are those of {string.Join(", ", known)}")}. "
            + "Proof-test the vessel with water and let its log be judged: vessel proved.";

    internal static string DayGivesNoLabel(string serial) =>
        $"The file of the day gives no mark of the label of {serial}: lines taken away at the end of its service record can't be seen. "
            + "Read the mark on the vessel's label, and add \"label\": \"3f9a-71c2\", with the mark that stands there, to the vessel. "
            + "A vessel whose label bears no mark yet gets the one that vessel show names, once the club knows that its record is whole.";

    internal static Finding LabelIsNotOfRecord(string own, string serial, string label) =>
        Finding.Error($"{own}the label of {serial} bears the mark {label}, and no line of its service record has that mark: lines were "
            + "taken away at the end of the record, the record was replaced, or the label was misread. Read the label again; then look for "
            + "the whole record. Where none is found, retire the vessel: nobody knows what it has been through.");

    internal static Finding RecordGoesOnAfterLabel(string own, string serial, string label, int lines) =>
        lines < 1 ? Finding.Error($"{own}the label of {serial} bears the mark {label}, and after the line of that mark its service record "
            + "goes on with what can't be read. Go back to a sound copy of the file; where there is none, retire the vessel.")
        : Finding.Error($"{own}the label of {serial} bears the mark {label}, and its service record goes on after that for {lines} "
            + $"{(lines == 1 ? "line" : "lines")}: nobody wrote the newer mark on the label, or lines were added that the club doesn't "
            + "know. Read the last lines with vessel show. Where they are right, write the mark that vessel show names on the label.");

    internal static string DayNamesNoGear(IReadOnlyList<string> planned) =>
        "The file of the day doesn't name the parts that stand on the pad. Add \"gear\": [ { \"kind\": \"hose\", \"serial\": \"H-2\", "
            + "\"rated to\": \"100 bar gauge\" } ], each part as it is stamped; "
            + (planned.Count == 0 ? "the design's pad names none yet." : $"the design's pad has {string.Join(", ", planned)}.");

    internal static Finding PartHasNoSerial(string own, string part) =>
        Finding.Error($"{own}the {part} on the pad has no serial: nobody can tell whether it is the one that was rated. Mark the part, and "
            + "add its \"serial\" to the gear of the day.");

    internal static Finding PartOfDayTwice(string own, string part) =>
        Finding.Error($"{own}the gear of the day names a {part} twice. Name the one that stands in the line.");

    internal static Finding PartsShareSerial(string own, string serial, IReadOnlyList<string> parts) =>
        Finding.Error($"{own}the gear of the day gives {string.Join(" and ", parts)} the same serial, {serial}: nobody can tell which part "
            + "was rated. Mark each part with a serial of its own, and write that.");

    internal static Finding RuleIsNotThatOfProof(string own, string serial, string then, string now, DateOnly day) =>
        Finding.Warning(FormattableString.Invariant($"{own}the proof of {serial} on {day:yyyy-MM-dd} was written down under {then}; the ")
            + $"design now asks for {now}, and the card reckons with that. Tell the range safety officer why the rule set was changed.");

    internal static Finding PartOfPlanIsNotOnPad(string own, string part) =>
        Finding.Error($"{own}the plan of the fill has a {part}, and the gear of the day names none. Put one into the line and name it, "
            + "with its serial and rating.");

    internal static Finding TestIsGone(string own, string serial, string test, DateOnly day) =>
        Finding.Error(FormattableString.Invariant(
            $"{own}a test that counted at the proof of {serial} on {day:yyyy-MM-dd} is gone: {test}. ")
            + "Put the test back. A test that no longer speaks for the vessel is left out before the next proof, not after it.");

    internal static Finding TestWasAltered(string own, string serial, string test, DateOnly day) =>
        Finding.Error(FormattableString.Invariant(
            $"{own}a test that counted at the proof of {serial} on {day:yyyy-MM-dd} was altered: {test}. ")
            + "Write the test as it was. Where the test was wrong, correct the test and proof-test the vessel again.");

    internal static Finding TestIsNew(string own, string serial, string test, DateOnly day) =>
        Finding.Note(FormattableString.Invariant($"{own}a test has come since the proof of {serial} on {day:yyyy-MM-dd}: {test}."));

    internal static Finding TestWasLeftOutBeforeProof(string own, string serial, string test, DateOnly earlier, DateOnly day) =>
        Finding.Warning(FormattableString.Invariant($"{own}a test that counted at the proof of {serial} on {earlier:yyyy-MM-dd} was ")
            + FormattableString.Invariant($"gone or altered at the proof on {day:yyyy-MM-dd}: {test}. Make sure that it was left out for ")
            + "a reason.");

    internal static Finding ProofDoesNotListTests(string own, string serial) =>
        Finding.Error($"{own}the proof in the service record of {serial} doesn't say which tests lay in the folder, so that a test taken "
            + "away since can't be seen: the line wasn't written by vessel proved. Proof-test the vessel with water and let vessel "
            + "proved judge the log.");

    internal static string CannotTellWithoutFlight() =>
        "Can't tell: the vehicle can't be flown as it is. Mend what the first reasons name.";

    internal static string NoServiceRecordOfVessel(string serial, IReadOnlyList<string> known) =>
        $"No service record of {serial} is at hand{(known.Count == 0 ? "" : $"; there are those of {string.Join(", ", known)}")}. "
            + "Look for the record that was begun when the vessel was made; a vessel whose record is lost is retired. Of a vessel just "
            + "made begin one: vessel new.";

    internal static Finding HeldIsNotThatOfProof(string own, GaugePressure said, GaugePressure held) =>
        Finding.Error($"{own}the service record says that the proof held {said}; the record of the proof says {held}. Let vessel proved "
            + "write the line.");

    internal static string VesselWasRejected(string serial) =>
        $"A proof of {serial} rejected the vessel. Cut the vessel up, and proof-test another.";

    internal static string TwoServiceRecordsOfVessel(string serial) =>
        $"Two service records are of {serial}, and neither is the whole history. Keep the one that was begun when the vessel was made.";

    internal static string FillNeedsProvedVessel() =>
        "A fill is planned for the very vessel that was proved. Show the proved vessel first.";

    internal static string FinsNeedFlight() => "The fins are judged at the flight's speed, and the flight has no answer. Mend the flight "
        + "first.";

    internal static string DesignGivesNo(string key, string stage, string what) =>
        $"The design doesn't give {what} of {stage}. Add \"{key}\".";

    internal static string NoSweep(string text) =>
        $"\"{Start(text)}\" isn't a sweep; write \"fill pressure=20..60 bar gauge/9\" for nine values "
            + "from 20 to 60, or \"throat=11 mm; 13 mm; 15 mm\".";

    internal static string SweepCount(string text, string count, int most) =>
        $"The sweep \"{Start(text)}\" is to go through {Start(count)} values; a range has 2 to {most}. For one value write "
            + "\"fill pressure=40 bar gauge\".";

    internal static string SweepHasNoCount(string text, string range) =>
        $"The sweep \"{Start(text)}\" doesn't say how many values lie from end to end. Write their number after a stroke: "
            + $"\"{Start(range)}/9\".";

    internal static string SweepStandsStill(string text) =>
        $"The sweep \"{Start(text)}\" begins and ends at one value. Take two ends that differ, or write the one value.";

    internal static Finding SweepTooLarge(long count, int most) =>
        Finding.Error($"the sweep has {(count >= int.MaxValue ? "over two thousand million" : count.ToString(
            System.Globalization.CultureInfo.InvariantCulture))} designs; it must have 1 to {most}. Take fewer values, or sweep one value "
            + "after the other.");

    internal static Finding SweptTwice() => Finding.Error("one value is swept twice. Name every value once.");

    internal static Finding SharedReason(int number, string why) => Finding.Note($"reason {number} of several designs: {why}");

    internal static Finding SweepCounted(int holding, int count) =>
        Finding.Note($"{holding} of {count} designs meet every requirement.");

    internal static Finding NoSuchFigure(string figure, IEnumerable<string> known) =>
        Finding.Error($"there is no figure \"{figure}\". Take one of: {string.Join(", ", known)}.");

    private static string Start(string text) => text.Length > 80 ? text[..80] : text;
}
