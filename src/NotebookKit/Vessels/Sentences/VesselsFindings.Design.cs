using NotebookKit.Provenance;
using NotebookKit.Quantities;
using UnitsNet;

namespace NotebookKit.Vessels;

internal static partial class VesselsFindings
{
    // Vessels/Design/ClothWrap
    internal static Finding TurnsOutOfRange(string name, int turns) =>
        Finding.Error($"Turns of {name} is {turns}; it must be 1 to 20. Take a heavier cloth for more.");

    internal static Finding OverlapTooShort(string name, Length overlap) =>
        Finding.Warning(
            $"Overlap of {name} is {overlap.Show(3)}: too short to pass its load to the turn beneath (common practice, no "
            + "source: 25 mm).");

    internal static Finding BiasClothIsUnbalanced(string name, Ratio warpShare) =>
        Finding.Error(
            $"{name} is laid on the bias but has {warpShare.Show()} warp; an unbalanced cloth would twist the vessel. Lay it along or "
            + "around.");

    // Vessels/Design/CapDiscs
    internal static Finding DiscsOutOfRange(string name, int count) =>
        Finding.Error($"Count of cap discs of {name} is {count}; it must be 1 to 40. Take a heavier cloth for more.");

    // Vessels/Design/BondSurfaces
    internal static Finding UntreatedSurface(string part, string adhesiveName, Pressure onAbradedPlastic) =>
        Finding.Error(
            $"The surface of the {part} is an untreated plastic, on which no strength of {adhesiveName} is known; it must be abraded and "
            + $"degreased, where {onAbradedPlastic.Show()} is known. Abrade and degrease the {part}.");

    // Vessels/Design/Fitting
    internal static Finding FittingHasNoOpening(string name, string shape) =>
        Finding.Error(
            $"Opening in the {shape} is 0 mm, so the {name} has nothing to fill; the opening must be above 0. Give its "
            + "diameter.");

    internal static Finding EngagementPastWall(Length engagement, Length wall) =>
        Finding.Warning(
            $"Engagement of the fitting is {engagement.Show()} in a wall of {wall.Show()} without a boss: no more than the wall is "
            + "counted. Give the boss around the thread, or the engagement that there is.");

    internal static Finding OverlapPastWall(Length overlap, Length wall) =>
        Finding.Warning(
            $"Overlap of the bonded fitting is {overlap.Show()} in a wall of {wall.Show()}: the closure needs a boss of that length, and "
            + "what such a boss holds is not computed. Make its wall no thinner than the closure's, and let the proof judge.");

    // Vessels/Design/DomedClosure
    internal static Finding OpeningWiderThanRimAllows(Length opening, Length bore, Length widest) =>
        Finding.Error(
            $"Opening in the domed closure is {opening.Show()} in a bore of {bore.Show()}; it must be 0 to {widest.Show()}, since past "
            + "half of the bore what is left is a ring and no longer a dome. Make the opening narrower, or take a cone.");

    internal static Finding DomeIsTooFlat(double value) =>
        Finding.Note($"The dome is flatter than {value:F2} of its radius: its rim is in compression around and can buckle.");

    // Vessels/Design/Fabrication
    internal static Finding FabricationEfficiencyOutOfOrder(Ratio efficiencyLow, Ratio efficiency, Ratio efficiencyHigh) =>
        Finding.Error(
            $"Fabrication efficiency runs from {efficiencyLow.Show()} over {efficiency.Show()} to {efficiencyHigh.Show()}; it must "
            + "rise. Set all three together.");

    // Vessels/Design/HoopWrap
    internal static Finding LayersOutOfRange(string name, int layers) =>
        Finding.Error($"Layers of {name} is {layers}; it must be 1 to 50.");

    internal static Finding HoopWrapIsNotTape(string name, double warpSharePercent) =>
        Finding.Error(
            $"{name} has {warpSharePercent:F0} % warp; a hoop wrap takes a tape with 90 to 100 % of its fibre along it. Use a cloth "
            + "wrap.");

    // Vessels/Design/Liner
    internal static Finding LinerMaterialIsNotGiven(Length wall) =>
        Finding.Error($"Liner wall is {wall.Show(4)} but no material is given; name the material, or use Liner.Removed.");

