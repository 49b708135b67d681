using NotebookKit.Provenance;
using NotebookKit.Quantities;
using UnitsNet;
using UnitsNet.Units;

namespace NotebookKit.Life;

/// <summary>The sentences of life's findings, in one place.</summary>
internal static partial class LifeFindings
{
    // Life/CumulativeDamage
    internal static Finding NoCyclesToAdd() => Finding.Error("There are no cycles to add up; give at least one kind.");

    // Life/DamageResult
    internal static Finding DamageEndsLife(double damage, double limit) =>
        Finding.Warning(
            $"the damage sum is {Digits.Round(damage)} and the vessel's life ends at {Digits.Round(limit)}: retire the "
            + "vessel.");

    internal static Finding LimitOfDamageIsHigh() =>
        Finding.Warning("composites have broken at sums well below 1; a limit of 0.3 or less is common practice (no source).");

    // Life/FatigueSlope
    internal static Finding FatigueSlopeHasNoSource() =>
        Finding.Warning(
            "the fatigue slope has no published source at hand: a lighter load still counts as a whole fill, so that the "
            + "slope never lengthens a life. Confirm the slope in print before relying on it.");

    // Life/HygrothermalRetention
    internal static Finding ReferenceTemperatureOutOfRange(Temperature reference, Temperature dryGlass) =>
        Finding.Error(
            $"reference temperature is {reference.Show()}; it must be −60 °C to below the dry glass temperature, {dryGlass.Show()}. "
            + "Give the temperature at which the resin's strength was measured.");

    internal static Finding ServiceTemperatureOutOfRange(Temperature service, Temperature wetGlass) =>
        Finding.Error(
            $"service temperature is {service.Show()}; it must be −60 °C to below the wet glass temperature, "
            + $"{wetGlass.Show()}, above which the resin is rubbery. Cool and dry the vessel, or use a resin that cures at a "
            + "higher temperature.");

    internal static Finding ResinTooNearWetGlassTemperature(double marginKelvin, double comfortableMarginK) =>
        Finding.Warning(
            $"the resin is {Digits.Round(marginKelvin, 2)} K below its wet glass temperature; {comfortableMarginK} K or "
            + "more is common practice (no source). Do not fill the vessel at this temperature.");

    internal static Finding RetentionIsCappedAtOne(double formula) =>
        Finding.Note(
            $"the equation gives {Digits.Round(formula)} below the reference temperature; at most 1 is used, because cold "
            + "resin is also brittle.");

    // Life/InterferenceResult
    internal static Finding SmallChanceRestsOnTails(string distribution, int needed) =>
        Finding.Warning(
            $"a chance this small rests on the assumed {distribution} tails alone; {Digits.Round(needed, 7)} fills without "
            + "a burst would be needed to show one in a million with 95 % confidence by counting.");

    // Life/MoistureResult
    internal static Finding OuterPliesHoldMoreWater() =>
        Finding.Note("the outer plies hold more water than the mean: use the saturation for effects at the surface.");

    // Life/MoistureUptake
    internal static Finding FacesUnknown(int faces) => Finding.Error($"faces is {faces}; give both faces or the outer face only.");

    internal static Finding WeighingsRefused(Ratio first, Duration firstTime, Ratio second, Duration secondTime) =>
        Finding.Error(
            $"the weighings are {first.Show()} at {firstTime.Show()} and {second.Show()} at {secondTime.Show()}; the second must be "
            + "later and heavier. Check times and masses.");

    internal static Finding SecondUptakeOutOfRange(Ratio second, Ratio saturation) =>
        Finding.Error(
            $"the second uptake is {second.Show()}; it must be at most 60 % of the saturation, {saturation.Show()}, where the uptake "
            + "still follows the square root of time. Take an earlier weighing.");

    // Life/ProofEffect
    internal static Finding ProofPressureOutOfRange(GaugePressure proof, GaugePressure median) =>
        Finding.Error(
            $"proof pressure is {proof}; it must be at most the median burst, {median}, so that time at the proof pressure "
            + "can be counted. Lower the proof pressure.");

