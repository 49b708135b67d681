using NotebookKit.Vessels.Laminates;

namespace NotebookKit.Vessels.Bursting;

/// <summary>What a wall holds, plies counted as carrying nothing where the rest alone holds more.</summary>
/// <param name="Outcome">Where its path of damage ends, loads over the radius of the whole wall.</param>
/// <param name="LowPascals">What it may be rated on [Pa].</param>
/// <param name="NettingPascals">Netting analysis [Pa].</param>
/// <param name="IsLeaning">Whether it leans on more than its fibres as laid and its liner.</param>
/// <param name="Without">Plies that the burst does without, by their place in the layup.</param>
/// <remarks>
/// A stiff ply breaks first and hands its load to plies that are then counted only as they lie. What the others hold without it they hold
/// with it, too: until it breaks it takes load off them, and after that they are the wall that they were without it. So the largest answer
/// over the walls with any plies counted as carrying nothing stands, each ply where it lies, and a further ply never lowers what those
/// there hold. What it can do is widen the sleeves laid over it, which turns their yarns: that is geometry, and
/// <see cref="BurstPrediction"/> says so. Source: the argument of the lower-bound theorem, carried over to fibres that break (common
/// practice, no source). The low end of each wall is never above netting analysis of the plies it counts.
/// </remarks>
internal readonly record struct WallVerdict(WallOutcome Outcome, double LowPascals, double NettingPascals, bool IsLeaning,
    IReadOnlyList<int> Without);
