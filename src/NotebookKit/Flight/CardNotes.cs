using NotebookKit.Aerodynamics;
using NotebookKit.Flight.Dispersion;
using NotebookKit.Provenance;
using NotebookKit.Quantities;
using UnitsNet;

namespace NotebookKit.Flight;

/// <summary>What a flight card needs to know beyond vehicle and site.</summary>
/// <param name="ProofReference">Where the vessel's proof is written down: its number and date.</param>
/// <param name="ProofPressure">Pressure it was proved to; at least the charge pressure.</param>
/// <param name="StandOff">Distance that everybody keeps from the charged vehicle; 5 to 500 m.</param>
public sealed record CardNotes(string ProofReference, GaugePressure ProofPressure, Length StandOff)
{
    /// <summary>Day and flight, as the club counts them; may be empty.</summary>
    public string Flight { get; init; } = "";

    /// <summary>The scatter of this vehicle on this site; none where it wasn't computed.</summary>
    public DispersionResult? Scatter { get; init; }

    /// <summary>The fins' check as structure at this flight's greatest speed; none where it wasn't computed.</summary>
    public FinStructureResult? Fins { get; init; }

    /// <summary>Load that the weakest of cord, pins and bulkhead takes; 1 N to 100 kN; none where not known.</summary>
    public Force? RecoveryStrength { get; init; }

    /// <summary>Everything that is wrong with the notes.</summary>
    public IReadOnlyList<Finding> Validate()
    {
        var findings = new List<Finding>();
        if (string.IsNullOrWhiteSpace(ProofReference))
            findings.Add(Finding.Error("the card names no proof; a vessel without one doesn't fly. Write the number and date of its record."));
        if (new ValidRange<Length>(5.Metres(), 500.Metres()).Find(StandOff, "stand-off", "Take it from the proof plan's stand-off for air at this pressure.") is { } wrong)
            findings.Add(wrong);
        if (RecoveryStrength is { } strength && new ValidRange<Force>(1.Newtons(), 100_000.Newtons()).Find(strength, "load the recovery gear takes", "The weakest of cord, pins and bulkhead.") is { } load)
            findings.Add(load);
        return findings;
    }
}
