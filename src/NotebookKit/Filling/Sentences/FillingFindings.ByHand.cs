using NotebookKit.Provenance;
using NotebookKit.Quantities;
using UnitsNet;

namespace NotebookKit.Filling;

internal static partial class FillingFindings
{
    // Filling/ByHand/HandFill
    internal static Finding NothingIsDone() => Finding.Error("The plan has no action: say what is done at the valve.");

    internal static Finding TopUpsDoNotDo(GaugePressure target, Pressure within) =>
        Finding.Error($"Ten top-ups don't settle within {within.Show()} of {target}: hold for longer, or allow more to be missing.");

    // Filling/ByHand/HandFillPlan
    internal static Finding ActionCannotBeDone(int number, string why) => Finding.Error($"Action {number} can't be done: {why}.");

    internal static Finding ActionMayFail(int number, string why) =>
        Finding.Warning($"With the restrictor or the wall at the end of what they may be, action {number} can't be done: {why}.");

    internal static string WhenOff(bool isHold, bool isFit, GaugePressure low) =>
        isFit ? "Fit the part only with the valve shut and the line vented; the gauge keeps its reading."
        : isHold ? $"A gauge below {Digits.Round(low.Bar)} bar is a leak: vent from afar. A gauge that rises means a valve that isn't "
            + $"shut: shut "
            + "the cylinder."
        : "Slower: shut the valve and look for water in the line, a valve half open, or an emptying cylinder. Faster or higher: shut the "
            + "cylinder and vent; the restrictor isn't the one that was planned.";

    // Filling/ByHand/PulsedFillLog
    internal static Finding NoOpeningGiven() =>
        Finding.Error("The log has no opening of the valve: give when the valve was opened and shut, on the log's clock.");

    // Filling/ByHand/PulsedFillFit
    internal static Finding LogCannotTellApart(string one, string other, double correlation) =>
        Finding.Warning($"The log can't tell {one} from {other} (correlation {Digits.Round(correlation, 2)}): keep logging with the "
            + $"valve shut "
            + "until the gauge stands still.");

    internal static Finding LogShowsNoLeak(SonicConductance most) =>
        Finding.Note($"The log shows no leak, and can't rule out one of up to {most}.");

    internal static Finding LogShowsLeak(SonicConductance leak, double barPerMinute) =>
        Finding.Warning($"The log shows a leak of {leak}, {Digits.Round(barPerMinute, 2)} bar a minute at the last reading: find the leak "
            + "before the next fill.");
}
