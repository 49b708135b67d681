using NotebookKit.Provenance;
using NotebookKit.Quantities;
using UnitsNet;
using UnitsNet.Units;

namespace NotebookKit.Flight.Design;

/// <summary>
/// Mass, centre of gravity and inertias of a mass budget of parts.
/// Source: parallel-axis theorem, H. Goldstein, Classical Mechanics (unverified).
/// </summary>
public sealed record MassProperties : StatedResult
{
    /// <summary>Whole mass.</summary>
    public required Mass Mass { get; init; }

    /// <summary>Standard deviation of the whole mass by the parts' own, taken as independent.</summary>
    public required Mass MassSpread { get; init; }

    /// <summary>Centre of gravity, aft of the nose tip.</summary>
    public required Length CentreOfGravity { get; init; }

    /// <summary>Standard deviation of the centre of gravity by the parts' masses, taken as independent.</summary>
    public required Length CentreSpread { get; init; }

    /// <summary>Inertia about the axis.</summary>
    public required MassMomentOfInertia RollInertia { get; init; }

    /// <summary>Inertia across the axis, about the centre of gravity.</summary>
    public required MassMomentOfInertia PitchInertia { get; init; }

    /// <summary>Share of the mass that was weighed.</summary>
    public required Ratio WeighedShare { get; init; }

    /// <summary>The parts behind it.</summary>
    public required IReadOnlyList<MassPart> Parts { get; init; }

    /// <inheritdoc/>
    public override IReadOnlyList<Caution> Cautions => [Provenance.Cautions.Prediction];

    /// <inheritdoc/>
    public override ModelCard Model { get; } = new(
        "Mass budget",
        ["Parts are points, thin tubes or solid cylinders on the axis.", "Spreads of the parts' masses are independent."],
        "Any body of revolution; positions are taken as exact.",
        [MassLiterature.Goldstein]);

    /// <inheritdoc/>
    public override IReadOnlyList<ResultLine> Lines =>
    [
        new("Mass", Mass.Show(MassUnit.Gram, 4), $"± {MassSpread.Show(MassUnit.Gram, 2)}, {WeighedShare.Show(2)} of it weighed"),
        new("Centre of gravity", CentreOfGravity.Show(LengthUnit.Millimeter, 4),
            $"aft of the nose tip, ± {CentreSpread.Show(LengthUnit.Millimeter, 2)}"),
        new("Roll inertia", RollInertia.Show(MassMomentOfInertiaUnit.KilogramSquareMeter)),
        new("Pitch inertia", PitchInertia.Show(MassMomentOfInertiaUnit.KilogramSquareMeter)),
        .. Parts.Select(p => new ResultLine(p.Name, p.Mass.Show(MassUnit.Gram, 4),
            $"at {p.At.Show(LengthUnit.Millimeter, 4)}, {(p.Basis == MassBasis.Weighed ? "weighed" : "estimated")}")),
    ];

    internal MassState State => new(Mass.Kilograms, CentreOfGravity.Meters, RollInertia.KilogramSquareMeters,
        PitchInertia.KilogramSquareMeters);
}
