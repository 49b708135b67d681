using NotebookKit.Provenance;

namespace NotebookKit.Life.Damage;

/// <summary>Cycles of several kinds added up by the share of life that each uses.</summary>
/// <param name="Blocks">The kinds, at least one.</param>
/// <remarks>Source: M. A. Miner, J. Appl. Mech. 12 (1945) A159 (unverified).</remarks>
public sealed record CumulativeDamage(IReadOnlyList<LoadBlock> Blocks)
{
    /// <summary>Sum at which the life is over [-]; 0.05 to 1, 1 unless given.</summary>
    public double Limit { get; init; } = 1;

    /// <summary>Everything that is wrong with it.</summary>
    public IReadOnlyList<Finding> Validate() =>
        [.. Blocks.SelectMany(b => b.Validate()), .. new[]
        {
            Blocks.Count == 0 ? LifeFindings.NoCyclesToAdd() : null,
            new ValidRange<double>(0.05, 1).Find(Limit, "sum at the end of life", "1 is Miner's; composites have broken well below it."),
        }.OfType<Finding>()];

    /// <summary>Adds them up. Source: Miner 1945.</summary>
    /// <exception cref="InvalidDesignException">A value is out of range.</exception>
    public DamageResult Sum()
    {
        InvalidDesignException.ThrowIfAny("Cumulative damage", Validate());
        return new DamageResult(this, Blocks.Sum(b => b.Damage));
    }
}
