using NotebookKit.Provenance;
using NotebookKit.Quantities;
using NotebookKit.Vessels.Bursting;
using UnitsNet;

namespace NotebookKit.Vessels.Uncertainty;

/// <summary>One part of a vessel, the pressure it is predicted to give way at, and how much of it is stressed.</summary>
/// <param name="Name">The part: "wall", "nozzle end, bonded plug". The same part of another vessel bears the same name.</param>
/// <param name="Burst">Predicted pressure at which it gives way; 0.5 to 5000 bar gauge.</param>
/// <remarks>Source: as <see cref="BurstPrediction"/>.</remarks>
public sealed record PredictedPart(string Name, GaugePressure Burst)
{
    /// <summary>Stressed volume, of a wall that of its plies, 1 mm³ to 1 m³; none where the part doesn't grow with the vessel, as an
    /// end.</summary>
    public Volume? Stressed { get; init; }

    /// <summary>What is believed of it before any test; the default prior where none is given.</summary>
    public PartPrior? Prior { get; init; }

    /// <summary>All that is wrong with it.</summary>
    public IReadOnlyList<Finding> Validate()
    {
        var findings = new List<Finding>();
        if (string.IsNullOrWhiteSpace(Name)) findings.Add(VesselsFindings.PartHasNoName());
        if (new ValidRange<GaugePressure>(0.5.BarGauge(), 5000.BarGauge()).Find(Burst, $"predicted burst of the {Name}",
            "Take it from the burst prediction of the very vessel.") is { } burst) findings.Add(burst);
        if (Stressed is { } stressed && new ValidRange<Volume>(Volume.FromCubicMillimeters(1), Volume.FromCubicMeters(1)).Find(stressed,
            $"stressed volume of the {Name}", "It is area times thickness of what bears the load.") is { } size) findings.Add(size);
        if (Prior is { } prior) findings.AddRange(prior.Validate());
        return findings;
    }

    internal PartPrior Before => Prior ?? PartPrior.Default;

    internal double LogBurst => Math.Log(Burst.Pascals);

    internal bool Is(string name) => string.Equals(Name.Trim(), name.Trim(), StringComparison.OrdinalIgnoreCase);
}
