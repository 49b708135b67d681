using NotebookKit.Provenance;

namespace NotebookKit.Recovery;

/// <summary>What the handbook gives for a type of canopy. Source: T. W. Knacke, NWC TP 6575, 1991, tables 5-1 and 5-6.</summary>
/// <param name="DragLow">Low end of the drag coefficient on nominal area [-]; 0.4 to 1.</param>
/// <param name="DragHigh">High end of the drag coefficient on nominal area [-]; 0.4 to 1.</param>
/// <param name="OpeningFactor">Opening-force coefficient Cx at infinite mass [-]; 1 to 2.</param>
/// <param name="FillConstant">Fill time in nominal diameters travelled, n in t_f = n D₀ / v [-]; 4 to 15.</param>
/// <param name="GrowthExponent">How its drag area grows while it fills, j in (t / t_f)^j [-]; 0.5 to 2.</param>
/// <param name="DragSource">Where the drag coefficient comes from.</param>
/// <param name="OpeningSource">Where the opening figures come from.</param>
public sealed record CanopyData(
    double DragLow, double DragHigh, double OpeningFactor, double FillConstant, double GrowthExponent, Source DragSource,
        Source OpeningSource)
{
    /// <summary>The handbook's figures for a type.</summary>
    /// <param name="type">Type of canopy.</param>
    public static CanopyData For(CanopyType type)
    {
        // Fill constants of types the table has none for take the nearest relative: 8 as flat circular for the solid ones.
        var (read, recalled) = (RecoveryLiterature.Knacke, RecoveryLiterature.KnackeRecalled);
        return type switch
        {
            CanopyType.FlatCircular => new(0.75, 0.80, 1.7, 8, 2, read, read),
            CanopyType.Conical => new(0.75, 0.90, 1.8, 8, 2, read, recalled),
            CanopyType.Hemispherical => new(0.62, 0.77, 1.6, 8, 2, read, recalled),
            CanopyType.Cross => new(0.60, 0.85, 1.2, 11.7, 2, read, recalled),
            CanopyType.ExtendedSkirt => new(0.78, 0.87, 1.4, 10, 2, recalled, recalled),
            CanopyType.Annular => new(0.85, 0.95, 1.4, 8, 2, recalled, recalled),
            CanopyType.FlatRibbon => new(0.45, 0.50, 1.05, 14, 1, recalled, recalled),
            CanopyType.ConicalRibbon => new(0.50, 0.55, 1.05, 14, 1, recalled, recalled),
            CanopyType.RingSlot => new(0.56, 0.65, 1.05, 14, 1, recalled, recalled),
            CanopyType.Ringsail => new(0.75, 0.90, 1.1, 7, 1, recalled, recalled),
            CanopyType.DiscGapBand => new(0.52, 0.58, 1.3, 10, 1, recalled, recalled),
            _ => throw new ArgumentOutOfRangeException(nameof(type), $"canopy type {type} is unknown; use one of the named types."),
        };
    }
}
