using NotebookKit.Provenance;
using NotebookKit.Quantities;

namespace NotebookKit.Vessels;

internal static partial class VesselsFindings
{
    // Vessels/Built/AsBuiltReadings
    internal static Finding DryFibreIsGivenTwice() =>
        Finding.Error("The dry fibre is given as a whole and ply by ply; give one of both.");

    internal static Finding NeitherDiameterNorSample() =>
        Finding.Error("Neither an outer diameter nor a displaced sample is given, so the laminate has no volume; measure the "
            + "outer diameter "
            + "at three stations or more, or displace an offcut in water.");

    // Vessels/Built/AsBuiltModel
    internal static Finding PlyIsNotInDesign(int ply, int plies) =>
        Finding.Error($"Dry fibre is given for ply {ply}; the design has plies 1 to {plies}, counted from the inside.");

    internal static Finding PlyIsWeighedTwice() => Finding.Error("The dry fibre of a ply is given twice; give each ply once.");

    internal static Finding NoLaminateToWeigh(string vessel) =>
        Finding.Error($"{vessel} has no ply that carries load, so no fibre share can be weighed; take the design as it is.");

    internal static Finding CuredIsLighterThanLiner(string cured, string liner, string? fittings) =>
        Finding.Error(
            $"The cured vessel weighs {cured}; it must weigh more than its liner of {liner}"
            + (fittings is null ? "" : $" and the {fittings} of fittings")
            + " together. Weigh them again, and check which parts lay on the scale.");

    internal static Finding LaminateIsLighterThanFibre(string laminate, string fibre, bool byDesign) =>
        Finding.Error(
            $"The cured laminate weighs {laminate}, liner and fittings taken off; it must weigh more than its dry fibre of {fibre}"
            + (byDesign ? ", which is the design's. Weigh the dry fibre, or check the layup."
                : ". Weigh them again, and take trimmed fibre off."));

    internal static Finding CuredIsHeavierThanWet(string cured, string wet) =>
        Finding.Error(
            $"The cured vessel weighs {cured}; it must weigh no more than the {wet} it weighed wet, as nothing is added while it cures. "
            + "Weigh it again, and give what else lay on the scale as fittings.");

    internal static Finding OuterDiameterTooSmall(string outer, string inner) =>
        Finding.Error(
            $"The outer diameter is {outer}; it must be above the liner's {inner} by more than the veil's thickness. Measure both again.");

    internal static Finding VoidsOutOfRange(double voidsPercent, double lowPercent, double highPercent, bool byReadings, string remedy) =>
        Finding.Error(
            $"The voids come to {Digits.Round(voidsPercent)} %; they must be {Digits.Round(lowPercent, 2)} % to "
            + $"{Digits.Round(highPercent)} %, the lower end being "
            + (byReadings ? "what the readings can't tell from none" : "common practice where no reading gives its error")
            + $". Masses, volume and densities don't add up: {remedy}, and check the densities of fibre and resin.");

    internal static Finding ReadingsWithoutError() =>
        Finding.Warning("A reading was given without its error, so the uncertainty of what follows from it isn't known; give "
            + "what the scale "
            + "and the calliper can't tell apart.");

    internal static Finding VoidsTakeStrength(double voidsPercent, double upToPercent) =>
        Finding.Warning(
            $"Voids of {Digits.Round(Math.Max(0, voidsPercent), 2)} %, by the readings at most {Digits.Round(upToPercent, 2)} "
                + "%, take about "
            + $"{Digits.Round(7 * Math.Min(4, upToPercent), 2)} % off the strength between and across the plies: some 7 % for each "
                + "per cent of "
            + "voids up to 4 % (Judd and Wright 1978, unverified: confirm)"
            + (upToPercent > 4 ? "; above 4 % no source is at hand" : "")
            + ". The predicted burst isn't lowered for that; expect weeping earlier, and squeeze the next laminate harder.");

    internal static Finding DryFibreWasNotWeighed() =>
        Finding.Note("The dry fibre wasn't weighed: the design's is used, with the spread of its areal weights. Weigh the fibre as cut.");

    internal static Finding MoreFibreIsNotCredited(double morePercent) =>
        Finding.Note(
            $"There is {Digits.Round(morePercent, 2)} % more fibre than designed; it isn't counted for strength, as overlaps and "
                + "trimmed ends "
            + "weigh and carry nothing.");

    internal static Finding LinerIsOfAnotherDiameter(string measured, string designed) =>
        Finding.Warning(
            $"The bare liner measures {measured} across, the design says {designed}: the sleeve's angle and the stress go by the design's. "
            + "Change the bore in the design and weigh again.");
}
