using NotebookKit.Vessels.Bursting;
using NotebookKit.Vessels.Design;
using UnitsNet;

namespace NotebookKit.Vessels.Testing;

/// <summary>Burst predictions of tested vessels, each design once: twins differ in nothing but their names.</summary>
internal sealed class TwinBursts
{
    private readonly Dictionary<PressureVessel, BurstPrediction> _known = [];

    /// <summary>The prediction of a vessel, or of its twin.</summary>
    public BurstPrediction Of(PressureVessel vessel)
    {
        var nameless = vessel with { Name = "" };
        if (!_known.TryGetValue(nameless, out var burst)) _known[nameless] = burst = vessel.Burst();
        return burst;
    }

    /// <summary>The same at another efficiency of the making.</summary>
    public BurstPrediction Of(PressureVessel vessel, Func<Fabrication, Ratio> efficiency) =>
        Of(vessel with { Fabrication = vessel.Fabrication with { Efficiency = efficiency(vessel.Fabrication) } });
}
