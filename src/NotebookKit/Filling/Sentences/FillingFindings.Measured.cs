using NotebookKit.Provenance;
using NotebookKit.Quantities;

namespace NotebookKit.Filling;

internal static partial class FillingFindings
{
    // Filling/Measured/FillFit
    internal static Finding FitDidNotSettle() =>
        Finding.Error("The fit didn't converge; check the log: was the valve opened once, is the supply pressure right?");

    internal static Finding LogCannotTellFilmCoefficient() =>
        Finding.Note(
            "The log can't determine the film coefficient more closely than within a factor of two: keep logging while the "
            + "gas cools.");

    internal static Finding LogCannotTellCriticalRatio() =>
        Finding.Note(
            "The log can't separate the critical ratio from the conductance unless the fill comes close to the supply "
            + "pressure; the critical ratio was kept as given.");

    // Filling/Measured/FillLog
    internal static Finding TimeUnitRefused(string timeUnit) => Finding.Error($"The time is in {timeUnit}; it must be in s.");

    internal static Finding PressureUnitRefused(string pressureUnit) =>
        Finding.Error($"The pressure is in {pressureUnit}; it must be in bar gauge.");

    internal static Finding TimesAndPressuresDiffer(int timeCount, int pressureCount) =>
        Finding.Error($"There are {timeCount} times and {pressureCount} pressures; they must be one to one.");

    internal static Finding TooFewReadings(int timeCount) => Finding.Error($"There are {timeCount} readings; a fit needs at least 10.");

    internal static Finding SomeReadingsAreNotNumbers() => Finding.Error("Some readings aren't numbers; leave those rows out.");

    internal static Finding TimesDoNotRise() => Finding.Error(
        "The times don't increase from reading to reading. Sort the readings by time.");

    internal static Finding FitTakesOneOpeningOfValve() =>
        Finding.Error("The fit needs a log in which the valve was opened once; cut the log to one opening.");

    internal static Finding GaugeRisesTooLittle(double riseBar) =>
        Finding.Error($"The gauge rises by {Digits.Round(riseBar)} bar only; a fit needs at least 1 bar.");

    internal static Finding GaugeReadsMoreThanSupply(double highestPressureBar, GaugePressure supply) =>
        Finding.Error(
            $"The gauge reads up to {Digits.Round(highestPressureBar)} bar, more than the supply of {supply}: give the "
            + "supply pressure of that fill, or zero the gauge.");
}
