using NotebookKit.Provenance;
using NotebookKit.Vessels.Bursting;
using NotebookKit.Vessels.Design;

namespace NotebookKit.Vessels.Testing;

/// <summary>What is computed of a tested vessel, where somebody asks.</summary>
/// <param name="vessel">The vessel.</param>
internal sealed class TestedVessel(PressureVessel vessel)
{
    private readonly Lazy<IReadOnlyList<Finding>> _findings = new(vessel.Validate, LazyThreadSafetyMode.PublicationOnly);
    private readonly Lazy<BurstPrediction> _burst = new(() => vessel.Burst(), LazyThreadSafetyMode.PublicationOnly);
    private readonly Lazy<BurstPrediction> _low = At(vessel, f => f with { Efficiency = f.EfficiencyLow });
    private readonly Lazy<BurstPrediction> _high = At(vessel, f => f with { Efficiency = f.EfficiencyHigh });

    /// <summary>All that is wrong with its design, or worth knowing.</summary>
    public IReadOnlyList<Finding> Findings => _findings.Value;

    /// <summary>Its predicted burst.</summary>
    public BurstPrediction Burst => _burst.Value;

    /// <summary>The same at the low end of its making.</summary>
    public BurstPrediction Low => _low.Value;

    /// <summary>The same at the high end of its making.</summary>
    public BurstPrediction High => _high.Value;

    private static Lazy<BurstPrediction> At(PressureVessel vessel, Func<Fabrication, Fabrication> made) =>
        new(() => (vessel with { Fabrication = made(vessel.Fabrication) }).Burst(), LazyThreadSafetyMode.PublicationOnly);
}
