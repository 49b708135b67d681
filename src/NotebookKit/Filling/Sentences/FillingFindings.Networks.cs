using NotebookKit.Provenance;
using NotebookKit.Quantities;
using UnitsNet;

namespace NotebookKit.Filling;

internal static partial class FillingFindings
{
    // Filling/Networks/VesselNode
    internal static Finding NodeStartsAboveRating(string node, GaugePressure start, GaugePressure rated) =>
        Finding.Error($"{node} holds {start} at the start, above its rated pressure of {rated}: vent the vessel from afar and retire it.");

    // Filling/Networks/HoseWhip
    internal static Finding HoseWhips(string hose, Force force) =>
        Finding.Warning($"The {hose} whips with up to {Digits.Round(force.Newtons)} N where it comes off under pressure: tie it down at "
            + "both ends with a whip check.");

    // Filling/Networks/ValvePart
    internal static Finding OpeningsOutOfOrder(string valve) =>
        Finding.Error($"The openings of the {valve} overlap or run backwards: give them in order, each shut after it was opened.");

    // Filling/Networks/RegulatorPart
    internal static Finding SupplyEffectNeedsInlet(string regulator) =>
        Finding.Error($"The {regulator} has a supply effect, and the inlet at which it was set isn't given: give the cylinder's pressure "
            + "when it was set.");

    internal static Finding DroopNeedsFlow(string regulator) =>
        Finding.Error($"The {regulator} has a droop, and the flow that it was measured at isn't given: give that flow from its data "
            + $"sheet.");

    // Filling/Networks/PadLink
    internal static Finding LinkHasNoPassage(string link) =>
        Finding.Error($"The line {link} has no part that narrows it: give its hose, its valve or its restrictor.");

    internal static Finding LinkEndsWhereItBegins(string link) =>
        Finding.Error($"The line {link} ends where it begins: name two different places.");

    internal static Finding TwoRegulatorsInLink(string link) =>
        Finding.Error($"The line {link} has two regulators: put a junction between them.");

    internal static Finding CheckValvePointsBack(string part, string from, string to) =>
        Finding.Error($"The {part} passes from {to} to {from} only, so nothing flows from {from} to {to}: turn the {part} round.");

    // Filling/Networks/NetworkChecks
    internal static Finding NodeTwice(string node) =>
        Finding.Error($"Two places are called {node}: give every place a name of its own.");

    internal static Finding LinkToNowhere(string link, string stranger) =>
        Finding.Error($"The line {link} names {stranger}, and there is no such place: add it, or correct the name.");

    internal static Finding LoopWithoutValve(string link) =>
        Finding.Error($"The line {link} closes a loop in which no valve can part the gas: take one line out, or put a valve into it.");

    internal static Finding NodeStandsAlone(string node) =>
        Finding.Warning($"No line leads to {node}: it stays as it is. Add its line, or leave it out.");

    internal static Finding StartLooksAbsolute(string node, GaugePressure start) =>
        Finding.Error($"{node} is said to hold {start} at the start, which is what a barometer reads in open air: a gauge reads 0 bar "
            + $"there. "
            + "Give the gauge pressure.");

    internal static Finding NetworkTooLarge(int nodes, int links) =>
        Finding.Error($"The network has {nodes} places and {links} lines; up to 14 cylinders and vessels can be followed. Split it.");

    internal static Finding ValveWatchesNoVessel(string valve, string watched) =>
        Finding.Error($"The {valve} is to be shut by the gauge of {watched}, which is no vessel of this network: name the vessel that the "
            + "gauge reads.");

    internal static Finding PositionOfPortNotGiven(string link, string vessel) =>
        Finding.Warning($"Where the port of the line {link} lies in {vessel} isn't given, and {vessel} holds water or may get some: it "
            + "counts as above the water here. Say where it lies, and run both.");

    internal static Finding WaterRunsIntoLine(string link, string to) =>
        Finding.Error($"Water of the line {link} would run into {to}, which can't hold it: lead that line outside or to a vessel, or put "
            + "its port above the water.");

    internal static Finding WaterPassesJunction(string link, string to) =>
        Finding.Warning($"Water of the line {link} runs into {to} and on by every line that leads on from there whenever the pressure "
            + "there is the lower one: lead that line outside, or put its port above the water.");

    internal static Finding WaterRunsBackIntoLine(string link, string vessel) =>
        Finding.Warning($"Water of {vessel} runs back through the line {link} into the hose whenever the pressure ahead is the lower one; "
            + $"that water fills the hose and then goes on to what lies ahead. Fit a check valve between the hose and {vessel}.");

    internal static Finding LinkBeginsOutside(string link) =>
        Finding.Error($"The line {link} begins outside: let a vent begin at the vessel and end outside.");

    internal static Finding CylinderBelowRegulator(string cylinder, GaugePressure holds, GaugePressure set) =>
        Finding.Warning($"{cylinder} holds {holds}, below the {set} that the regulator is set to: the regulator stands open, and the "
            + $"vessel "
            + "gets what the cylinder has. Use a fuller cylinder.");

    // Filling/Networks/PadNetworkResult
    internal static Finding NoVerdictOnRatings(IReadOnlyList<string> missing) =>
        Finding.Error($"No verdict on the ratings. Rating not given: {string.Join(", ", missing)}. Read the figures off the parts or their "
            + "data sheets, and leave the line unfilled until then.");

    internal static Finding PadPartsUnproved(IReadOnlyList<string> parts) =>
        Finding.Warning($"Day of the last proof not given: {string.Join(", ", parts)}. Give the day of each part's own proof or test.");

    internal static Finding NoSuchPlace(string place) =>
        Finding.Error($"There is no {place} in this network: use a name that the network has.");

    internal static Finding VesselPassesRating(string vessel, GaugePressure rated, double seconds) =>
        Finding.Error($"After {Digits.Round(seconds)} s {vessel} passes its rated pressure of {rated}, and the run ends there: lower the "
            + "regulator, shut the valve by the gauge, or fit a relief valve.");

    internal static Finding VapourMayPassRating(string vessel, GaugePressure highest, AbsolutePressure vapour, GaugePressure rated) =>
        Finding.Warning($"{vessel} comes to {highest}, and vapour of its water can add some {Digits.Round(vapour.Pascals / 100)} mbar, "
            + $"above the rated pressure of {rated} together: shut the valve at a lower pressure.");

    internal static Finding WaterFillsLine(string link, string? onwards, Volume past, bool hasHose, double seconds) =>
        Finding.Error($"After {Digits.Round(seconds)} s water {(hasHose ? "has filled the hose of" : "fills")} the line {link}"
            + (onwards is null ? ", and no way on is open to it." : $" and runs on {onwards}: {past.Show()} by the end of the run.")
            + " Fit a check valve between the hose and the vessel.");

    internal static Finding ValveNeverShut(string valve, string vessel, GaugePressure at, GaugePressure reads, double seconds) =>
        Finding.Warning($"After {Digits.Round(seconds)} s {vessel} reads {reads}; the {valve} waits for {at}, which isn't reached: raise "
            + $"the "
            + "supply within the rating, use a fuller cylinder, or watch for longer.");
}
