using NotebookKit.Provenance;
using NotebookKit.Quantities;
using UnitsNet;

namespace NotebookKit.Flight;

internal static partial class FlightFindings
{
    // Flight/Flights/Drift
    internal static Finding DriftNeedsWind() =>
        Finding.Warning("wind isn't given; no drift is known. Give a wind, or state WindProfile.Calm where there is none.");

    // Flight/Flights/FlightReport
    internal static Finding VehicleLeavesRailTooSlowly(Speed railExitSpeed, Speed railWind, double needed) =>
        Finding.Warning(
            $"the vehicle leaves the rail at {railExitSpeed.Show()}; in {railWind.Show()} of wind the vehicle needs "
            + $"{Digits.Round(needed)} m/s, four times the wind (common practice). Use a longer rail, more pressure, or wait "
            + "for less wind.");

    internal static Finding RelativeWindBeyondModels(Angle railExitAngle, Angle steepestModelled) =>
        Finding.Error(
            $"the relative wind off the rail comes from {railExitAngle.Show()} off the axis; no model holds beyond "
            + $"{steepestModelled.Show()} and the vehicle will turn over. Don't fly in this wind.");

    internal static Finding RelativeWindNearStall(Angle railExitAngle, double steepestDegrees) =>
        Finding.Warning(
            $"the relative wind off the rail comes from {railExitAngle.Show()} off the axis; above {steepestDegrees}° fins stall. "
            + "Don't fly in this wind.");

    internal static Finding UnstableOffRail(Angle railExitAngle, double margin) =>
        Finding.Error(
            $"off the rail, at {railExitAngle.Show()}, the margin is {Digits.Round(margin)} calibres: the vehicle is "
            + "unstable there, whatever the margin at 0°, and no height or drift given here holds. Don't fly this vehicle "
            + "like this: leave the rail faster or move the centre of gravity forward.");

    internal static Finding MarginOffRailTooSmall(Angle railExitAngle, double margin) =>
        Finding.Warning(
            $"off the rail, at {railExitAngle.Show()}, the margin is only {Digits.Round(margin)} calibres; one calibre is "
            + "the usual minimum.");

    internal static Finding VehicleReachesMach(double maximumMach) =>
        Finding.Warning(
            $"the vehicle reaches Mach {Digits.Round(maximumMach)}: above 0.8 drag rises steeply, and no flutter check passes there.");

    internal static Finding ApogeeIsAboveCeiling(Length apogee, Length ceiling) =>
        Finding.Error(
            $"apogee is at {apogee.Show()}, above the ceiling of {ceiling.Show()}. Don't fly like this: use less pressure "
            + "or less water, or add mass.");

    internal static Finding ApogeeIsWithinTenthOfCeiling(Length apogee, Length near) =>
        Finding.Warning(
            $"apogee is at {apogee.Show()}, within a tenth of the ceiling of {near.Show()}; scatter will take some flights "
            + "above the ceiling. Check the dispersion.");

    internal static Finding UnstableOnWayUp(Duration duration, double least) =>
        Finding.Error(
            $"on the way up, at {duration.Show()}, the margin is {Digits.Round(least)} calibres: the vehicle is unstable "
            + "there, and no height or drift given here holds. Don't fly like this: move the centre of gravity forward or "
            + "enlarge the fins.");

    internal static Finding LandsOffField(Length drift, Length landingEast, Length landingNorth) =>
        Finding.Error(
            $"the vehicle lands {drift.Show()} from the pad ({landingEast.Show()} east, {landingNorth.Show()} north), off "
            + "the field. Lean the rail into the wind, deploy lower, or wait for less wind.");

    internal static Finding WaterIsOutOnlyAfterApogee(Duration waterOutTime, string remedy) =>
        Finding.Warning(
            $"the water is not out until {waterOutTime.Show()} after apogee: the vehicle turns over while its jet drives it "
            + $"towards the ground. {remedy}");

    internal static Finding LandsWhileGasStillLeaves(string aboard) =>
        Finding.Warning(
            $"the vehicle lands while gas still leaves, with {aboard} aboard. Stay away until the gas is out; a wider "
            + "nozzle empties the vehicle sooner.");

    internal static Finding WaterStaysAboard(double waterLeftGrams) =>
        Finding.Warning(
            $"{Digits.Round(waterLeftGrams)} g of water stay aboard after the pressure is spent. Use less water or more pressure.");

    internal static Finding VehicleTurnsOverOnWayUp(double attack) =>
        Finding.Error(
            $"the vehicle swings {Digits.Round(attack, 2)}° across its path on the way up: the vehicle turns over, either "
            + "unstable or far too slow off the rail. Don't fly this vehicle.");

    internal static Finding AngleOfAttackBeyondModels(double attack) =>
        Finding.Warning($"the angle of attack reaches {Digits.Round(attack)}°; above 20° no model here holds, and fins stall from 15°.");

    internal static Finding RollRateLiesNearPitchFrequency(double bandFrom, double bandTo, double nearSeconds) =>
        Finding.Warning(
            $"the roll rate lies between {bandFrom} and {bandTo} of the pitch frequency for {Digits.Round(nearSeconds, 2)} s on the "
            + "way up: roll and pitch can lock in. Cant the fins less, or more.");

    internal static Finding CanopyComesOutTooLate(Duration landingTime, string deployment) =>
        Finding.Error(
            $"the vehicle reaches the ground at {landingTime.Show()}, before the canopy comes out ({deployment}). Shorten "
            + "the delay.");

    internal static Finding ComesDownWithoutCanopy(Speed landingSpeed, Energy landingEnergy) =>
        Finding.Warning(
            $"the vehicle comes down without a canopy, at {landingSpeed.Show()} and {landingEnergy.Show()}: an impact like "
            + "that kills. Nobody may stand under the flight path.");

    internal static Finding CanopyComesOutWhileJetRuns(Duration opening, string? aboard) =>
        Finding.Error(
            $"the canopy comes out at {opening.Show()}, while the jet still "
            + $"runs{(aboard is not null ? $" and with {aboard} aboard" : "")}. Set the timer later.");

    internal static Finding CanopyComesOutFarFromApogee(Speed openingSpeed, string farFromApogee) =>
        Finding.Warning($"the canopy comes out at {openingSpeed.Show()} through the air, {farFromApogee}");

    internal static Finding CanopyComesOutTooFast(Speed openingSpeed, Speed fastestOpening) =>
        Finding.Error(
            $"the canopy comes out at {openingSpeed.Show()}; opening loads are published up to {fastestOpening.Show()}, so "
            + "no load is given. Don't fly like this: open the canopy near apogee.");

    internal static Finding ComesDownTooFast(Speed descentSpeed) =>
        Finding.Warning(
            $"the vehicle comes down at {descentSpeed.Show()}; above some 9 m/s fins and fillets break and people get hurt. "
            + "Use a larger canopy.");

    // Flight/Flights/FlightVerbs
    internal static Finding RollInertiaIsNotGiven() =>
        Finding.Error(
            "roll inertia of the parts is 0 kg·m²; it must be above 0 to fly in six degrees of freedom. Give the parts of the mass "
            + "budget a diameter, not only a place.");

    internal static Finding ThrustBelowWeight(Force thrust, Force weight) =>
        Finding.Error(
            $"thrust at release is {thrust.Show()}; the vehicle weighs {weight.Show()} and would not lift. Use more pressure, a wider "
            + "nozzle or less mass.");
}
