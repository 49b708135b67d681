using NotebookKit.Aerodynamics.Airflow;
using NotebookKit.Provenance;
using NotebookKit.Quantities;
using UnitsNet;
using UnitsNet.Units;

namespace NotebookKit.Aerodynamics.Drag;

/// <summary>
/// Drag at zero angle of attack, part by part, as a band. Source: H. Schlichting, Boundary-Layer Theory; S. F. Hoerner, Fluid-Dynamic Drag,
/// 1965; E. Fleeman, Tactical Missile Design, 2001; J. S. Barrowman, M.S. thesis, 1967 (all unverified).
/// </summary>
public sealed record DragResult : StatedResult
{
    /// <summary>Speed through the air.</summary>
    public required Speed Speed { get; init; }

    /// <summary>Mach number [-]; 0 to 0.9.</summary>
    public required double Mach { get; init; }

    /// <summary>Reynolds number on the body's length [-].</summary>
    public required double Reynolds { get; init; }

    /// <summary>Area the coefficients refer to.</summary>
    public required Area ReferenceArea { get; init; }

    /// <summary>Dynamic pressure of the stream.</summary>
    public required Pressure DynamicPressure { get; init; }

    /// <summary>Every part.</summary>
    public required IReadOnlyList<DragComponent> Components { get; init; }

    /// <summary>Low end of the drag coefficient: late transition and the lower base form [-].</summary>
    public double Low => Components.Sum(c => c.Low);

    /// <summary>High end of the drag coefficient: early transition and the higher base form [-].</summary>
    public double High => Components.Sum(c => c.High);

    /// <summary>Middle of the band [-].</summary>
    public double Middle => (Low + High) / 2;

    /// <summary>Drag force at the middle of the band.</summary>
    public Force Drag => Force.FromNewtons(DynamicPressure.Pascals * ReferenceArea.SquareMeters * Middle);

    /// <inheritdoc/>
    public override IReadOnlyList<Caution> Cautions => [Provenance.Cautions.Prediction];

    /// <inheritdoc/>
    public override ModelCard Model { get; } = new(
        "Drag build-up by parts",
        [
            "Zero angle of attack; parts add up, with a factor for form and a term for fin junctions.",
            "Friction of a flat plate of the part's length; laminar up to a stated transition, both ends of the band carried.",
            "Base drag by two published forms that differ by up to a factor of 2.6; both are carried as a band.",
            "Sharp leading edges are counted from nothing to the rounded value.",
            "A jet leaves the base area outside it open.",
        ],
        "Mach 0 to 0.9, slender bodies, thin plate fins. No measured drag of a finned slender body stands behind it: expect 20 to 30 %, "
            + "and fit it to your own flights.",
        [Literature.Schlichting, Literature.Hoerner, Literature.Fleeman, Literature.BarrowmanDrag]);

    /// <inheritdoc/>
    public override IReadOnlyList<ResultLine> Lines =>
    [
        new("Drag coefficient", Digits.Round(Middle), $"{Digits.Round(Low)} to {Digits.Round(High)} on "
            + $"{ReferenceArea.Show(AreaUnit.SquareCentimeter)}"),
        new("Drag", Drag.Show(), $"at {Speed.Show()}, Mach {Digits.Round(Mach, 2)}"),
        new("Reynolds number", Digits.Round(Reynolds), "on the body's length"),
        .. Components.Select(c => new ResultLine(c.Name, Digits.Round(c.Middle), c.High > c.Low
            ? $"{c.Share.Show(2)}, {Digits.Round(c.Low)} to {Digits.Round(c.High)}"
            : c.Share.Show(2))),
    ];
}

/// <summary>What one part adds to the drag, as a band. Source: see <see cref="DragResult"/>.</summary>
/// <param name="Name">Part and kind.</param>
/// <param name="Low">Low end, on the reference area [-].</param>
/// <param name="High">High end, on the reference area [-].</param>
/// <param name="Share">Its part of the middle of the band; the shares add up to 100 %.</param>
public sealed record DragComponent(string Name, double Low, double High, Ratio Share)
{
    /// <summary>Middle of the band, on the reference area [-].</summary>
    public double Middle => (Low + High) / 2;
}
