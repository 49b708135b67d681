using NotebookKit.Provenance;
using NotebookKit.Quantities;
using UnitsNet;

namespace NotebookKit.Recovery;

/// <summary>Shear pins against the loads of flight and of separation. Source: direct shear, J. M. Gere, Mechanics of Materials
/// (unverified).</summary>
public sealed record PinResult : StatedResult
{
    /// <summary>Force that shears one pin.</summary>
    public required Force Each { get; init; }

    /// <summary>Force that shears all.</summary>
    public required Force All { get; init; }

    /// <summary>What flight puts on them: drag separation and trapped air.</summary>
    public required Force FlightLoad { get; init; }

    /// <summary>What is there to shear them.</summary>
    public required Force Separating { get; init; }

    /// <summary>Pressure in the compartment that shears them.</summary>
    public required GaugePressure PressureToShear { get; init; }

    /// <inheritdoc/>
    public override IReadOnlyList<Caution> Cautions => Provenance.Cautions.ForFlight;

    /// <inheritdoc/>
    public override ModelCard Model { get; } = new(
        "Shear pins",
        ["All pins share the load evenly and shear at once, across a clean edge.", "No friction in the joint."],
        "Pins of known shear strength; test a sample of each batch, warm and cold.",
        [RecoveryLiterature.Gere]);

    /// <inheritdoc/>
    public override IReadOnlyList<ResultLine> Lines =>
    [
        new("Shear of all pins", All.Show(), $"{Each.Show()} each"),
        new("Load in flight", FlightLoad.Show()),
        new("Separating force", Separating.Show()),
        new("Pressure that shears the pins", PressureToShear.ToString()),
    ];
}
