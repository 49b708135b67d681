using NotebookKit.Flight.Design;
using NotebookKit.Provenance;
using NotebookKit.Quantities;
using UnitsNet;
using UnitsNet.Units;

namespace NotebookKit.Flight.Stability;

/// <summary>
/// Static margin through the flight as the water leaves. Source: J. S. Barrowman, M.S. thesis, 1967 (unverified), for the centre of
/// pressure; parallel-axis theorem for the masses.
/// </summary>
public sealed record StabilityResult : StatedResult
{
    /// <summary>What the rows run along: water left [% of the start] or time [s].</summary>
    public required Series Abscissa { get; init; }

    /// <summary>Mass of the vehicle [kg].</summary>
    public required Series Mass { get; init; }

    /// <summary>Centre of gravity aft of the nose tip [mm].</summary>
    public required Series CentreOfGravity { get; init; }

    /// <summary>Centre of pressure aft of the nose tip [mm].</summary>
    public required Series CentreOfPressure { get; init; }

    /// <summary>Static margin [calibres].</summary>
    public required Series Margin { get; init; }

    /// <summary>Pitch inertia [kg m²].</summary>
    public required Series PitchInertia { get; init; }

    /// <summary>Row of the minimum margin.</summary>
    public required int MinimumRow { get; init; }

    /// <summary>The margin it is held to.</summary>
    public required StabilityLimits Limits { get; init; }

    /// <summary>What would mend a margin below the limit; none where it holds.</summary>
    public required StabilityRemedy? Remedy { get; init; }

    /// <summary>Minimum margin [calibres].</summary>
    public double MinimumMargin => Margin[MinimumRow];

    /// <summary>Whether the margin stays at or above the limit throughout.</summary>
    public bool Holds => MinimumMargin >= Limits.Minimum;

    /// <inheritdoc/>
    public override IReadOnlyList<Caution> Cautions => Provenance.Cautions.ForFlight;

    /// <inheritdoc/>
    public override ModelCard Model { get; } = new(
        "Static margin with water leaving",
        [
            "Water stands flat at the nozzle end of a cylindrical vessel; gas fills the rest evenly.",
            "Centre of pressure at a small angle of attack; at 10° a long body has lost calibres of it.",
            "Static: no damping, no jet deflection.",
        ],
        "While the vehicle accelerates forward; Mach 0 to 0.9.",
        [MassLiterature.Barrowman, MassLiterature.Goldstein, MassLiterature.OneCalibre]);

    /// <inheritdoc/>
    public override IReadOnlyList<ResultLine> Lines =>
    [
        new("Minimum margin", $"{Digits.Round(MinimumMargin)} calibres",
            $"at {Abscissa.Name.ToLowerInvariant()} {Digits.Round(Abscissa[MinimumRow])} {Abscissa.Unit}; required "
            + $"{Digits.Round(Limits.Minimum)} calibres"),
        new("Margin at the start", $"{Digits.Round(Margin[0])} calibres", $"centre of gravity {Digits.Round(CentreOfGravity[0], 4)} mm"),
        new("Margin at the end", $"{Digits.Round(Margin[^1])} calibres", $"centre of gravity {Digits.Round(CentreOfGravity[^1], 4)} mm"),
        .. Remedy is { } remedy
            ? new ResultLine[]
            {
                new("Remedy: ballast", remedy.NoseBallast is { } ballast ? ballast.Show(MassUnit.Gram) : "not by ballast",
                    $"at {remedy.BallastAt.Show(LengthUnit.Millimeter)}"),
                new("Remedy: fin span", remedy.FinSpan is { } span ? span.Show(LengthUnit.Millimeter) : "not by span alone",
                    "instead of ballast"),
            }
            : [],
    ];
}

/// <summary>What brings the minimum margin up to the limit; either is enough. Source: moments about the wanted centre of gravity; component
/// method.</summary>
/// <param name="NoseBallast">Mass to add; none where no mass there is enough.</param>
/// <param name="BallastAt">Where, aft of the nose tip.</param>
/// <param name="FinSpan">Span of the aft-most fins that does it without ballast, their chords and sweep distance kept; none where four
/// times the span isn't enough.</param>
public sealed record StabilityRemedy(Mass? NoseBallast, Length BallastAt, Length? FinSpan);
