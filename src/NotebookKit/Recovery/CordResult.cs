using NotebookKit.Provenance;
using NotebookKit.Quantities;
using UnitsNet;
using UnitsNet.Units;

namespace NotebookKit.Recovery;

/// <summary>Pull of a cord that stops two parting masses. Source: two free masses on a linear spring, H. Goldstein, Classical Mechanics
/// (unverified).</summary>
public sealed record CordResult : StatedResult
{
    /// <summary>Reduced mass of the two.</summary>
    public required Mass ReducedMass { get; init; }

    /// <summary>Energy the cord takes up.</summary>
    public required Energy Energy { get; init; }

    /// <summary>Highest pull.</summary>
    public required Force Peak { get; init; }

    /// <summary>Stretch at the highest pull.</summary>
    public required Length Stretch { get; init; }

    /// <summary>Time from taut to the highest pull.</summary>
    public required Duration TimeToPeak { get; init; }

    /// <summary>Breaking load over highest pull [-].</summary>
    public required double Factor { get; init; }

    /// <inheritdoc/>
    public override IReadOnlyList<Caution> Cautions => Provenance.Cautions.ForFlight;

    /// <inheritdoc/>
    public override ModelCard Model { get; } = new(
        "Cord between two free masses",
        ["The cord is a linear spring without mass or damping; both ends are free.",
            "The pull is along the line of flight of the two halves."],
        "Stretch within what the cord takes elastically.",
        [RecoveryLiterature.Goldstein]);

    /// <inheritdoc/>
    public override IReadOnlyList<ResultLine> Lines =>
    [
        new("Peak pull", Peak.Show(), $"{Digits.Round(Factor)} times below the breaking load"),
        new("Stretch", Stretch.Show(LengthUnit.Millimeter)),
        new("Energy", Energy.Show()),
        new("Time to peak", TimeToPeak.Show(DurationUnit.Millisecond)),
    ];
}
