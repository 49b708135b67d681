using NotebookKit.Provenance;
using NotebookKit.Quantities;
using UnitsNet;
using UnitsNet.Units;

namespace NotebookKit.Recovery;

/// <summary>Load while a canopy opens. Source: T. W. Knacke, NWC TP 6575, 1991, table 5-6; E. Pflanz, 1942.</summary>
public sealed record OpeningResult : StatedResult
{
    /// <summary>Speed at which it is fully out of its bag.</summary>
    public required Speed At { get; init; }

    /// <summary>Time to fill.</summary>
    public required Duration FillTime { get; init; }

    /// <summary>A = 2 m / (ρ C_D S v₀ t_f) [-].</summary>
    public required double BallisticParameter { get; init; }

    /// <summary>Force-reduction factor X₁ for finite mass [-].</summary>
    public required double FiniteMassFactor { get; init; }

    /// <summary>Steady drag of the full canopy at the opening speed.</summary>
    public required Force SteadyDrag { get; init; }

    /// <summary>Peak force as if the body didn't slow: the upper bound.</summary>
    public required Force InfiniteMass { get; init; }

    /// <summary>Peak force with the body slowing while it fills.</summary>
    public required Force FiniteMass { get; init; }

    /// <summary>Weight that hangs from the canopy.</summary>
    public required Force Weight { get; init; }

    /// <summary>Load to make cord, pins and bulkheads for, before a factor: never below the steady weight.</summary>
    public Force DesignLoad => FiniteMass > Weight ? FiniteMass : Weight;

    /// <inheritdoc/>
    public override IReadOnlyList<Caution> Cautions => Provenance.Cautions.ForFlight;

    /// <inheritdoc/>
    public override ModelCard Model { get; } = new(
        "Opening load with finite mass",
        ["Horizontal stretch-out, no gravity while it fills.",
            "Drag area grows with a power of time; fill time by a fixed number of diameters travelled.",
            "No snatch of the lines, no slack cord."],
        "The fill constant is published for 46 to 152 m/s; slower openings are an extrapolation. Opening at twice the speed makes four "
            + "times the load.",
        [RecoveryLiterature.Knacke, RecoveryLiterature.Pflanz]);

    /// <inheritdoc/>
    public override IReadOnlyList<ResultLine> Lines =>
    [
        new("Opening load", FiniteMass.Show(), $"{Digits.Round(FiniteMass / Weight)} times the weight"),
        new("Upper bound, infinite mass", InfiniteMass.Show()),
        new("Design load", DesignLoad.Show(), "before a factor; never below the weight"),
        new("Fill time", FillTime.Show(DurationUnit.Second), $"at {At.Show()}"),
        new("Ballistic parameter", Digits.Round(BallisticParameter), $"factor for finite mass {Digits.Round(FiniteMassFactor)}"),
    ];
}
