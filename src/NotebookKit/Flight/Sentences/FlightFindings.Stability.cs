using NotebookKit.Provenance;
using NotebookKit.Quantities;
using UnitsNet;

namespace NotebookKit.Flight;

internal static partial class FlightFindings
{
    // Flight/Stability/AlignmentVerbs
    internal static Finding NoFinsToAlign() => Finding.Error("the body has no fins; there is nothing to align. Add fins.");

    internal static Finding RollOfJigsLiesNearPitchFrequency(Ratio chance, Angle critical) =>
        Finding.Warning(
            $"in {chance.Show(2)} of the sets of fins from this jig, roll lies near the pitch frequency. Close the jig's "
            + $"gap so that the cant stays below {critical.Show()}.");

    // Flight/Stability/PitchRollVerbs
    internal static Finding UnstableHasNoPitchFrequency(double margin) =>
        Finding.Error(
            $"the margin is {Digits.Round(margin)} calibres: the vehicle is unstable and has no pitch frequency. Move the "
            + "centre of gravity forward or enlarge the fins.");

    internal static Finding RollLiesNearPitchFrequency(double ratio, double damping, double criticalDegrees) =>
        Finding.Warning(
            $"roll is at {Digits.Round(ratio)} of the pitch frequency: the two can lock and a small asymmetry grows "
            + $"{Digits.Round(damping)} times. Keep the cant well below {Digits.Round(criticalDegrees)}° or well above it.");

    internal static Finding PitchingIsHardlyDamped(double damping) =>
        Finding.Warning(
            $"pitching is damped by only {Digits.Round(damping)} of critical; the vehicle will oscillate for many swings "
            + "after leaving the rail.");

    // Flight/Stability/RailExitVerbs
    internal static Finding WindAngleBeyondModels(Angle angle, Angle steepestModelled, string remedy) =>
        Finding.Error(
            $"the wind makes an angle of attack of {angle.Show()}; no model holds beyond {steepestModelled.Show()} and the vehicle "
            + $"will turn over. Don't fly. {remedy}");

    internal static Finding UnstableAsItLeavesRail(Angle angle, double margin, string remedy) =>
        Finding.Error(
            $"at {angle.Show()} the margin is {Digits.Round(margin)} calibres: the vehicle is unstable as it leaves the "
            + $"rail. {remedy}");

    internal static Finding MarginBelowOneAsItLeavesRail(Angle angle, double margin, string remedy) =>
        Finding.Warning($"at {angle.Show()} the margin is {Digits.Round(margin)} calibres, below one. {remedy}");

    internal static Finding LeavesRailTooSlowForWind(double exitOverWind, string remedy) =>
        Finding.Warning(
            $"the vehicle leaves the rail at {Digits.Round(exitOverWind)} times the wind; four times is required (common "
            + $"practice). {remedy}");

    // Flight/Stability/StabilityVerbs
    internal static Finding VehicleIsUnstable(double margins, string how) =>
        Finding.Error($"the vehicle is unstable: its minimum margin is {Digits.Round(margins)} calibres. Don't fly this vehicle. {how}");

    internal static Finding MinimumMarginCalibresBelow(double margins, double limitsMinimum, string how) =>
        Finding.Warning($"the minimum margin is {Digits.Round(margins)} calibres, below {Digits.Round(limitsMinimum)}. {how}");

    internal static Finding MarginTooLarge(double highestMargins, double limitsMaximum) =>
        Finding.Warning(
            $"the margin reaches {Digits.Round(highestMargins)} calibres, above {Digits.Round(limitsMaximum)}: the vehicle "
            + "turns into the wind readily. Leave the rail faster or fly in less wind.");
}
