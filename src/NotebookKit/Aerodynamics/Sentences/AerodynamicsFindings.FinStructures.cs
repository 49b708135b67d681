using NotebookKit.Provenance;
using NotebookKit.Quantities;
using UnitsNet;
using UnitsNet.Units;

namespace NotebookKit.Aerodynamics;

internal static partial class AerodynamicsFindings
{
    // Aerodynamics/FinStructures/BodyFinStructure
    internal static Finding BodyHasNoFins() => Finding.Error("the body has no fins; there is no structure to compute. Add fins.");

    internal static Finding FinsAreSweptForward(string name) =>
        Finding.Warning(
            $"{name}: the fins are swept forward; bending then adds to twisting and lowers the divergence speed, which is "
            + "not computed here, so the fins don't pass. Sweep the fins aft, or have them tested.");

    internal static Finding DivergenceMarginTooSmall(string name, double divergenceMargin, double requiredMargin) =>
        Finding.Warning(
            $"{name}: the divergence margin is {Digits.Round(divergenceMargin)}; at least {requiredMargin} is required. "
            + "Make the fins thicker or stiffer in shear.");

    internal static Finding SheetFactorTooSmall(string name, double sheetFactor, double requiredSheetFactor) =>
        Finding.Warning(
            $"{name}: the sheet has a factor of {Digits.Round(sheetFactor)} at the root; at least {requiredSheetFactor} is "
            + "required. Make the sheet thicker or put plies across the root.");

    internal static Finding BondFactorTooSmall(string name, double bondFactor, double requiredBondFactor) =>
        Finding.Warning(
            $"{name}: the bond has a factor of {Digits.Round(bondFactor)}; at least {requiredBondFactor} is required. Make "
            + "the fillets larger or lap cloth from fin to fin.");

    internal static Finding NeitherGustNorCantIsGiven(string name) =>
        Finding.Warning(
            $"{name}: neither gust nor cant is given, so the fins carry no load, and root and bond aren't judged. Give the "
            + "strongest gust that you fly in.");

    internal static Finding FinsStallAtLoadAngle(string name, Angle angle) =>
        Finding.Note(
            $"{name}: the load angle is {angle.ToUnit(AngleUnit.Degree).Show()}; fins stall near 15°, so the load is an overestimate.");

    // Aerodynamics/FinStructures/FinFlutter
    internal static Finding FastestSpeedBeyondFlutterModel(string finsName, double mach, double maximumMach) =>
        Finding.Error(
            $"{finsName}: the fastest speed is Mach {Digits.Round(mach, 2)}; no flutter pass is given above Mach {maximumMach}, where "
            + "the criterion was up to 55 % too high. Fly slower, or have the fins tested.");

    internal static Finding FastestSpeedIsAboveFlutterSpeed(string finsName, double margin, Length wanted) =>
        Finding.Error(
            $"{finsName}: the fastest speed is above the flutter speed (margin {Digits.Round(margin)}); the fins will break "
            + $"off. Make the fins at least {wanted.Show(LengthUnit.Millimeter)} thick, stiffer in shear, or shorter in span.");

    internal static Finding FlutterMarginTooSmall(string finsName, double margin, double requiredMargin, Length wanted) =>
        Finding.Warning(
            $"{finsName}: the flutter margin is {Digits.Round(margin)}; at least {requiredMargin} is required. Make the "
            + $"fins {wanted.Show(LengthUnit.Millimeter)} thick, stiffer in shear, or shorter in span.");

    // Aerodynamics/FinStructures/FinJig
    internal static Finding JigLeavesLargeMeanCant(double absoluteTwist, double deviation) =>
        Finding.Warning(
            $"the jig leaves a mean cant of {Digits.Round(absoluteTwist)}° with a standard deviation of {Digits.Round(deviation)}°; above "
            + "some 0.25° a vehicle rolls noticeably. Close the gap, guide the fins over more length, or true the slots.");

    // Aerodynamics/FinStructures/SheetLayup
    internal static Finding SheetPlyCountOutOfRange(int pliesCount) =>
        Finding.Error($"the sheet has {pliesCount} plies; it must have 1 to 200. List them from one face to the other.");
}