    internal static Finding LinerWallTooThick(Length wall, Length bore) =>
        Finding.Error(
            $"Liner wall is {wall.Show(4)}, over a quarter of its bore {bore.Show(4)}; the thin-wall theory used here needs a thinner "
            + "one.");

    // Vessels/Design/PressureVessel
    internal static Finding UsesYourOwnValues(IEnumerable<string> overrides) =>
        Finding.Note($"Uses your own values: {string.Join("; ", overrides)}.");

    internal static Finding VesselHasNeitherLinerNorPly() => Finding.Error("The vessel has neither a liner nor a ply; give it a wall.");

    internal static Finding TooManyPlies(int pliesCount) => Finding.Error($"The vessel has {pliesCount} plies; up to 40 are taken.");

    internal static Finding NoSleeveToCarryOverEnd() =>
        Finding.Error("An end is held by sleeves carried over it, but no sleeve is laid; lay one, or hold the end another way.");

    internal static Finding SleeveCannotReachNeck(string end, string name, Length neck, Length least, Length most) =>
        Finding.Error(
            $"{end}: neck is {neck.Show()}, which {name} can't close down to; the neck must be {least.Show()} to below {most.Show()}, "
            + "where its yarns lie at 5° and square to the axis. Take a narrower sleeve or a wider neck.");

    internal static Finding SleeveJamsAtNeck(string end, string name, Length neck, (Length Smallest, Length Largest)? free, Length yarn) =>
        Finding.Error(
            $"{end}: neck is {neck.Show()}, where {name} jams and does not lie on the neck, "
            + (free is { } room ? $"since its yarns have room from {room.Smallest.Show()} to {room.Largest.Show()}; the neck must lie in "
                + "that range. Take another neck, or a sleeve of fewer or narrower yarns, or leave the sleeve out of this end and hold it "
                + "in another way."
                : $"since its yarns of {yarn.Show()} have room on no diameter. Check the width of its yarns, or take another sleeve."));

    internal static Finding SleeveOpensAtNeck(string end, string name, Length neck, Angle angle, Ratio coverage, Angle onWall)
    {
        var share = Math.Cos(angle.Radians) / Math.Cos(onWall.Radians);
        return Finding.Error(
            $"{end}: neck is {neck.Show()}, wider than the vessel under {name}: its yarns open to {angle.Show()} there, cover "
            + $"{coverage.Show(2)} and pull {Digits.Round(100 * share, 2)} % as hard along as on the wall, which is not modelled. Make the "
            + "neck no wider than the vessel.");
    }

    // Vessels/Design/SleeveFit
    internal static Finding DiameterOutOfRange(
        string braidName, Length diameter, Length minimumDiameter, Length maximumDiameter, string diameterWhy) =>
        Finding.Error(
            $"Diameter under {braidName} is {diameter.Show(4)}; it must be {minimumDiameter.Show(4)} to below "
            + $"{maximumDiameter.Show(4)}. {diameterWhy}");

    // Vessels/Design/VeilWrap
    internal static Finding VeilTurnsOutOfRange(string name, int turns) =>
        Finding.Error($"Turns of {name} is {turns}; it must be 1 to 10.");

    // Vessels/Design/VesselEnd
    internal static Finding FittingIsNotGiven(Length opening) =>
        Finding.Note(
            $"What fills the opening of {opening.Show()} is not given, so nothing is said of the thread, shoulder or bond that holds it. "
            + "Give the fitting.");

    internal static Finding DiscsOnPlateAddNothing() =>
        Finding.Warning("Cap discs on a flat closure are not counted, since a flat laminate can't pull as a membrane; take a dome.");

    internal static Finding NoJointHoldsClosure() =>
        Finding.Error("No joint holds the closure in; give a bonded plug, a threaded boss or a sleeve carried over it.");

    internal static Finding SleeveIsCarriedOverSharpEdge(Ratio delivers, Length edgeRadius) =>
        Finding.Warning(
            $"A sleeve is carried over the sharp edge of a flat closure: the {delivers.Show()} of its strength that it is taken to "
            + "deliver there has no source, and a sharp edge takes more away. Round the edge to a radius of at least "
            + $"{edgeRadius.Show()} and ten times the thickness of the sleeves (common practice, no source), or use a dome.");
}
