using NotebookKit.Provenance;
using NotebookKit.Quantities;
using UnitsNet;

namespace NotebookKit.Vessels.Uncertainty;

/// <summary>A test that might be made next.</summary>
/// <param name="Name">What it is: "burst of a short twin".</param>
/// <param name="Work">How long it takes, making what is tested included; 10 minutes to 1000 hours.</param>
/// <param name="Parts">Every part that will be under load, as predicted for what is tested.</param>
public sealed record TestOption(string Name, Duration Work, IReadOnlyList<PredictedPart> Parts)
{
    /// <summary>Pressure of a proof, 0.5 to 1000 bar gauge; none where it is taken to its burst.</summary>
    public GaugePressure? Proof { get; init; }

    /// <summary>All that is wrong with it.</summary>
    public IReadOnlyList<Finding> Validate()
    {
        var findings = new List<Finding>();
        if (string.IsNullOrWhiteSpace(Name)) findings.Add(VesselsFindings.TestOptionHasNoName());
        if (new ValidRange<Duration>(Duration.FromMinutes(10), Duration.FromHours(1000)).Find(Work, $"work of \"{Name}\"",
            "Count the making of what is tested.") is { } work) findings.Add(work);
        if (Proof is { } proof && new ValidRange<GaugePressure>(0.5.BarGauge(), 1000.BarGauge()).Find(proof,
            $"proof pressure of \"{Name}\"", "Give the gauge reading with its unit.") is { } pressure) findings.Add(pressure);
        findings.AddRange(PartEvidence.ValidateParts($"test \"{Name}\"", Parts));
        return findings;
    }
}
