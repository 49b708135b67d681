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
            $"Overlap of {name} is {overlap.Show(3)}: too short to hand its pull around to the turn beneath (common practice, no "
            + "source: 25 mm).");

    internal static Finding BiasClothIsUnbalanced(string name, Ratio warpShare) =>
        Finding.Error(
            $"{name} is laid on the bias but has {warpShare.Show()} warp; an unbalanced cloth would twist the vessel. Lay it along or "
            + "around.");

    // Vessels/Design/DomedClosure
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
    internal static Finding NoJointHoldsClosure() =>
        Finding.Error("No joint holds the closure in; give a bonded plug, a threaded boss or a sleeve carried over it.");

    internal static Finding SleeveIsCarriedOverSharpEdge(Ratio delivers, Length edgeRadius) =>
        Finding.Warning(
            $"A sleeve is carried over the sharp edge of a flat closure: the {delivers.Show()} of its strength that it is taken to "
            + "deliver there has no source, and a sharp edge takes more away. Round the edge to a radius of at least "
            + $"{edgeRadius.Show()} and ten times the thickness of the sleeves (common practice, no source), or use a dome.");
}
