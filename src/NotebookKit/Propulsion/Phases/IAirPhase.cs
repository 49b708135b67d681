using NotebookKit.Numerics.Ode;

namespace NotebookKit.Propulsion.Phases;

/// <summary>
/// Gas leaving. Unknowns: height [m], speed [m/s], gas mass [kg], then the phase's own; then, where wanted, the budget: impulse [N s],
/// enthalpy carried out, heat taken in, kinetic energy of the jet at the exit, the same seen from the ground, work against drag [J].
/// </summary>
internal interface IAirPhase<TSelf> : IOdeSystem
    where TSelf : struct
{
    /// <summary>Unknowns ahead of the mass budget.</summary>
    int Core { get; }

    bool IsHeld { get; }

    /// <summary>The same phase with water left aboard [kg], with or without ledger.</summary>
    TSelf Carrying(double waterKg, bool withLedger);

    /// <summary>Fills the phase's own unknowns at the start.</summary>
    void Begin(Span<double> y, double gasKg, double pressurePa, double temperatureK);

    /// <summary>Pressure of the gas [Pa].</summary>
    double Pressure(ReadOnlySpan<double> y);

    /// <summary>Temperature of the gas [K].</summary>
    double Temperature(ReadOnlySpan<double> y);

    /// <summary>Pressure outside [Pa].</summary>
    double Ambient(ReadOnlySpan<double> y);

    /// <summary>Positive while the throat is sonic, negative after [Pa].</summary>
    double ChokedBy(ReadOnlySpan<double> y, double ambientPa);

    /// <summary>Mass flow [kg/s] and thrust [N].</summary>
    double MassFlow(ReadOnlySpan<double> y, out double thrustN);

    /// <summary>Internal energy of the gas in the vessel on the phase's own zero [J].</summary>
    double InternalEnergy(ReadOnlySpan<double> y);
}
