using NotebookKit.Aerodynamics.Airflow;
using NotebookKit.Provenance;
using NotebookKit.Quantities;
using UnitsNet;

namespace NotebookKit.Aerodynamics.NormalForces;

/// <summary>
/// Normal force, centre of pressure and margin against angle of attack, with the body's cross-flow lift.
/// Source: H. J. Allen and E. W. Perkins, NACA TR 1048, 1951; L. H. Jorgensen, NASA TR R-474, 1977 (unverified).
/// </summary>
public sealed record AngleOfAttackResult : StatedResult
{
    /// <summary>Angle of attack [°].</summary>
    public required Series Angle { get; init; }

    /// <summary>Normal-force coefficient by the linear parts [-].</summary>
    public required Series Potential { get; init; }

    /// <summary>Normal-force coefficient by the body's cross flow [-].</summary>
    public required Series Viscous { get; init; }

    /// <summary>Centre of pressure aft of the nose tip [mm].</summary>
    public required Series CentreOfPressure { get; init; }

    /// <summary>Static margin [calibres].</summary>
    public required Series Margin { get; init; }

    /// <summary>Angle at which the margin has gone, where it goes within the range computed; 0° where it was never there.</summary>
    public required Angle? MarginGoneAt { get; init; }

    /// <summary>Angle at which one calibre is left, where that is within the range computed; 0° where there never was one.</summary>
    public required Angle? OneCalibreAt { get; init; }

    /// <inheritdoc/>
    public override IReadOnlyList<Caution> Cautions => Provenance.Cautions.ForFlight;

    /// <inheritdoc/>
    public override ModelCard Model { get; } = new(
        "Component method with cross-flow body lift",
        [
            "Linear parts grow with the sine of the angle; the body adds drag across the flow at the centroid of its side view.",
            "Cross flow below Mach 0.4 and below the drag crisis.",
            "Fins don't stall and don't shade each other.",
        ],
        "Angle of attack 0 to 20°, Mach 0 to 0.9. Fins stall near 15°: the margin beyond is an upper bound.",
        [Literature.AllenPerkins, Literature.Jorgensen, Literature.White]);

    /// <inheritdoc/>
    public override IReadOnlyList<ResultLine> Lines =>
    [
        new("Margin at 0°", $"{Digits.Round(Margin[0])} calibres"),
        new($"Margin at {Digits.Round(Angle[^1], 2)}°", $"{Digits.Round(Margin[^1])} calibres"),
        new("One calibre left at", OneCalibreAt is { } one ? one.Show() : "not in this range"),
        new("Margin gone at", MarginGoneAt is { } gone ? gone.Show() : "not in this range"),
    ];
}
