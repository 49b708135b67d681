using NotebookKit.Provenance;
using NotebookKit.Quantities;
using UnitsNet;

namespace NotebookKit.Filling.Restrictors;

/// <summary>Where a port lies in a vessel, and whether the vessel stands or lies: that says whether water stands above the port, and how
/// much of it can leave.</summary>
/// <remarks>A plain cylinder at rest; domes and slope are left out. Source: geometry of a circular segment.</remarks>
/// <param name="AlongAxis">Height of the port over the lower end of the standing vessel, over its length; 0 to 100 %, 0 for the
/// nozzle.</param>
/// <param name="Stance">Whether the vessel stands on its nozzle or lies.</param>
public sealed record PortPlace(Ratio AlongAxis, VesselStance Stance)
{
    /// <summary>Height of the port over the lowest line of a vessel that lies, over its bore; 0 to 100 %, on the axis unless
    /// given.</summary>
    public Ratio AcrossBore { get; init; } = 50.Percent();

    /// <summary>Everything wrong with it.</summary>
    public IReadOnlyList<Finding> Validate() =>
        new[]
        {
            new ValidRange<Ratio>(Ratio.Zero, 100.Percent()).Find(AlongAxis.ToUnit(UnitsNet.Units.RatioUnit.Percent),
                "height of the port over the vessel's length", "The nozzle of a standing vessel is at 0 %."),
            new ValidRange<Ratio>(Ratio.Zero, 100.Percent()).Find(AcrossBore.ToUnit(UnitsNet.Units.RatioUnit.Percent),
                "height of the port over the bore", "A port on the axis is at 50 %."),
            Enum.IsDefined(Stance) ? null : FillingFindings.StanceUnknown(Stance.ToString(), Enum.GetNames<VesselStance>()),
        }.OfType<Finding>().ToList();

    /// <summary>Water that stands above the port, over the vessel's volume: as much as can leave through the port. Source:
    /// geometry.</summary>
    /// <param name="waterFraction">Water in the vessel over its volume; 0 to 100 %.</param>
    /// <exception cref="OutOfRangeException">The water fraction is outside.</exception>
    public Ratio WaterAbove(Ratio waterFraction)
    {
        var water = new ValidRange<Ratio>(Ratio.Zero, 100.Percent()).Check(waterFraction.ToUnit(UnitsNet.Units.RatioUnit.Percent),
            "water fraction", "It is the water's volume over the vessel's.").DecimalFractions;
        var below = Stance == VesselStance.Standing ? AlongAxis.DecimalFractions : ShareBelow(AcrossBore.DecimalFractions);
        return Ratio.FromDecimalFractions(Math.Max(0, water - below)).ToUnit(UnitsNet.Units.RatioUnit.Percent);
    }

    /// <summary>Whether the port lies under that much water.</summary>
    /// <param name="waterFraction">Water in the vessel over its volume; 0 to 100 %.</param>
    /// <exception cref="OutOfRangeException">The water fraction is outside.</exception>
    public PortPosition Position(Ratio waterFraction) =>
        WaterAbove(waterFraction) > Ratio.Zero ? PortPosition.UnderWater : PortPosition.AboveWater;

    // Share of a circle's area below a height over its diameter.
    private static double ShareBelow(double height)
    {
        var h = Math.Clamp(height, 0, 1);
        return (Math.Acos(1 - 2 * h) - (1 - 2 * h) * 2 * Math.Sqrt(h * (1 - h))) / Math.PI;
    }
}

/// <summary>How a vessel is placed.</summary>
public enum VesselStance
{
    /// <summary>Upright on its nozzle, as on the rail.</summary>
    Standing,

    /// <summary>On its side, as after a fall.</summary>
    Lying,
}
