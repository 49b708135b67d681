using NotebookKit.Provenance;
using NotebookKit.Vessels.Design;
using NotebookKit.Vessels.Testing;

namespace NotebookKit.Vessels.Uncertainty;

/// <summary>Samples the bursts of a design, and learns from tests. Source: <see cref="BurstDistribution"/>,
/// <see cref="EfficiencyUpdate"/>.</summary>
public static class UncertaintyVerbs
{
    /// <summary>Bursts of many vessels made to this design. Source: see the result's model card.</summary>
    /// <param name="vessel">The design.</param>
    /// <param name="samples">How many; 100 to 2 000 000.</param>
    /// <param name="seed">Seed of the random numbers; any.</param>
    /// <param name="belief">What is believed of the fabrication efficiency; that of <see cref="PressureVessel.Fabrication"/> where none is
    /// given.</param>
    /// <param name="threads">Most threads to use; −1 for as many as there are. The answer doesn't depend on it.</param>
    /// <exception cref="InvalidDesignException">The design isn't valid.</exception>
    /// <exception cref="OutOfRangeException">The number of samples is out of range.</exception>
    public static BurstDistribution SampleBursts(this PressureVessel vessel, int samples = 20_000, ulong seed = 1,
        EfficiencyBelief? belief = null, int threads = -1) =>
        BurstDistribution.Sample(vessel, samples, seed, belief, threads);

    /// <summary>What tests teach of the efficiency. Source: see the result's model card.</summary>
    /// <param name="evidence">The tests.</param>
    /// <param name="vessel">The design in hand, for what the answer means to it.</param>
    /// <param name="prior">What was believed before; that of the design's fabrication where none is given.</param>
    /// <exception cref="InvalidDesignException">A test isn't valid.</exception>
    public static EfficiencyUpdate Learn(this VesselEvidence evidence, PressureVessel vessel, EfficiencyBelief? prior = null)
    {
        ArgumentNullException.ThrowIfNull(evidence);
        ArgumentNullException.ThrowIfNull(vessel);
        InvalidDesignException.ThrowIfAny("Vessel tests", evidence.Validate());
        return EfficiencyLearning.Learn(vessel, evidence, prior ?? EfficiencyBelief.Of(vessel.Fabrication));
    }
}
