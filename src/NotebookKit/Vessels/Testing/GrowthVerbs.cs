using NotebookKit.Provenance;
using NotebookKit.Vessels.Bursting;
using UnitsNet;

namespace NotebookKit.Vessels.Testing;

/// <summary>What a growth measured in a test says. Source: as <see cref="GrowthComparison"/>.</summary>
public static class GrowthVerbs
{
    /// <summary>The growth measured in a test beside the growth predicted of that very vessel; none where none was measured. Source: see
    /// the result's model card.</summary>
    /// <param name="test">The test.</param>
    /// <exception cref="InvalidDesignException">The test isn't valid.</exception>
    public static GrowthComparison? GrowthBesidePrediction(this VesselTest test)
    {
        ArgumentNullException.ThrowIfNull(test);
        InvalidDesignException.ThrowIfAny($"Test of {test.Id}", VesselEvidence.Of(test).Validate());
        return Compare(test, new());
    }

    /// <summary>The same of a test that is known to be valid.</summary>
    internal static GrowthComparison? Compare(VesselTest test, TestedVessels known)
    {
        if (test.Growth is not { } seen) return null;
        var at = test.GrowthPressure ?? (test is HeldProof ? test.Pressure : null);
        Volume? predicted = null;
        if (at is { } pressure && pressure < known.Of(test.Vessel).Burst.WallBurst)
            predicted = test.Vessel.Expansion(pressure).ElasticExpansion;
        return new GrowthComparison(test, seen, at, predicted is { Milliliters: > 0 } ? predicted : null);
    }
}
