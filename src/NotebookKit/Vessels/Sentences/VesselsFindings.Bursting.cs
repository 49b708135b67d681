using NotebookKit.Provenance;
using NotebookKit.Quantities;
using UnitsNet;

namespace NotebookKit.Vessels;

internal static partial class VesselsFindings
{
    // Vessels/Bursting/BurstPrediction.Text
    internal static Finding WallIsRatedOnItsFibres(GaugePressure wallLow, bool isNotMetal) =>
        Finding.Note(
            $"The wall is rated on {wallLow}, what its fibres hold as laid: what the "
            + $"{(isNotMetal ? "plastic liner and the resin add" : "resin adds")} isn't counted on.");

    internal static Finding NothingLinesWall(GaugePressure firstPlyFailure) =>
        Finding.Warning(
            $"Nothing lines the wall: expect it to weep from {firstPlyFailure}, where its resin first cracks, long before it bursts.");

    internal static Finding LinerCarriesLoad(Ratio linerShare, bool wallLowBelowWallBurst, GaugePressure wallLow) =>
        Finding.Warning(
            $"The liner carries {linerShare.Show(2)} of the load at the burst. A plastic liner gives way slowly under a held load and "
            + "softens with warmth"
            + (wallLowBelowWallBurst
                ? $"; without it the wall is rated on {wallLow}"
                : "")
            + ".");

    internal static Finding WeakestPartIsNotWall(GaugePressure wallBurst, string weakestPartName, GaugePressure burst) =>
        Finding.Note($"The weakest part is not the wall ({wallBurst}) but the {weakestPartName} ({burst}): more plies won't help.");

    internal static Finding BurstDoesWithout(IEnumerable<string> plies, GaugePressure wallBurst) =>
        Finding.Note(
            $"The wall's burst of {wallBurst} counts {string.Join(", ", plies)} as carrying nothing: that ply breaks first, and the others "
            + "hold more without it.");

    internal static Finding PlyWidensSleeve(string ply, string sleeve, Angle turned, Angle without,
        (GaugePressure Burst, GaugePressure Low) now, (GaugePressure Burst, GaugePressure Low) alone) =>
        Finding.Warning(
            $"The {ply} beneath {sleeve} widens the sleeve and turns its yarns from {without.Show()} to {turned.Show()}: without the "
            + $"{ply} the vessel would burst at {alone.Burst} (lower bound {alone.Low}), with it at {now.Burst} (lower bound {now.Low}). "
            + $"Lay the {ply} over the sleeve, or take a sleeve of another nominal diameter.");

    internal static Finding PliesAreThickForRadius(double thicknessMm, double radiusMm) =>
        Finding.Warning(
            $"The plies are {Digits.Round(thicknessMm)} mm on a radius of {Digits.Round(radiusMm)} mm; past a tenth the inner plies "
            + "carry more than this model says.");

    // Vessels/Bursting/VesselExpansion
    internal static Finding WallIsNoLongerSound(GaugePressure pressure, IEnumerable<string> steps) =>
        Finding.Warning(
            $"At {pressure} the wall is no longer sound: {string.Join("; ", steps)}. The wall won't return to its "
            + "first size, and the growth is a rough figure.");
}
