using NotebookKit.Provenance;

namespace NotebookKit.Propulsion.Flow;

/// <summary>Which equations describe water and gas on their way out.</summary>
/// <remarks>Source: each choice names its own.</remarks>
public sealed record FlowModel
{
    /// <summary>
    /// The plainest whole model: ideal gas, adiabatic in both phases, quasi-steady jet without head. Source: Bernoulli; isentropic nozzle
    /// flow.
    /// </summary>
    public static FlowModel Plain { get; } = new();

    /// <summary>
    /// Real gas by its equation of state in both phases, quasi-steady jet: the default, because from 30 to 90 bar the pressure of real air
    /// late in the water phase is 3 % to 5 % below that of an ideal gas, which is more than head, inertia and moisture together change.
    /// Source: as <see cref="Expansion.RealGas"/>.
    /// </summary>
    public static FlowModel Real { get; } = new() { WaterPhase = Expansion.RealGas, AirPhase = Expansion.RealGas };

    /// <summary>
    /// The plainest model with condensing vapour while water leaves: for bottles below 10 bar, where moisture matters and real gas doesn't.
    /// Source: as <see cref="Expansion.MoistAir"/>.
    /// </summary>
    public static FlowModel Moist { get; } = new() { WaterPhase = Expansion.MoistAir };

    /// <summary>Heat that the wall gives to the gas while it leaves; none unless given. Real gas only.</summary>
    public WallWarming? WallWarming { get; init; }

    /// <summary>How the water's motion is treated; quasi-steady unless given.</summary>
    public WaterFlow Water { get; init; } = WaterFlow.QuasiSteady;

    /// <summary>How the gas cools while it drives the water out; adiabatic unless given.</summary>
    public Expansion WaterPhase { get; init; } = Expansion.Adiabatic;

    /// <summary>How the gas left in the vessel cools while it blows down; adiabatic unless given.</summary>
    public Expansion AirPhase { get; init; } = Expansion.Adiabatic;

    /// <summary>
    /// Gas pressure over ambient at which the jet is taken to have ended [-]; 1.0001 to 1.5. 1.001 unless given: the end itself is
    /// approached ever more slowly, so it has to be agreed.
    /// </summary>
    public double EndPressureRatio { get; init; } = 1.001;

    /// <summary>Everything that is wrong with it.</summary>
    public IReadOnlyList<Finding> Validate()
    {
        List<Finding?> all =
        [
            new ValidRange<double>(1.0001, 1.5).Find(EndPressureRatio, "end pressure ratio",
                "Below it the jet would never end, above it thrust would be lost."),
        ];
        if (WallWarming is not null) all.AddRange(WallWarming.Validate());
        if (WaterPhase.Kind == ExpansionKind.RealGas != (AirPhase.Kind == ExpansionKind.RealGas))
        {
            all.Add(PropulsionFindings.PhasesDifferInRealGas(WaterPhase.ToString(), AirPhase.ToString()));
        }

        if (AirPhase.Kind == ExpansionKind.MoistAir)
            all.Add(PropulsionFindings.MoistAirHoldsOverWaterOnly());
        if (WallWarming is not null && AirPhase.Kind != ExpansionKind.RealGas)
            all.Add(PropulsionFindings.WallHeatNeedsRealGas(AirPhase.ToString()));
        if (!Enum.IsDefined(Water)) all.Add(PropulsionFindings.WaterFlowUnknown(Water.ToString(), Enum.GetNames<WaterFlow>()));
        return [.. all.OfType<Finding>()];
    }
}
