using NotebookKit.Provenance;
using NotebookKit.Quantities;

namespace NotebookKit.Flight;

internal static partial class FlightFindings
{
    // Flight/Dispersion/DispersionReport
    internal static Finding ShardIsPartOfDispersion(string part, int flights, int planFlights) =>
        Finding.Warning($"this is shard {part}, {flights} of {planFlights} flights: merge all shards before you draw conclusions.");

    internal static Finding WindOfDispersionIsNotGiven() =>
        Finding.Warning(
            "wind isn't given; the flights are computed in still air, and drift and weathercocking are not in the scatter. "
            + "Give the site a wind, or state WindProfile.Calm where there is none.");

    internal static Finding SomeFlightsHaveNoAnswer(int failed, int flights, int stages) =>
        Finding.Warning(
            $"{failed} of {flights} flights have no answer: too fast for the drag model, never off the rail, or down with "
            + $"water and pressure still aboard{(stages == 2 ? ", or the stages never separated" : "")}. These flights are "
            + "left out; check what they have in common.");

    internal static Finding FlightsStagesDoNotSeparateInOrder(string unparted) =>
        Finding.Warning(
            $"in {unparted} of the flights the stages don't separate in order: before the end of the booster's jet, after "
            + "apogee, or not at all. A stage that comes down then is under pressure; make the separation more reliable.");

    internal static Finding FewerThanTwoFlightsReachedGround() =>
        Finding.Error("fewer than two flights reached the ground in the model; there is no scatter to report.");

    internal static Finding CeilingIsPassed(string above) =>
        Finding.Warning($"the ceiling is exceeded in {above}: use less pressure, or ask for a higher ceiling.");

    internal static Finding LandingsAreOffField(string off) =>
        Finding.Warning($"landings are off the field in {off}: lean the rail into the wind, deploy lower, or wait for less wind.");

    internal static Finding BoosterLandsOffField(string strays) => Finding.Warning($"the booster lands off the field in {strays}.");

    internal static Finding StandardDeviationsAreUncertain(
        int landingsCount, double lowPercent, double highPercent, double quantileRadiusErrorOverNinetyPercent) =>
        Finding.Note(
            $"with {landingsCount} flights the standard deviations are known within {Digits.Round(lowPercent, 2)} % below and "
            + $"{Digits.Round(highPercent, 2)} % above, and the 90 % radius within "
            + $"{Digits.Round(quantileRadiusErrorOverNinetyPercent, 2)} %.");

    internal static Finding FlightsAreTooFew(int landingsCount, int forMaximumToCover) =>
        Finding.Warning(
            $"{landingsCount} flights are few: the worst flight covers 95 % of all flights with confidence only from "
            + $"{forMaximumToCover} flights on.");

    // Flight/Dispersion/DispersionRun
    internal static Finding NumberOfThreadsOutOfRange(int? threads) =>
        Finding.Error($"number of threads is {threads}; it must be 1 or more.");
}