    // Life/ProofEffectResult
    internal static Finding ShareOfStrengthKeptIsNotGiven(Ratio rulesOutDownTo) =>
        Finding.Warning(
            "the share of strength that is left at a fill is not given, so no chance is given; the proof rules a burst out only "
            + $"while at least {rulesOutDownTo.Show()} is left.");

    internal static Finding ProofNoLongerRulesOutBurst(Ratio left, Ratio rulesOutDownTo) =>
        Finding.Warning(
            $"{left.ToUnit(RatioUnit.Percent).Show()} of the strength is less than fill over proof, "
            + $"{rulesOutDownTo.Show()}: the proof no longer rules a burst out. Retest the vessel or retire it.");

    internal static Finding NoStressRuptureParametersAreGiven() =>
        Finding.Warning(
            "no stress-rupture parameters are given: the time under load that the proof uses up is not known, and is not "
            + "zero.");

    internal static Finding NoFatigueSlopeIsGiven() =>
        Finding.Warning("no fatigue slope is given: the number of fills that the proof counts as is not known, and is not zero.");

    // Life/ScreeningByProof
    internal static Finding PressureOfFillOutOfRange(GaugePressure fill, GaugePressure proof) =>
        Finding.Error(
            $"pressure of a fill is {fill}; it must be at most the proof pressure, {proof}. Raise the proof pressure or "
            + "lower the fill.");

    internal static Finding LowestBurstSampledOutOfRange(double sortedBar) =>
        Finding.Error(
            $"the lowest burst sampled is {Digits.Round(sortedBar)} bar gauge; it must be above 0 for a lognormal law. "
            + "Check which input causes the scatter of the bursts.");

    // Life/StrengthInterference
    internal static Finding NeitherStrengthNorLoadScatters() =>
        Finding.Error("Neither strength nor load scatters; without scatter there is no chance to compute. Give at least one spread.");

    // Life/StressRuptureParameters
    internal static Finding NoStressRuptureParametersForCarbon() =>
        Finding.Warning(
            "no stress-rupture parameters for carbon are at hand with a printed source, so none are offered: a life under "
            + "sustained load is not given. Empty the vessel between uses, and retire the vessel by its life limits.");

    internal static Finding StressRuptureParametersHaveNoSource(string material) =>
        Finding.Warning(
            $"the stress-rupture parameters ({material}) have no published source at hand: the parameters may shorten a "
            + "life but never lengthen it. Confirm the parameters in print before relying on them.");

    // Life/StressRuptureResult
    internal static Finding LimitAtPressureStands(double byFormulaHours, double atMostHours) =>
        Finding.Warning(
            $"the formula would give {Digits.Round(byFormulaHours)} h; the limit of {Digits.Round(atMostHours)} h at "
            + "pressure remains, because unpublished parameters do not lengthen a life.");

    internal static Finding MorePressureCutsTime(double exponent) =>
        Finding.Note($"5 % more pressure divides the time by {Digits.Round(exponent)}.");

    // Life/SunHeatingResult
    internal static Finding SunRaisesPressure(GaugePressure pressure, GaugePressure gaugePressure, Temperature surface) =>
        Finding.Warning(
            $"a vessel closed at {pressure} may reach {gaugePressure} in the sun; the rating must hold at that pressure, "
            + $"with the resin at {surface.Show()}.");

    internal static Finding VesselWasFilledWarmerThanSun() =>
        Finding.Note("the vessel was filled at a higher temperature than the sun heats it to: the vessel's pressure falls.");

    internal static Finding SurfaceTooHotForWater(Temperature surface, string range) =>
        Finding.Error(
            $"the surface reaches {surface.Show()}; with water inside it must be {range} for a pressure to be given. Shade the "
            + "vessel, or do not leave it filled.");
}
