using NotebookKit.Provenance;
using NotebookKit.Quantities;
using UnitsNet;
using UnitsNet.Units;

namespace NotebookKit.Aerodynamics.FinStructures;

/// <summary>Distribution of the mean cant that a jig leaves. Source: mean of independent fins, sampled; see <see cref="FinJig"/>.</summary>
public sealed record CantResult : StatedResult
{
    /// <summary>Number of fins.</summary>
    public required int Fins { get; init; }

    /// <summary>Seed of the samples.</summary>
    public required ulong Seed { get; init; }

    /// <summary>Mean over all jigs-full: the jig's twist.</summary>
    public required Angle Mean { get; init; }

    /// <summary>Standard deviation of the mean cant.</summary>
    public required Angle Deviation { get; init; }

    /// <summary>Bound that holds with every fin at its worst.</summary>
    public required Angle Worst { get; init; }

    /// <summary>Sampled mean cants in rising order [°].</summary>
    public required Series Samples { get; init; }

    /// <inheritdoc/>
    public override IReadOnlyList<Caution> Cautions => [Provenance.Cautions.Bench, Provenance.Cautions.Prediction];

    /// <inheritdoc/>
    public override ModelCard Model { get; } = new(
        "Cant left by a jig",
        ["Each fin lies anywhere in its slot, evenly spread, independent of the others.",
            "Slots are skewed independently; a twist is shared by all.", "Fins are flat and don't spring back."],
        "Small angles.",
        [Source.CommonPractice("a plate in a slot, evenly spread")]);

    /// <inheritdoc/>
    public override IReadOnlyList<ResultLine> Lines =>
    [
        new("Mean cant", $"{Digits.Round(Mean.Degrees)}° ± {Digits.Round(Deviation.Degrees)}°", "standard deviation over fin sets"),
        new("90 % below", Within(90.Percent()).Show(AngleUnit.Degree), "in size"),
        new("Worst", Worst.Show(AngleUnit.Degree), "every fin at its limit"),
    ];

    /// <summary>Size of mean cant that a share of the jigs-full stays within. Source: the sorted samples.</summary>
    /// <param name="share">Share of the jigs-full; 1 to 99.9 %.</param>
    /// <exception cref="OutOfRangeException">The share is outside.</exception>
    public Angle Within(Ratio share)
    {
        new ValidRange<Ratio>(1.Percent(), 99.9.Percent()).Check(share, "share of fin sets", "The samples carry no more.");
        var sizes = Samples.Values.Select(Math.Abs).Order().ToArray();
        return sizes[(int)Math.Min(sizes.Length - 1, Math.Ceiling(share.DecimalFractions * sizes.Length) - 1)].Degrees();
    }

    /// <summary>Share of the jigs-full whose mean cant lies between two sizes. Source: the sorted samples.</summary>
    /// <param name="from">Smaller size; 0° or above.</param>
    /// <param name="to">Larger size; above the smaller.</param>
    public Ratio Between(Angle from, Angle to) => Ratio.FromPercent(
        100.0 * Samples.Values.Count(c => Math.Abs(c) > from.Degrees && Math.Abs(c) < to.Degrees) / Samples.Count);
}
