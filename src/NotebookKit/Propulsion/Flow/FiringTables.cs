using NotebookKit.Materials.Fluids;
using NotebookKit.Propulsion.Charges;
using NotebookKit.Provenance;

namespace NotebookKit.Propulsion.Flow;

/// <summary>What has to be tabulated before a firing: nothing for an ideal gas. Depends on gas, pressure and temperature alone, so that a
/// map shares it.</summary>
internal sealed class FiringTables
{
    // Wider than any charge that is valid: beyond, the tables would never end.
    private const double HighestPa = 1e9, LowestK = 150, HighestK = 1000;

    private FiringTables()
    {
    }

    public static FiringTables None { get; } = new();

    /// <summary>Expansion of the closed gas.</summary>
    public ExpansionTable? Closed { get; private init; }

    /// <summary>Jet of a real gas without heat.</summary>
    public IsentropeJet? Jet { get; private init; }

    /// <summary>The real gas.</summary>
    public RealGas? Gas { get; private init; }

    /// <summary>Internal energy of the real gas that counts as zero [J/kg]: that of 0 K, had it kept the heat capacity it has thin at
    /// release.</summary>
    public double EnergyZero { get; private init; }

    /// <summary>Internal energy at release on that zero [J/kg].</summary>
    public double StartEnergy { get; private init; }

    public static FiringTables For(Charge charge, FlowModel model, double ambientPa)
    {
        var pressure = charge.Pressure.Pascals + ambientPa;
        var kelvins = charge.GasTemperature.Kelvins;
        Check(pressure, kelvins);
        if (model.WaterPhase.Kind == ExpansionKind.MoistAir) return new() { Closed = MoistExpansion.Table(pressure, kelvins) };
        return GasOf(charge, model) is { } gas ? Of(gas, pressure, kelvins, ambientPa) : None;
    }

    /// <summary>Volume of a kilogram of the gas at release [m³/kg] without its tables; none for an ideal gas, which has none.</summary>
    /// <exception cref="InvalidDesignException">The gas has no such state.</exception>
    public static double? StartVolume(Charge charge, FlowModel model, double ambientPa)
    {
        var pressure = charge.Pressure.Pascals + ambientPa;
        var kelvins = charge.GasTemperature.Kelvins;
        Check(pressure, kelvins);
        if (model.WaterPhase.Kind == ExpansionKind.MoistAir) return MoistExpansion.StartVolume(pressure, kelvins);
        return GasOf(charge, model) is { } gas ? RealExpansion.StartVolume(gas, pressure, kelvins) : null;
    }

    /// <summary>Refuses a state that no charge has.</summary>
    /// <exception cref="InvalidDesignException">The gas has no such state.</exception>
    public static void Check(double pressure, double kelvins)
    {
        if (pressure is not (> 0 and < HighestPa) || kelvins is not (>= LowestK and <= HighestK))
            throw new InvalidDesignException("Expansion of the gas", [PropulsionFindings.GasHasNoState(pressure, kelvins)]);
    }

    /// <summary>The real gas whose tables are wanted; none where the flow wants no tables of one.</summary>
    public static RealGas? GasOf(Charge charge, FlowModel model) =>
        model.WaterPhase.Kind != ExpansionKind.MoistAir && model.AirPhase.Kind == ExpansionKind.RealGas ? RealGasOf(charge.Gas) : null;

    /// <summary>Tables of a real gas.</summary>
    /// <param name="gas">The gas.</param>
    /// <param name="pressure">Pressure at the start [Pa].</param>
    /// <param name="kelvins">Temperature at the start [K].</param>
    /// <param name="ambientPa">Pressure outside [Pa].</param>
    /// <param name="like">Tables that these have to be as long as at least, so that they can be blended.</param>
    public static FiringTables Of(RealGas gas, double pressure, double kelvins, double ambientPa, FiringTables? like = null)
    {
        var lowest = 0.5 * ambientPa;
        var closed = RealExpansion.Table(gas, pressure, kelvins, lowest, like?.Closed?.End ?? 0);
        var start = gas.Point(kelvins, 1 / closed.StartVolume);
        var thin = gas.Point(kelvins, 1e-6 / closed.StartVolume);
        var zero = thin.Energy - thin.Cv * kelvins;
        return new()
        {
            Closed = closed,
            Jet = like?.Jet is { } jet ? new(closed, lowest, jet.Entries) : new(closed, lowest),
            Gas = gas,
            EnergyZero = zero,
            StartEnergy = start.Energy - zero,
        };
    }

    /// <summary>The weighted sum of tables of one real gas that are as long as each other.</summary>
    public static FiringTables Blend(ReadOnlySpan<FiringTables> tables, ReadOnlySpan<ExpansionTable> closed,
        ReadOnlySpan<IsentropeJet> jets, ReadOnlySpan<double> weights)
    {
        var table = ExpansionTable.Blend(closed, weights);
        var (zero, start) = (0.0, 0.0);
        for (var k = 0; k < tables.Length; k++)
            (zero, start) = (zero + (weights[k] * tables[k].EnergyZero), start + (weights[k] * tables[k].StartEnergy));
        return new()
        {
            Closed = table,
            Jet = IsentropeJet.Blend(table, jets, weights),
            Gas = tables[0].Gas,
            EnergyZero = zero,
            StartEnergy = start,
        };
    }

    /// <summary>The equation of state for a gas; none where there is none.</summary>
    public static RealGas? RealGasOf(Gas gas) =>
        gas == Materials.Fluids.Gas.Air ? RealGas.Air : gas == Materials.Fluids.Gas.Nitrogen ? RealGas.Nitrogen
            : gas == Materials.Fluids.Gas.Hydrogen ? RealGas.Hydrogen : null;
}
