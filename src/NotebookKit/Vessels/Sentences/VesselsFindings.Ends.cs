using NotebookKit.Provenance;
using NotebookKit.Quantities;
using UnitsNet;

namespace NotebookKit.Vessels;

internal static partial class VesselsFindings
{
    // Vessels/Ends/ClosureVerbs
    internal static Finding ClosureIsNotModelled(string shape) =>
        Finding.Error($"Nothing is known of what a {shape} holds. Close the vessel with a flat plate, a dome or a cone.");

    // Vessels/Ends/EndFindings
    internal static Finding TailIsNotGiven(string end, string missing, GaugePressure torn, (Length Tail, Length Neck) wanted,
        GaugePressure? bond) =>
        Finding.Warning(
            $"{end}: the {missing} of the carried sleeve is not given, so the pressure at which the sleeve slips off is not known and is "
            + $"not counted in the burst; the lower-bound burst counts {(bond is { } held ? $"the bond alone, {held}" : "nothing there")}, "
            + $"and no rating is given. A bonded tail of {wanted.Tail.Show(2)} on a neck of {wanted.Neck.Show()} holds as much as the "
            + $"sleeve, {torn}. {Remedy(missing)}");

    internal static Finding NoRatingWithoutTail(string end, string missing, bool isBonded) =>
        Finding.Error(
            $"{end}: the {missing} of the carried sleeve is not given, and a sleeve that slips off its neck lets the end go at a pressure "
            + $"that nobody knows. {Remedy(missing)}{(isBonded ? " To rate on the bond alone, leave the sleeve out of the end." : "")}");

    private static string Remedy(string missing) => missing.Contains("neck", StringComparison.Ordinal)
        ? "Give the diameter of the neck, and the tail's length or that the tail is tied off."
        : "Give the tail's length, or tie the tail off.";

    internal static Finding RimYieldIsNotKnown(string end, Length opening, Length crown, bool isDuctile) =>
        Finding.Warning(
            $"{end}: first yield at the rim of the opening of {opening.Show()} is not known, since the model takes holes of 1 mm up to "
            + $"half the crown's diameter of {crown.Show()} in a thin dome"
            + (isDuctile ? "; a proof may set the rim without a word from this library"
                : "; half of what the dome holds is taken for its rim")
            + ". Make the opening narrower or the dome thinner or flatter, or measure the rim after the proof.");

    internal static Finding FittingIsNotReinforcement(string end, string fitting) =>
        Finding.Note(
            $"{end}: the {fitting} is not counted as reinforcement of the opening's rim: threads and flanges press the edge outwards and "
            + "can't pull the edge in, and the code counts metal that is one with the shell or welded to it (ASME Section VIII Division 1, "
            + "UG-37, unverified). First yield of the rim errs low; a boss of the dome's own metal counts.");

    // Vessels/Ends/JointStrength
    internal static Finding JointIsNotModelled(string jointName) =>
        Finding.Error(
            $"Nothing is known of what a {jointName} holds. Hold the closure by a bonded plug, a threaded boss or a sleeve carried "
            + "over it.");

    // Vessels/Ends/Modes/AnnularPlate
    internal static Finding PlateIsThickForWidth(Length thickness, Length width) =>
        Finding.Warning(
            $"The plate is thick for its width: {thickness.Show()} against {width.Show()} from hole to rim; shear, which the model "
            + "leaves out, adds to its deflection where the thickness is above a quarter of the width (common practice, no source).");

    internal static Finding PlateBendsTooFar(Length deflection, Length thickness) =>
        Finding.Warning(
            $"The plate bends by {deflection.Show()}, more than half its thickness of {thickness.Show()}: the model of small "
            + "deflections no longer holds (common practice, no source). Thicken the plate.");

    internal static Finding ClampedRimIsBestCase() =>
        Finding.Note("A rim clamped without any tilt is the best case; compute the plate as supported too and rate on the worse.");

    // Vessels/Design/BondedPlug, Vessels/Ends/Modes/BondedTube
    internal static Finding BondLeavesLinerOut() =>
        Finding.Warning(
            "The plug's bond is computed in shear, less a share for the wall that grows past a stiff plug and peels the bond, which has no "
            + "source, and no more than elastic peel at its mouth allows; the bond of the liner to the plies, which is in series with it, "
            + "is not modelled. Carry the plies over the plug or lock it mechanically, and let the proof judge.");

