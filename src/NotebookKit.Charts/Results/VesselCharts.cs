using NotebookKit.Charts.Drawings;
using NotebookKit.Charts.Engineering;
using NotebookKit.Provenance;
using NotebookKit.Quantities;

namespace NotebookKit.Charts.Results;

/// <summary>Charts and drawings of a vessel: <c>burst.Chart()</c>, <c>rating.Chart()</c>, <c>layup.Draw()</c>.</summary>
public static class VesselCharts
{
    /// <summary>What each part would hold, the weakest named.</summary>
    /// <param name="burst">The prediction.</param>
    public static EngineeringChart Chart(this BurstPrediction burst)
    {
        ArgumentNullException.ThrowIfNull(burst);
        return PartMarginsChart.Draw(Parts(burst)) with { Title =
            $"Pressure that each part holds, {burst.Vessel.Name}", Remark = Band(burst) };
    }

    /// <summary>What each part would hold against working and proof pressure.</summary>
    /// <param name="rating">The rating.</param>
    /// <exception cref="InvalidDesignException">The rating was refused.</exception>
    public static EngineeringChart Chart(this Rating rating)
    {
        ArgumentNullException.ThrowIfNull(rating);
        return PartMarginsChart.Draw(Parts(rating.Prediction), rating.WorkingPressure, rating.ProofPressure) with
        {
            Title = rating.Title,
            Remark = Band(rating.Prediction),
        };
    }

    /// <summary>The wall cut across, layer by layer.</summary>
    /// <param name="layup">The layup.</param>
    /// <exception cref="InvalidDesignException">There is neither a liner nor a ply.</exception>
    public static Drawing Draw(this Layup layup)
    {
        ArgumentNullException.ThrowIfNull(layup);
        var liner = layup.Vessel.Liner;
        IEnumerable<WallLayer> layers = liner.Material is { } material
            ? [new WallLayer($"{material.Name} liner", WallLayerKind.Liner, liner.Wall)] : [];
        return LayupDrawing.Draw($"Wall of {layup.Vessel.Name}", liner.Bore,
            [.. layers, .. layup.Plies.Select(p => new
                WallLayer($"{p.Ply.Name}{(p.FibreDirections.Length > 0 ? " " + p.FibreDirections : "")}", Kind(p.Ply), p.Thickness))]);
    }

    private static IReadOnlyList<(string Part, GaugePressure Fails)> Parts(BurstPrediction burst)
        => [.. burst.Parts.Select(p => (p.Name, p.Burst))];

    private static string Band(BurstPrediction burst) =>
        burst.IsMatrixDominated ? $"the wall relies on resin: its burst lies anywhere from {burst.WallLow} to {burst.WallBurst}" : "";

    private static WallLayerKind Kind(Ply ply) => ply switch
    {
        ClothWrap => WallLayerKind.Cloth,
        HoopWrap => WallLayerKind.Hoop,
        VeilWrap => WallLayerKind.Veil,
        _ => WallLayerKind.Sleeve,
    };
}
