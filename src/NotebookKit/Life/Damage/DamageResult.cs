using System.Globalization;
using NotebookKit.Provenance;
using NotebookKit.Quantities;

namespace NotebookKit.Life.Damage;

/// <summary>Life used up by cycles of several kinds. Source: see <see cref="Model"/>.</summary>
/// <param name="Input">The cycles.</param>
/// <param name="Damage">Sum of the shares of life [-].</param>
public sealed record DamageResult(CumulativeDamage Input, double Damage) : Result
{
    private static readonly ModelCard Card = new(
        "Miner's sum",
        ["Each kind of cycle uses up one part in its number to failure; the order does not matter.",
            "Only whole blocks and whole cycles count."],
        "An estimate: sums at failure scatter from a tenth to ten.",
        [LifeSources.Miner]);

    // A hair more, so that an exact whole number isn't rounded down by the last bit.
    private const double Hair = 1e-9;

    /// <summary>Whether the life is over.</summary>
    public bool IsOver => Damage >= Input.Limit * (1 - 1e-12);

    /// <summary>How often the whole list can be run through, from new, whole times only; none where it holds no cycles.</summary>
    public long? WholeBlocks => Damage > 0 ? (long)Math.Floor(Input.Limit / Damage * (1 + 1e-12) + Hair) : null;

    /// <summary>Cycles of one more kind that are left [-]: (limit − sum) N. Source: Miner 1945.</summary>
    /// <param name="toFailure">How many of them alone would break it [-]; 1 to 10¹².</param>
    /// <exception cref="OutOfRangeException">The number is out of range.</exception>
    public double CyclesLeft(double toFailure) =>
        Math.Max(0, Input.Limit - Damage) * new ValidRange<double>(1, 1e12).Check(toFailure, "cycles to failure",
            "Take it from a test or a printed line of stress against cycles.");

    /// <summary>Whole cycles of one more kind that are left. Source: Miner 1945.</summary>
    /// <param name="toFailure">How many of them alone would break it [-]; 1 to 10¹².</param>
    /// <exception cref="OutOfRangeException">The number is out of range.</exception>
    public long WholeCyclesLeft(double toFailure) => (long)Math.Floor(CyclesLeft(toFailure) + Hair);

    /// <inheritdoc/>
    public override string Title => "Life used up by cycles";

    /// <inheritdoc/>
    public override ModelCard Model => Card;

    /// <inheritdoc/>
    public override IReadOnlyList<Caution> Cautions => Provenance.Cautions.ForPressure;

    /// <inheritdoc/>
    public override IReadOnlyList<Finding> Findings =>
    [
        .. IsOver ? [LifeFindings.DamageEndsLife(Damage, Input.Limit)] : Array.Empty<Finding>(),
        .. Input.Limit > 0.3 ? [LifeFindings.LimitOfDamageIsHigh()] : Array.Empty<Finding>(),
    ];

    /// <inheritdoc/>
    public override IReadOnlyList<ResultLine> Lines =>
    [
        .. Input.Blocks.Select(b => new ResultLine(b.Name, Digits.Round(b.Damage),
            $"{Digits.Round(b.Cycles)} of {Digits.Round(b.ToFailure)}")),
        new("Sum", Digits.Round(Damage), $"over at {Digits.Round(Input.Limit)}"),
        .. WholeBlocks is { } whole ? [new ResultLine("Whole times from new", whole.ToString(CultureInfo.InvariantCulture))]
            : Array.Empty<ResultLine>(),
    ];

    /// <inheritdoc/>
    public override Working Working => new(Title,
    [
        new("Sum", @"\sum \frac{n_i}{N_i}", string.Join(" + ",
            Input.Blocks.Select(b => $"{Digits.Round(b.Cycles)} / {Digits.Round(b.ToFailure)}")), Digits.Round(Damage), LifeSources.Miner),
    ]);
}
