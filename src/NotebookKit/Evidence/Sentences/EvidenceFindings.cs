using NotebookKit.Provenance;
using NotebookKit.Quantities;

namespace NotebookKit.Evidence;

/// <summary>The sentences of evidence's findings, in one place.</summary>
internal static partial class EvidenceFindings
{
    // Evidence/FlightFit
    internal static Finding FitDidNotSettle() =>
        Finding.Error("The fit didn't converge; compare the log with the prediction: are vehicle, site and fill those of this log?");

    internal static Finding LogCannotTellDragWell(double low, double high) =>
        Finding.Warning(
            $"The log determines the drag only to between {Digits.Round(low, 2)} and {Digits.Round(high, 2)} times: the "
            + "flight was too slow or too short, or the scatter is too large.");

    internal static Finding LogCannotTellDragFromPush() =>
        Finding.Warning(
            "The log can hardly separate the drag from the fill pressure. If the gauge was checked, trust the gauge and "
            + "fit the drag alone (TrustGauge), or log faster during the thrust.");

    internal static Finding PushDiffersFromGauge(double absoluteOffBar, double off) =>
        Finding.Warning(
            $"The effective fill pressure is {Digits.Round(absoluteOffBar, 2)} bar {(off < 0 ? "less" : "more")} than the "
            + $"gauge read. A wrong gauge, water or mass, a nozzle that passes {(off < 0 ? "less" : "more")} than assumed, or "
            + "air that had cooled would look the same; the log can't show which.");

    internal static Finding ResidualsAreNotChance() =>
        Finding.Note(
            "The residuals aren't random: neighbouring residuals agree. The model lacks an effect, so the true intervals "
            + "are wider than those given.");

    internal static Finding OneFlightIsNotEnough() =>
        Finding.Note(
            "This is one flight: wind, tilt and the fins' cant are part of the drag that it gives. Fit three flights "
            + "before you rely on the factor.");

    // Evidence/FlightLog
    internal static Finding TimeUnitRefused(string timeUnit) => Finding.Error($"The time is in {timeUnit}; it must be in s.");

    internal static Finding PressureUnitRefused(string pressureUnit) =>
        Finding.Error($"The pressure is in {pressureUnit}; it must be in bar absolute, as an altimeter reads it.");

    internal static Finding TimesAndPressuresDiffer(int timeCount, int pressureCount) =>
        Finding.Error($"There are {timeCount} times and {pressureCount} pressures; they must be one to one.");

    internal static Finding TooFewReadings(int timeCount) => Finding.Error($"There are {timeCount} readings; a fit needs at least 40.");

    internal static Finding SomeReadingsAreNotNumbers() => Finding.Error("Some readings aren't numbers; leave those rows out.");

    internal static Finding TimesDoNotRise() => Finding.Error(
        "The times don't increase from reading to reading. Sort the readings by time.");

    internal static Finding PressureOutsideAltimeterRange() =>
        Finding.Error(
            "A pressure lies outside 0.2 to 1.2 bar absolute; check its unit, and cut out readings from when the sensor "
            + "was knocked.");

    internal static Finding LogRisesTooLittle(double topMetres) =>
        Finding.Error(
            $"The log rises by {Digits.Round(topMetres, 2)} m only; a fit needs at least 10 m. Check that this is the right "
            + "part of the log.");

    internal static Finding TooFewReadingsBeforeLaunch() =>
        Finding.Error(
            "The log has fewer than ten readings before launch; start the log earlier, so that the readings show the "
            + "pressure on the ground.");

    // Evidence/FlightLogs
    internal static Finding TooFewFlights(int count) =>
        Finding.Error($"There are {count} flights; 2 to 30 can be fitted together.");

    internal static Finding FlightNameStandsTwice(string name) =>
        Finding.Error($"Two flights are named '{name}'; give every flight a name of its own (Name).");

    internal static Finding OfFlight(string name, Finding finding) => finding with { Message = $"{name}: {finding.Message}" };

    internal static Finding FlightsOfAnotherShape(string name, string first, double difference) =>
        Finding.Error(
            $"The drag that was predicted for {name} differs by {Digits.Round(100 * difference, 2)} % from that for {first}; flights "
                + "that are fitted together share one shape. Fit flights of another body or other fins apart.");

    internal static Finding FlightDidNotSettle(string name) =>
        Finding.Error($"The fit of {name} didn't converge; are vehicle, site and fill those of this log? Correct them or leave the "
            + $"flight out.");

    internal static Finding FlightDisagrees(string name, double own, double others, double deviations) =>
        Finding.Warning(
            $"{name} disagrees: it gives {Digits.Round(own)} times the assumed drag and the other flights give {Digits.Round(others)} "
                + $"times, "
            + $"{Digits.Round(Math.Abs(deviations), 2)} standard deviations apart. Look for what was different on that flight before "
            + "you use the shared factor; leave the flight out only for a reason that you can name.");

    internal static Finding TwoFlightsDisagree(string one, string other) =>
        Finding.Warning($"{one} and {other} give different drag, and two flights can't show which is the odd one; fly a third.");

    internal static Finding TwoFlightsGiveAWideInterval() =>
        Finding.Note("Two flights hardly show how flights differ, so the interval for the next flight is wide; fit three or more.");

    internal static Finding FillReadsOff(double offsetBar, double halfBar) =>
        Finding.Warning(
            $"All flights together look like fills {Digits.Round(Math.Abs(offsetBar), 2)} bar {(offsetBar < 0 ? "below" : "above")} "
                + $"what the "
            + $"gauge read, ± {Digits.Round(halfBar, 2)} bar. That is shared by the flights: check the gauge, the mass and the nozzle.");
}