    // Vessels/Ends/Modes/BondedTube
    internal static Finding RadiusOfBondOutOfRange(Length bondRadius) =>
        Finding.Error(
            $"radius of the bond is {bondRadius.Show(4)}; it must lie between the outside of the inner part and the inside of the "
            + "outer part. Check which of the radii is a diameter.");

    internal static Finding ShearModulusIsNotGiven() =>
        Finding.Error(
            "The shear modulus of a bonded part is not given; a torque can't be shared out without it, so give it for both parts.");

    // Vessels/Ends/Modes/OpeningReinforcement
    internal static Finding RuleIsForWeldedMetalShells() =>
        Finding.Note("The rule is for welded metal shells; a composite wall or a glued boss isn't covered, and fatigue isn't either.");

    // Vessels/Ends/Modes/PlateCollapse
    internal static Finding LargestMomentRuleIsUnsafe() =>
        Finding.Warning("The rule of the largest moment lies on the unsafe side of Tresca's; rate on Tresca.");

    internal static Finding CollapseTakesDuctileMetal() =>
        Finding.Note(
            "Collapse takes ductile metal; a plate of plastic, a casting or a laminate fails near first yield, so rate those on "
            + "that.");

    internal static Finding PlateHasNoHole() =>
        Finding.Error("The plate has no hole, so there is no edge to load; give the hole's radius.");

    internal static Finding LoadOnCircleIsNotModelled() =>
        Finding.Error(
            "The load on a circle in the middle is known for a whole plate on a supported rim under Tresca's rule alone; take the "
            + "hole out, the rim as supported and the rule as Tresca.");

    // Vessels/Ends/Modes/RimAtOpening
    internal static Finding RimWallIsNotGiven() => Finding.Error("The rim's wall is not given though its reach is; give both or neither.");

    internal static Finding RimReachIsNotGiven() => Finding.Error("The rim's reach is not given though its wall is; give both or neither.");

    internal static Finding HoleTooWideForDome(Length holeRadius, double holeRadiusOverSphereRadiusPercent, Length sphereRadius) =>
        Finding.Error(
            $"The hole of {holeRadius.Show()} takes {Digits.Round(holeRadiusOverSphereRadiusPercent)} % of the dome's diameter of "
            + $"{sphereRadius.Show()}, above the 50 % up to which it is a hole in a dome: what is left is a ring, so no pressure is "
            + "given. Make the hole narrower, or design the ring to take the thrust by itself.");

    internal static Finding HoleIsWideAgainstShell(double holeParameter) =>
        Finding.Note(
            $"The hole is wide against the shell, a/√(R·t) = {Digits.Round(holeParameter)}: the dome bends around it, and the flat "
            + "sheet's factor of 2 would be on the unsafe side where nothing thickens the rim.");

    internal static Finding AreaReplacementIsForDuctileMetal() =>
        Finding.Note(
            "Replacing the area is a rule for ductile metal; beside a laminate it stands as a second, lower bound and proves nothing "
            + "by itself.");

    internal static Finding DistanceFromHoleNeedsTests() =>
        Finding.Warning(
            "The distance from the hole belongs to one laminate and its tests with holes; without such tests of this laminate let a "
            + "proof judge the rim.");

    // Vessels/Ends/Modes/ScrewedCap
    internal static Finding FirstTurnsCarryMost(Length engagement, Length counted) =>
        Finding.Note(
            $"Of {engagement.Show()} engaged {counted.Show()} are counted: the first turns carry most (common practice, no source).");

    internal static Finding FewerThanThreeTurnsEngage(double engagementOverPitch) =>
        Finding.Warning(
            $"Fewer than three turns engage ({Digits.Round(engagementOverPitch)}); run-out and chamfer can take them away (common "
            + "practice, no source). Engage more.");

    internal static Finding PlasticThreadCreeps() =>
        Finding.Note(
            "A plastic thread creeps and opens under lasting load, which lessens its overlap; the answer holds for a short load and "
            + "full overlap.");
}
