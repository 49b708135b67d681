using NotebookKit.Provenance;
using NotebookKit.Quantities;
using UnitsNet;

namespace NotebookKit.Recovery;

/// <summary>The sentences of recovery's findings, in one place.</summary>
internal static partial class RecoveryFindings
{
    // Recovery/Canopy
    internal static Finding NumberOfCanopiesOutOfRange(int count) =>
        Finding.Error($"number of canopies is {count}; it must be 1 to 4. The drag loss of larger clusters isn't known here.");

    internal static Finding NumberOfGoresOutOfRange(int count) =>
        Finding.Error($"number of gores is {count}; it must be 4 to 32. Six to twelve are usual for a small canopy.");

    internal static Finding ComesDownTooFast(Speed fast) =>
        Finding.Warning(
            $"the vehicle comes down at up to {fast.Show()}; above some 9 m/s fins and fillets break and people get hurt. "
            + "Use a larger canopy.");

    // Recovery/Canopy.Opening
    internal static Finding FillConstantIsExtrapolated(Speed speed, Force infinite) =>
        Finding.Note(
            $"the fill constant is published for 46 to 152 m/s; at {speed.Show()} it is an extrapolation. Take the load at infinite "
            + $"mass, {infinite.Show()}, as the upper bound.");

    internal static Finding OpeningLoadIsHigh(double infiniteOverWeight) =>
        Finding.Warning(
            $"the load is {Digits.Round(infiniteOverWeight)} times the weight: the opening is early or late. Move the "
            + "opening nearer to apogee, where the speed is lowest.");

    // Recovery/Canopy.Timer
    internal static Finding UpperBoundOfOfOpeningsMore(Force infiniteMass, Force gear) =>
        Finding.Warning(
            $"the upper bound of 95 % of openings is {infiniteMass.Show()}, more than the {gear.Show()} that the gear "
            + "bears; only the load at finite mass stays below it. Use stronger gear, or test the gear.");

    internal static Finding OpeningLoadMayExceedGear(Ratio chance, Force allowed, Duration apogee) =>
        Finding.Warning(
            $"in {chance.Show(2)} of the openings the load exceeds the {allowed.Show()} that the gear bears. Set the timer "
            + $"to {apogee.Show()}, narrow its spread, or use stronger gear.");

    internal static Finding TimerIsOff(Duration absoluteMean, double mean, Duration apogee) =>
        Finding.Warning(
            $"the timer is {absoluteMean.Show()} {(mean < 0 ? "early" : "late")}, more than the spread; the load is lowest "
            + $"at apogee. Set the timer to {apogee.Show()}.");

    // Recovery/RecoveryCheck
    internal static Finding CordIsTooWeak(Force cordStrength, Force peak, double requiredFactor) =>
        Finding.Error(
            $"the cord breaks at {cordStrength.Show()} and the halves pull {peak.Show()}; the breaking load must be at least "
            + $"{requiredFactor} times the pull (common practice, no source). Use a longer, softer or stronger cord.");

    internal static Finding JointHasNoPins() =>
        Finding.Note(
            "The joint has no pins: friction alone holds the joint. Test on the ground that the joint stays shut and that "
            + "it opens.");

    // Recovery/ShearPins
    internal static Finding NumberOfPinsOutOfRange(int count) =>
        Finding.Error($"number of pins is {count}; it must be 1 to 12. More than 12 pins never shear together.");

    internal static Finding PinsMayShearInFlight(Force all, Force holding) =>
        Finding.Warning(
            $"the pins shear at {all.Show()} and the flight loads them with {holding.Show()}; the pins must hold 1.5 times "
            + "that load (common practice). Use more or thicker pins, or vent the compartment.");

    internal static Finding SeparatingForceTooSmall(Force separating, Force all) =>
        Finding.Warning(
            $"the separating force is {separating.Show()} and the pins shear at {all.Show()}; the force must be 1.5 times "
            + "that (common practice). Use fewer pins or more force, and test on the ground.");

    // Recovery/ShockCord
    internal static Finding PeakPullOutOfRange(Force peak, Force breakingLoad) =>
        Finding.Warning(
            $"the peak pull is {peak.Show()} against a breaking load of {breakingLoad.Show()}; the peak pull must be at "
            + "most half of it. Use a longer or softer cord, or separate the halves more slowly.");
}
