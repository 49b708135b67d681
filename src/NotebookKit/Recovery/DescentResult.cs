using NotebookKit.Provenance;
using NotebookKit.Quantities;
using UnitsNet;
using UnitsNet.Units;

namespace NotebookKit.Recovery;

/// <summary>Steady descent under a canopy. Source: weight equals drag; T. W. Knacke, NWC TP 6575, 1991, table 5-1.</summary>
public sealed record DescentResult : StatedResult
{
    /// <summary>Mass that hangs from the canopy.</summary>
    public required Mass Mass { get; init; }

    /// <summary>Descent speed at the high end of the canopy's drag.</summary>
    public required Speed Slowest { get; init; }

    /// <summary>Descent speed at the low end of the canopy's drag; the one to land by.</summary>
    public required Speed Fastest { get; init; }

    /// <summary>Energy of motion at landing, at the fastest speed.</summary>
    public required Energy LandingEnergy { get; init; }

    /// <inheritdoc/>
    public override IReadOnlyList<Caution> Cautions => Provenance.Cautions.ForFlight;

    /// <inheritdoc/>
    public override ModelCard Model { get; } = new(
        "Steady descent",
        ["Weight equals drag; no gusts, no oscillation, no glide.",
            "The drag coefficient is on the nominal area and spans the handbook's band."],
        "Canopies of 0.1 to 30 m at descent speeds of some metres a second.",
        [RecoveryLiterature.Knacke, RecoveryLiterature.GentleLanding]);

    /// <inheritdoc/>
    public override IReadOnlyList<ResultLine> Lines =>
    [
        new("Descent speed", Slowest.CompareTo(Fastest) == 0 ? Fastest.Show(SpeedUnit.MeterPerSecond)
            : $"{Slowest.Show(SpeedUnit.MeterPerSecond)} to {Fastest.Show(SpeedUnit.MeterPerSecond)}"),
        new("Energy at landing", LandingEnergy.Show(), $"{Mass.Show()} at {Fastest.Show()}"),
    ];
}
