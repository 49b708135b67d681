using NotebookKit.Provenance;
using NotebookKit.Quantities;
using NotebookKit.Vessels.Design;
using NotebookKit.Vessels.Laminates;
using NotebookKit.Vessels.Laying;

namespace NotebookKit.Vessels.Bursting;

/// <summary>Breaks a vessel, or only loads it. Source: <see cref="BurstPrediction"/>, <see cref="VesselExpansion"/>.</summary>
public static class BurstVerbs
{
    /// <summary>Where the vessel first fails in a ply and where it bursts, wall and ends. Source: see the result's model card.</summary>
    /// <param name="vessel">The vessel.</param>
    /// <param name="criterion">Failure criterion of the sound plies.</param>
    /// <exception cref="InvalidDesignException">The design isn't valid.</exception>
    public static BurstPrediction Burst(this PressureVessel vessel, FailureCriterion criterion = FailureCriterion.MaximumStress) =>
        BurstModel.Predict(vessel, vessel.Layup(), criterion);

    /// <summary>How the vessel grows under a pressure, and what its plies then carry. Source: see the result's model card.</summary>
    /// <param name="vessel">The vessel.</param>
    /// <param name="pressure">Gauge pressure; 0 to below its burst.</param>
    /// <exception cref="InvalidDesignException">The design isn't valid.</exception>
    /// <exception cref="OutOfRangeException">The wall doesn't reach the pressure.</exception>
    public static VesselExpansion Expansion(this PressureVessel vessel, GaugePressure pressure)
        => ExpansionModel.At(vessel, vessel.Layup(), pressure);
}
