using NotebookKit.Vessels.Laminates;

namespace NotebookKit.Vessels.Bursting;

/// <summary>What a wall holds, the outermost plies left off where the rest alone holds more.</summary>
/// <param name="Outcome">Where its path of damage ends, loads over the radius of the whole wall.</param>
/// <param name="LowPascals">What it may be rated on [Pa].</param>
/// <param name="NettingPascals">Netting analysis [Pa].</param>
/// <param name="IsLeaning">Whether it leans on more than its fibres as laid and its liner.</param>
/// <param name="LeftOff">How many of the outermost load-carrying plies the burst does without.</param>
/// <remarks>
/// A stiff outer ply breaks first and hands its load to plies that are then counted only as they lie. What the inner plies hold alone they
/// hold with a ply over them, too: until it breaks it takes load off them, and after that they are the wall that they were without it. So
/// the largest answer over the walls with outermost plies left off stands, and a further ply on the outside never lowers the burst. Source:
/// the argument of the lower-bound theorem, carried over to fibres that break (common practice, no source).
/// </remarks>
internal readonly record struct WallVerdict(WallOutcome Outcome, double LowPascals, double NettingPascals, bool IsLeaning, int LeftOff);
