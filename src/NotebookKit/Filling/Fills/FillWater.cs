using NotebookKit.Filling.Restrictors;
using NotebookKit.Provenance;
using NotebookKit.Quantities;
using UnitsNet;

namespace NotebookKit.Filling.Fills;

/// <summary>What water does in a fill through a port that lies under it.</summary>
internal static class FillWater
{
    /// <summary>Longest time of the water in the line, or why it can't be computed.</summary>
    public static (Duration? Longest, string Why) TimeOf(PadFill fill)
    {
        if (!Applies(fill)) return (null, "");
        if (fill.WaterInLine is not { } line) return (null, "how much water stands in port and line isn't given");
        if (fill.SupplyRise is not null || fill.Valve is not null) return (null,
            "with a regulator wound up on the way, or a valve worked by hand, the water goes by fits");
        double gasM3 = fill.GasVolume.CubicMeters, lineM3 = line.CubicMeters, from = fill.Start.ToAbsolute(fill.Ambient).Pascals;
        var supply = fill.Cylinder is { } cylinder && cylinder.Pressure < fill.Supply ? cylinder.Pressure : fill.Supply;
        var supplyPa = supply.ToAbsolute(fill.Ambient).Pascals;
        if (lineM3 > gasM3 / 2) return (null, $"the {line.Show()} in the line is over half of the vessel's gas space of "
            + $"{fill.GasVolume.Show()}");
        // The vessel's gas is squeezed without losing heat: its pressure at the end leaves the least drop.
        var drop = supplyPa - from * Math.Pow(gasM3 / (gasM3 - lineM3), fill.Gas.HeatCapacityRatio);
        return drop < 0.05 * supplyPa
            ? (null, $"the supply of {supply} is hardly above the vessel's pressure")
            : (Duration.FromSeconds(lineM3 / (WaterPassage.AreaM2(fill.Restrictor, drop) * Math.Sqrt(2 * drop / WaterPassage.Density))),
                "");
    }

    /// <summary>What has to be said of it.</summary>
    public static IEnumerable<Finding> Find(PadFill fill)
    {
        if (!Applies(fill)) yield break;
        var (time, why) = TimeOf(fill);
        var lies = fill.PortInEffect == PortPosition.UnderWater ? "The filling port lies under water: the"
            : "The vessel holds water, and where the filling port lies isn't given. If the port lies under water, the";
        yield return FillingFindings.WaterInPortAndLineMovesFirst(
            lies, time, time is not null && WaterPassage.IsUnsourced(fill.Restrictor), why);
        if (fill.HasCheckValve != true)
            yield return FillingFindings.WaterRunsBackThroughPort(fill.HasCheckValve);
    }

    internal static bool Applies(PadFill fill) => fill.WaterFraction > Ratio.Zero && fill.PortInEffect != PortPosition.AboveWater;
}
