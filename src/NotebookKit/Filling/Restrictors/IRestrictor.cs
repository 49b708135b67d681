using NotebookKit.Materials.Fluids;
using NotebookKit.Provenance;
using NotebookKit.Quantities;
using UnitsNet;

namespace NotebookKit.Filling.Restrictors;

/// <summary>Anything that gas has to squeeze through on its way: a drilled orifice, a needle valve, a fitting.</summary>
/// <remarks>Source: NACA Report 1135, 1953 (orifice); ISO 6358-1, 2013 (restrictor with measured C and b).</remarks>
public interface IRestrictor
{
    /// <summary>Downstream over upstream absolute pressure below which the flow no longer rises [-], for air.</summary>
    double CriticalRatio { get; }

    /// <summary>Throat area times discharge coefficient of the ideal nozzle that passes the same choked flow.</summary>
    Area EffectiveArea { get; }

    /// <summary>Its sonic conductance with air.</summary>
    SonicConductance Conductance { get; }

    /// <summary>Everything wrong with it.</summary>
    IReadOnlyList<Finding> Validate();

    /// <summary>The flow in SI, for the inside of integrations.</summary>
    internal double KilogramsPerSecond(double upstreamPa, double upstreamK, double downstreamPa, Gas gas);

    /// <summary>The critical ratio for a gas [-].</summary>
    internal double CriticalRatioFor(Gas gas);
}
