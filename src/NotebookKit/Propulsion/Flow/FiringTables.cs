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
        if (pressure is not (> 0 and < HighestPa) || kelvins is not (>= LowestK and <= HighestK))
            throw new InvalidDesignException("Expansion of the gas", [PropulsionFindings.GasHasNoState(pressure, kelvins)]);
        if (model.WaterPhase.Kind == ExpansionKind.MoistAir) return new() { Closed = MoistExpansion.Table(pressure, kelvins) };
        if (model.AirPhase.Kind != ExpansionKind.RealGas || RealGasOf(charge.Gas) is not { } gas) return None;

        var lowest = 0.5 * ambientPa;
        var closed = RealExpansion.Table(gas, pressure, kelvins, lowest);
        var start = gas.Point(kelvins, 1 / closed.StartVolume);
        var thin = gas.Point(kelvins, 1e-6 / closed.StartVolume);
        var zero = thin.Energy - thin.Cv * kelvins;
        return new()
        {
            Closed = closed,
            Jet = new IsentropeJet(closed, lowest),
            Gas = gas,
            EnergyZero = zero,
            StartEnergy = start.Energy - zero,
        };
    }

    /// <summary>The equation of state for a gas; none where there is none.</summary>
    public static RealGas? RealGasOf(Gas gas) =>
        gas == Materials.Fluids.Gas.Air ? RealGas.Air : gas == Materials.Fluids.Gas.Nitrogen ? RealGas.Nitrogen
            : gas == Materials.Fluids.Gas.Hydrogen ? RealGas.Hydrogen : null;
}
