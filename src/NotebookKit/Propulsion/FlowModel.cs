using NotebookKit.Provenance;

namespace NotebookKit.Propulsion;

/// <summary>Which equations describe water and gas on their way out.</summary>
/// <remarks>Source: each choice names its own.</remarks>
public sealed record FlowModel
{
    /// <summary>
    /// The plainest whole model: ideal gas, adiabatic in both phases, quasi-steady jet without head. Source: Bernoulli; isentropic nozzle flow.
    /// </summary>
    public static FlowModel Plain { get; } = new();

    /// <summary>How the water's motion is treated; quasi-steady unless given.</summary>
    public WaterFlow Water { get; init; } = WaterFlow.QuasiSteady;

    /// <summary>How the gas cools while it drives the water out; adiabatic unless given.</summary>
    public Expansion WaterPhase { get; init; } = Expansion.Adiabatic;

    /// <summary>How the gas left in the vessel cools while it blows down; adiabatic unless given.</summary>
    public Expansion AirPhase { get; init; } = Expansion.Adiabatic;

    /// <summary>
    /// Gas pressure over ambient at which the jet is taken to have ended [-]; 1.0001 to 1.5. 1.001 unless given: the end itself is approached
    /// ever more slowly, so it has to be agreed.
    /// </summary>
    public double EndPressureRatio { get; init; } = 1.001;

    /// <summary>Everything that is wrong with it.</summary>
    public IReadOnlyList<Finding> Validate()
    {
        List<Finding?> all =
        [
            new ValidRange<double>(1.0001, 1.5).Find(EndPressureRatio, "end pressure ratio", "Below it the jet would never end, above it thrust would be thrown away."),
        ];
        if (!Enum.IsDefined(Water)) all.Add(Finding.Error($"water flow is {Water}; it must be one of {string.Join(", ", Enum.GetNames<WaterFlow>())}."));
        return [.. all.OfType<Finding>()];
    }
}
