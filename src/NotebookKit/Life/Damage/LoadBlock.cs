using NotebookKit.Provenance;

namespace NotebookKit.Life.Damage;

/// <summary>Cycles of one kind.</summary>
/// <param name="Name">What they are: "fills to 60 bar".</param>
/// <param name="Cycles">How many [-]; 0 to 10¹².</param>
/// <param name="ToFailure">How many of them alone would break it [-]; 1 to 10¹².</param>
public sealed record LoadBlock(string Name, double Cycles, double ToFailure)
{
    /// <summary>Share of the life that they use up [-]. Source: M. A. Miner, 1945.</summary>
    public double Damage => Cycles / ToFailure;

    /// <summary>Everything that is wrong with it.</summary>
    public IReadOnlyList<Finding> Validate() =>
        [.. new[]
        {
            new ValidRange<double>(0, 1e12).Find(Cycles, $"number of {Name}", "Count from the first one."),
            new ValidRange<double>(1, 1e12).Find(ToFailure, $"number of {Name} to failure",
                "Take it from a test or a printed line of stress against cycles."),
        }.OfType<Finding>()];
}
