using NotebookKit.Materials.Fluids;
using NotebookKit.Quantities.Numbers;
using NotebookKit.Quantities;
using UnitsNet;
using UnitsNet.Units;

namespace NotebookKit.Proofing.Plans;

/// <summary>A vessel full of water with a little trapped air: how it takes water as it is pumped up, and how its pressure answers a leak or
/// warmth.</summary>
/// <remarks>
/// Water, wall and bubble are springs side by side: water to pump = V p/K + ΔV wall + squeezed air. The bubble is at constant temperature.
/// Source: Kell 1975 (water); Roark 2002 (wall); ideal gas at constant temperature (bubble).
/// </remarks>
/// <param name="Volume">Internal volume without pressure; above 0.</param>
/// <param name="Wall">Growth of the wall.</param>
/// <param name="Water">The water.</param>
/// <param name="TrappedAir">Air left in the vessel, measured at ambient pressure; 0 or above.</param>
/// <param name="Ambient">Surrounding air pressure.</param>
public sealed record FilledVessel(Volume Volume, WallExpansion Wall, Water Water, Volume TrappedAir, AbsolutePressure Ambient)
{
    /// <summary>Growth of the bore at a pressure. Source: Roark 2002.</summary>
    /// <param name="pressure">Gauge pressure; 0 or above.</param>
    public Volume WallExpansion(GaugePressure pressure) => Wall.Of(Volume, pressure).ToUnit(VolumeUnit.Milliliter);

    /// <summary>Volume by which the water is squeezed. Source: Kell 1975, V p/K.</summary>
    /// <param name="pressure">Gauge pressure; 0 or above.</param>
    public Volume WaterCompressed(GaugePressure pressure) => (Volume * (pressure.Pascals /
        Water.BulkModulus.Pascals)).ToUnit(VolumeUnit.Milliliter);

    /// <summary>Volume that the trapped air still takes at a pressure. Source: ideal gas at constant temperature.</summary>
    /// <param name="pressure">Gauge pressure; 0 or above.</param>
    public Volume AirLeft(GaugePressure pressure) => TrappedAir * (Ambient / pressure.ToAbsolute(Ambient));

    /// <summary>Volume by which the trapped air is squeezed. Source: ideal gas at constant temperature.</summary>
    /// <param name="pressure">Gauge pressure; 0 or above.</param>
    public Volume AirCompressed(GaugePressure pressure) => TrappedAir - AirLeft(pressure);

    /// <summary>All the water the pump has to bring to reach a pressure.</summary>
    /// <param name="pressure">Gauge pressure; 0 or above.</param>
    public Volume WaterToPump(GaugePressure pressure) => WaterCompressed(pressure) + WallExpansion(pressure) + AirCompressed(pressure);

    /// <summary>Fall in pressure when a little water is lost. Source: springs side by side.</summary>
    /// <param name="lost">Water lost; 0 or above, small against the water pumped in.</param>
    /// <param name="pressure">Gauge pressure at which it is lost; above 0.</param>
    public Pressure DropFor(Volume lost, GaugePressure pressure)
        => Pressure.FromBars(
            Finite.Check(1e-5 * lost.CubicMeters / CompliancePerPascal(pressure), "fall in pressure", "bar"));

    /// <summary>Water lost for a fall in pressure: the inverse of <see cref="DropFor"/>.</summary>
    /// <param name="drop">Fall in pressure with warmth taken off; any sign.</param>
    /// <param name="pressure">Gauge pressure at which it falls; above 0.</param>
    public Volume LossFor(Pressure drop, GaugePressure pressure)
        => Volume.FromMilliliters(
            Finite.Check(1e6 * drop.Pascals * CompliancePerPascal(pressure), "water lost", "mL"));

    /// <summary>Rise in pressure when water and wall warm up by a little with every valve shut. Source: linear thermal expansion of water
    /// (Kell 1975) and wall.</summary>
    /// <param name="warming">Rise in temperature; any sign, negative for cooling.</param>
    /// <param name="pressure">Gauge pressure; above 0.</param>
    public Pressure RiseFor(TemperatureDelta warming, GaugePressure pressure)
    {
        var free = Water.VolumetricExpansion.PerKelvin - 3 * Wall.ThermalExpansion.PerKelvin;
        return Pressure.FromBars(Finite.Check(
            1e-5 * free * warming.Kelvins * Volume.CubicMeters / CompliancePerPascal(pressure), "rise in pressure", "bar"));
    }

    // Volume taken up per pascal at a pressure, m³/Pa.
    private double CompliancePerPascal(GaugePressure pressure)
    {
        var absolutePa = pressure.ToAbsolute(Ambient).Pascals;
        return Volume.CubicMeters * (1 / Water.BulkModulus.Pascals + Wall.VolumeRatio.DecimalFractions / Wall.At.Pascals)
            + TrappedAir.CubicMeters * Ambient.Pascals / (absolutePa * absolutePa);
    }
}
