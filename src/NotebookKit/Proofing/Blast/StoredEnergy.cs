using NotebookKit.Materials.Fluids;
using NotebookKit.Provenance;
using NotebookKit.Quantities;
using UnitsNet;

namespace NotebookKit.Proofing.Blast;

/// <summary>Energy that a pressurised vessel gives back when it lets go: in the gas, in the water, in the stretched wall.</summary>
/// <remarks>
/// Source: ASME PCC-2-2008, Appendix 501-II (isentropic); D. A. Crowl, Understanding Explosions, 2003, Appendix B (Brode, isothermal,
/// availability); elastic energy of water and wall from the work of a linear spring. Ideal gas throughout: at 300 bar a vessel holds 9 %
/// less real air than the ideal-gas law says, so the energy errs high.
/// </remarks>
public static class StoredEnergy
{
    /// <summary>Pressures the ideal-gas forms are allowed for.</summary>
    public static ValidRange<GaugePressure> PressureRange => new(GaugePressure.Zero, 1000.BarGauge());

    /// <summary>Energy of compressed gas. Source: as the model says.</summary>
    /// <param name="pressure">Gauge pressure of the gas; 0 to 1000 bar gauge.</param>
    /// <param name="gas">Volume that the gas fills; above 0 to 1000 m³.</param>
    /// <param name="ambient">Surrounding air pressure; above 0.</param>
    /// <param name="model">How the energy is counted.</param>
    /// <param name="heatCapacityRatio">Ratio of heat capacities [-]; 1.05 to 1.7, 1.4 for air. The as-printed form is for 1.4 only.</param>
    /// <exception cref="OutOfRangeException">An input is outside its range.</exception>
    public static Energy OfGas(
        GaugePressure pressure, Volume gas, AbsolutePressure ambient, GasEnergyModel model = GasEnergyModel.Isentropic,
            double heatCapacityRatio = 1.4)
    {
        PressureRange.Check(pressure, "pressure of the gas", "Beyond it an ideal gas is no longer a fair model.");
        CheckVolume(gas, "gas volume");
        CheckAmbient(ambient);
        new ValidRange<double>(1.05, 1.7).Check(heatCapacityRatio, "ratio of heat capacities",
            "Air and nitrogen have 1.40, hydrogen 1.41.");
        if (model == GasEnergyModel.IsentropicAsPrinted && Math.Abs(heatCapacityRatio - 1.4) > 1e-12)
            throw new OutOfRangeException("ratio of heat capacities", Digits.Round(heatCapacityRatio, 4), "1.4", "1.4",
                "The printed constants 2.5 and 0.286 are those of air; use the isentropic form for another gas.");

        double pa = ambient.Pascals, pt = pressure.ToAbsolute(ambient).Pascals, v = gas.CubicMeters, g = heatCapacityRatio;
        var log = Math.Log(pt / pa);
        return Energy.FromJoules(model switch
        {
            GasEnergyModel.Isentropic => pt * v / (g - 1) * (1 - Math.Pow(pa / pt, (g - 1) / g)),
            GasEnergyModel.IsentropicAsPrinted => 2.5 * pt * v * (1 - Math.Pow(pa / pt, 0.286)),
            GasEnergyModel.Brode => (pt - pa) * v / (g - 1),
            GasEnergyModel.Isothermal => pt * v * log,
            GasEnergyModel.Availability => pt * v * (log - (1 - pa / pt)),
            _ => throw new ArgumentOutOfRangeException(nameof(model), model, "unknown energy model; use one of the named ones."),
        });
    }

    /// <summary>Elastic energy of squeezed water, half of pressure times the volume squeezed in. Source: work of a linear spring, E =
    /// p²V/(2K).</summary>
    /// <param name="pressure">Gauge pressure of the water; 0 to 1000 bar gauge.</param>
    /// <param name="water">Volume of water; above 0 to 1000 m³.</param>
    /// <param name="properties">The water.</param>
    /// <exception cref="OutOfRangeException">An input is outside its range.</exception>
    public static Energy OfWater(GaugePressure pressure, Volume water, Water properties)
    {
        ArgumentNullException.ThrowIfNull(properties);
        return OfWater(pressure, water, properties.BulkModulus);
    }

    /// <summary>Elastic energy of squeezed water for a bulk modulus of one's own. Source: work of a linear spring, E = p²V/(2K).</summary>
    /// <param name="pressure">Gauge pressure of the water; 0 to 1000 bar gauge.</param>
    /// <param name="water">Volume of water; above 0 to 1000 m³.</param>
    /// <param name="bulkModulus">Bulk modulus; 1 GPa to 5 GPa, about 2.18 GPa at 20 °C.</param>
    /// <exception cref="OutOfRangeException">An input is outside its range.</exception>
    public static Energy OfWater(GaugePressure pressure, Volume water, Pressure bulkModulus)
    {
        PressureRange.Check(pressure, "pressure of the water", "Beyond it water no longer yields in proportion.");
        CheckVolume(water, "water volume");
        new ValidRange<Pressure>(1.Gigapascals(), 5.Gigapascals()).Check(bulkModulus.ToUnit(UnitsNet.Units.PressureUnit.Gigapascal),
            "bulk modulus of water", "Plain water has about 2.2 GPa.");
        return Energy.FromJoules(pressure.Pascals * pressure.Pascals * water.CubicMeters / (2 * bulkModulus.Pascals));
    }

    /// <summary>Elastic energy of the stretched wall, half of pressure times the growth of the bore. Source: work of a linear spring, E = ½
    /// p ΔV.</summary>
    /// <param name="pressure">Gauge pressure; 0 to 1000 bar gauge.</param>
    /// <param name="growth">Growth of the internal volume at that pressure; 0 to 1000 m³.</param>
    /// <exception cref="OutOfRangeException">An input is outside its range.</exception>
    public static Energy OfWall(GaugePressure pressure, Volume growth)
    {
        PressureRange.Check(pressure, "pressure", "Beyond it the wall is no linear spring.");
        new ValidRange<Volume>(Volume.Zero, 1000.CubicMetres()).Check(growth, "total expansion of the vessel",
            "A vessel doesn't shrink under pressure.");
        return Energy.FromJoules(0.5 * pressure.Pascals * growth.CubicMeters);
    }

    internal static void CheckVolume(Volume volume, string name) =>
        new ValidRange<Volume>(Volume.FromMicroliters(1), 1000.CubicMetres()).Check(volume, name,
            "It must be above zero; check the unit it was given in.");

    internal static void CheckAmbient(AbsolutePressure ambient) =>
        new ValidRange<AbsolutePressure>(0.3.BarAbsolute(), 1.2.BarAbsolute())
            .Check(ambient, "ambient pressure", "Air at the ground is 0.6 to 1.06 bar absolute; was a gauge pressure meant?");
}
