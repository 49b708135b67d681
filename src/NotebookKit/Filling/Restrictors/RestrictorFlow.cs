using NotebookKit.Materials.Fluids;
using NotebookKit.Provenance;
using NotebookKit.Quantities;
using UnitsNet;

namespace NotebookKit.Filling.Restrictors;

/// <summary>What a restrictor passes.</summary>
/// <remarks>Source: the restrictor's own flow law: NACA Report 1135, 1953 (orifice); ISO 6358-1, 2013 (sheet values); Shapiro 1953
/// (hose).</remarks>
public static class RestrictorFlow
{
    /// <summary>Mass flow from a higher to a lower pressure; zero where the pressures are equal or reversed.</summary>
    /// <param name="restrictor">The restrictor.</param>
    /// <param name="upstream">Pressure ahead of it, at rest; 100 Pa to 2000 bar absolute.</param>
    /// <param name="temperature">Temperature ahead of it, at rest; 50 K to 2000 K.</param>
    /// <param name="downstream">Pressure behind it; 0 or above.</param>
    /// <param name="gas">The gas.</param>
    /// <exception cref="InvalidDesignException">The restrictor itself is refused.</exception>
    /// <exception cref="OutOfRangeException">Pressure, temperature or a constant of the gas is outside.</exception>
    public static MassFlow Flow(this IRestrictor restrictor, AbsolutePressure upstream, Temperature temperature,
        AbsolutePressure downstream, Gas gas)
    {
        ArgumentNullException.ThrowIfNull(restrictor);
        InvalidDesignException.ThrowIfAny("Restrictor", restrictor.Validate());
        GasChecks.AtRest(upstream, temperature, gas);
        return MassFlow.FromKilogramsPerSecond(restrictor.KilogramsPerSecond(upstream.Pascals, temperature.Kelvins, downstream.Pascals,
            gas));
    }
}
