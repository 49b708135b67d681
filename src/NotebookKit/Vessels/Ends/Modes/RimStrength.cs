using NotebookKit.Provenance;
using NotebookKit.Quantities;
using UnitsNet;

namespace NotebookKit.Vessels.Ends.Modes;

/// <summary>What pressure the rim of a hole in a dome takes.</summary>
/// <param name="Rim">The dome and its hole.</param>
/// <param name="StressFactor">Largest stress at the rim over the dome's membrane stress p·R/(2t) [-]; none where the hole is too
/// wide.</param>
/// <param name="WorstAt">Distance of the largest stress from the hole's edge, along the dome; none where the hole is too wide.</param>
/// <param name="FromStress">Pressure at which that stress comes to the strength; none where the hole is too wide.</param>
/// <param name="FromArea">Pressure at which the area taken out is just replaced; none where the hole is too wide.</param>
/// <remarks>Source: Timoshenko and Woinowsky-Krieger 1959 (unverified); Whitney and Nuismer 1974; ASME Section VIII Division 1, UG-36,
/// UG-37 (unverified).</remarks>
public sealed record RimStrength(RimAtOpening Rim, double? StressFactor, Length? WorstAt, GaugePressure? FromStress,
    GaugePressure? FromArea) : EndModeResult
{
    /// <summary>Pressure that the rim takes, the lower of both; none where the hole is too wide.</summary>
    public GaugePressure? Pressure => FromStress is { } stress && FromArea is { } area ? stress < area ? stress : area : null;

    /// <inheritdoc/>
    public override string Title => "Rim of a hole in a dome";

    /// <inheritdoc/>
    public override ModelCard Model => new(
        "Bending of a thin hemisphere around its hole, beside area replacement",
        [
            "Elastic, thin, of one material alike in every direction; the rim's extra wall lies evenly about the middle of the dome's.",
            "The cover is supported at the hole's edge and holds it neither from widening nor from tilting.",
            "The dome meets its like at the equator; the body's own pull there is left out.",
            "Of a laminate the largest pull is compared, not a push.",
        ],
        "Holes up to half the dome's diameter, away from the equator.",
        Rim.PointDistance is null ? [ModeSources.ShellEdge, ModeSources.Openings]
            : [ModeSources.ShellEdge, ModeSources.WhitneyNuismer, ModeSources.Openings]);

    /// <inheritdoc/>
    public override IReadOnlyList<ResultLine> Lines => StressFactor is { } factor && WorstAt is { } at
        ?
        [
            new("pressure that the rim takes", $"{Pressure}", FromStress < FromArea ? "stress at the rim governs"
                : "the area taken out governs"),
            new("from the stress at the rim", $"{FromStress}",
                $"{Digits.Round(factor)} times the dome's membrane stress, {at.Show()} from the edge"),
            new("from the area taken out", $"{FromArea}"),
            new("hole over √(R·t)", Digits.Round(Rim.HoleParameter)),
        ]
        : [new("verdict", "the hole is too wide", "no pressure is given")];

    /// <inheritdoc/>
    public override Working Working => new(Title, StressFactor is not { } factor ? [] :
    [
        new("Membrane stress of the dome a pressure", @"\frac{S}{p} = \frac{R}{2\,t}",
            $"{Rim.SphereRadius.Show()} / (2 × {Rim.Wall.Show()})", Digits.Round(Rim.SphereRadius / Rim.Wall / 2), ModeSources.Equilibrium),
        new("Pressure from the stress at the rim", @"p = \frac{\sigma}{k\,S/p}",
            $"{Rim.Strength.Show()} / ({Digits.Round(factor)} × {Digits.Round(Rim.SphereRadius / Rim.Wall / 2)})", $"{FromStress}",
            ModeSources.ShellEdge),
        new("Pressure from the area taken out", @"p = \frac{2\,\sigma\,t_r}{R+0.2\,t_r},\ t_r = \frac{t}{2}+\frac{A_{rim}}{2a}",
            $"t {Rim.Wall.Show()}, rim " +
                $"{(Rim.RimWall is { } wall && Rim.RimReach is { } reach ? $"{wall.Show()} over {reach.Show()}" : "not thicker")}",
                $"{FromArea}", ModeSources.Openings),
    ]);
}
