using NotebookKit.Provenance;
using NotebookKit.Quantities;
using UnitsNet;
using UnitsNet.Units;

namespace NotebookKit.Launching;

/// <summary>The sentences of a launch's findings, in one place.</summary>
internal static class LaunchingFindings
{
    // Launching/PadTimes
    internal static Finding SpectatorsNearerThanCrew(Length crew, Length spectators) =>
        Finding.Error($"Spectators stand at {spectators.Show()} and the crew at {crew.Show()}: spectators stand farther away than the "
            + $"crew, for "
            + "they have no cover.");

    // Launching/PadProcedure
    internal static Finding ProcedureLacks(IReadOnlyList<string> missing) =>
        Finding.Warning($"Not given for the procedure: {string.Join(", ", missing)}. Compute each before the vehicle is filled.");

    internal static Finding StateMayNotFollow(string from, string to, IEnumerable<string> allowed) =>
        Finding.Error($"A pad that is {from} may not become {to}: what may follow is {string.Join(", ", allowed)}.");

    internal static Finding StateLastedTooLong(string state, Duration lasted, Duration most, string remedy) =>
        Finding.Error($"The pad was {state} for {lasted.Show()}; {most.Show()} is the most: {remedy}");

    internal static Finding CourseEndsCharged(string state) =>
        Finding.Error($"The course ends with the pad {state}: it has to end safe or empty. Vent the vessel from afar.");

    // Launching/PadReleaseResult
    internal static Finding LatchRatingNotGiven(Force worst) =>
        Finding.Warning($"The load that a latch is rated to isn't given; in the worst case a latch carries {worst.Show()}: read or test "
            + $"its rating "
            + "before use.");

    internal static Finding LatchTooWeak(Force rated, Force worst) =>
        Finding.Error($"A latch is rated to {rated.Show()} and carries up to {worst.Show()} when the seal goes first: use stronger "
            + $"latches, more of "
            + "them, or a lower pressure.");

    internal static Finding PullTooSmall(Force pull, Force needed) =>
        Finding.Error($"The release pulls with {pull.Show()}; opening the latches takes {needed.Show()}: pull harder, or lower the "
            + $"friction with a "
            + "roller or an over-centre latch.");

    internal static Finding PullTooSmallForJet(Force pull, Force needed) =>
        Finding.Warning($"The release pulls with {pull.Show()}; were the seal to go first, opening the latches would take {needed.Show()}, "
            + "and the vehicle would be held with its jet running: pull harder, or lower the friction with a roller or an over-centre "
            + "latch.");

    internal static Finding VehicleStays(Force thrust) =>
        Finding.Error($"The vehicle doesn't start: the thrust of {thrust.Show()} on the seal is less than weight and friction. Check "
            + $"diameter and "
            + "pressure.");

    // Launching/StageJointResult
    internal static Finding LatchUnloadedWhileBoosted(Force force) =>
        Finding.Note($"While boosted the sustainer presses on the booster with up to {(-force).Show()}, and the latch carries nothing: a "
            + $"latch that "
            + "falls open without load would open then. Let a spring keep it shut.");

    // Launching/StandingWindResult
    internal static Finding FinsNotGiven() =>
        Finding.Note("The wind on the fins isn't counted: give the fins, or a drag coefficient that has them.");

    internal static Finding TipsOver(double factor, Speed tipsAt, Force needed) =>
        Finding.Warning($"The factor against tipping is {Digits.Round(factor)}, below 2, and {tipsAt.Show()} of wind tips the vehicle: "
            + $"widen the base, "
            + $"or hold it down with {needed.Show()} or more.");

    // Launching/WaitInSun
    internal static Finding FilledAboveExpected(GaugePressure filled, GaugePressure most) =>
        Finding.Error($"The vessel is filled to {filled}, above the {most} that is the highest expected: vent the vessel from afar.");

    // Launching/WaitInSunResult
    internal static Finding SunPassesExpected(Duration after, GaugePressure most, Duration ventBy) =>
        Finding.Warning($"After {Digits.Round(after.Minutes)} min in the sun the vessel passes {most}, the highest expected pressure: "
            + $"launch before, "
            + $"shade the vessel, or open the dump valve within {Digits.Round(ventBy.Minutes)} min.");

    internal static Finding SunPassesResin(Duration after, Temperature limit, Duration ventBy) =>
        Finding.Warning($"After {Digits.Round(after.Minutes)} min in the sun the wall passes "
            + $"{limit.ToUnit(TemperatureUnit.DegreeCelsius).Show()}, the "
            + $"resin's limit: shade the vessel, or open the dump valve within {Digits.Round(ventBy.Minutes)} min.");

    internal static Finding WaterFreezes(Duration after) =>
        Finding.Warning($"After {Digits.Round(after.Minutes)} min the water in the vessel is at 0 °C and begins to freeze: ice blocks "
            + $"nozzle, valve and "
            + "vent. Launch or vent before.");

    internal static Finding WaterTooWarm(Duration after) =>
        Finding.Warning($"After {Digits.Round(after.Minutes)} min the contents are above 60 °C, where a laminating resin has lost its "
            + $"strength: shade or "
            + "vent the vessel before.");

    internal static Finding ResinLimitNotGiven() =>
        Finding.Warning("The highest temperature of the resin isn't given, so the wall isn't judged: give it from the resin's data sheet.");
}
