using NotebookKit.Numerics.Ode;
using NotebookKit.Propulsion.Charges;
using NotebookKit.Propulsion.Flow;
using NotebookKit.Propulsion.Phases;
using NotebookKit.Provenance;
using NotebookKit.Quantities;

namespace NotebookKit.Propulsion.Firings;

/// <summary>A vessel fired on a stand that holds it still.</summary>
/// <remarks>
/// The equations are those of a flight with the vehicle held. Source: Bernoulli for the water; isentropic converging nozzle, NACA Report
/// 1135 (1953), for the gas.
/// </remarks>
/// <param name="Charge">What is in the vessel.</param>
/// <param name="Nozzle">What it leaves through.</param>
/// <param name="Ambient">Air pressure around the stand; 0.3 to 1.1 bar absolute.</param>
public sealed record StaticFiring(Charge Charge, Nozzle Nozzle, AbsolutePressure Ambient)
{
    private static readonly OdeSettings Settings = new() { RelativeTolerance = 1e-9 };

    /// <summary>Which equations; <see cref="FlowModel.Real"/> unless given.</summary>
    public FlowModel Flow { get; init; } = FlowModel.Real;

    /// <summary>Everything that is wrong with it.</summary>
    public IReadOnlyList<Finding> Validate() => FiringChecks.All(Charge, Nozzle, Flow, Ambient);

    /// <summary>Fires it. Source: see the result's model.</summary>
    /// <exception cref="InvalidDesignException">Something about it is out of range.</exception>
    public StaticFiringResult Fire()
    {
        InvalidDesignException.ThrowIfAny("static firing", Validate());
        var tables = FiringTables.For(Charge, Flow, Ambient.Pascals);
        var setup = new FiringSetup(Charge, Nozzle, Flow, Ambient.Pascals, tables);
        var record = FiringRecord.Fire(setup, new HeldMount(Ambient.Pascals), Settings);
        return new StaticFiringResult(this, setup, record);
    }
}
