using NotebookKit.Provenance;
using NotebookKit.Quantities;

namespace NotebookKit.Evidence;

/// <summary>The sentences of evidence's findings, in one place.</summary>
internal static partial class EvidenceFindings
{
    // Evidence/FlightFit
    internal static Finding FitDidNotSettle() =>
        Finding.Error("The fit didn't settle; look at the log beside the prediction: is it this vehicle, this site, this fill?");

    internal static Finding LogCannotTellDragWell(double low, double high) =>
        Finding.Warning(
            $"The log can't tell the drag better than between {Digits.Round(low, 2)} and {Digits.Round(high, 2)} times: too slow, too "
            + "short, or too much scatter.");

    internal static Finding LogCannotTellDragFromPush() =>
        Finding.Warning(
            "The log can hardly tell more drag from more fill pressure. Trust the gauge, if it was checked, and fit the drag alone "
            + "(TrustGauge), or log faster while it pushes.");

    internal static Finding PushDiffersFromGauge(double absoluteOffBar, double off) =>
        Finding.Warning(
            $"The push looks like {Digits.Round(absoluteOffBar, 2)} bar {(off < 0 ? "less" : "more")} than the gauge read. A wrong "
            + $"gauge, water or mass, a nozzle that passes {(off < 0 ? "less" : "more")} than taken, or air that had cooled, would look "
            + "the same; the log can't tell which.");

    internal static Finding ResidualsAreNotChance() =>
        Finding.Note(
            "What is left over isn't chance: neighbouring residuals agree. The model lacks something, so the true intervals are "
            + "wider than those given.");

    internal static Finding OneFlightIsNotEnough() =>
        Finding.Note(
            "One flight is one flight: wind, tilt and the fins' cant are in the drag it gives. Fit three before the factor is "
            + "believed.");

    // Evidence/FlightLog
    internal static Finding TimeUnitRefused(string timeUnit) => Finding.Error($"The time is in {timeUnit}; it must be in s.");

    internal static Finding PressureUnitRefused(string pressureUnit) =>
        Finding.Error($"The pressure is in {pressureUnit}; it must be in bar absolute, as an altimeter reads it.");

    internal static Finding TimesAndPressuresDiffer(int timeCount, int pressureCount) =>
        Finding.Error($"There are {timeCount} times and {pressureCount} pressures; they must be one to one.");

    internal static Finding TooFewReadings(int timeCount) => Finding.Error($"There are {timeCount} readings; a fit wants at least 40.");

    internal static Finding SomeReadingsAreNotNumbers() => Finding.Error("Some readings aren't numbers; leave those rows out.");

    internal static Finding TimesDoNotRise() => Finding.Error("The times don't rise from reading to reading.");

    internal static Finding PressureOutsideAltimeterRange() =>
        Finding.Error("A pressure lies outside 0.2 to 1.2 bar absolute; check its unit, and cut out readings of a knocked sensor.");

    internal static Finding LogRisesTooLittle(double topMetres) =>
        Finding.Error($"The log rises by {Digits.Round(topMetres, 2)} m only; a fit wants at least 10 m. Is it the right part of the log?");

    internal static Finding TooFewReadingsBeforeLaunch() =>
        Finding.Error("The log has fewer than ten readings before launch; cut it later, so that it shows where the ground is.");
}
