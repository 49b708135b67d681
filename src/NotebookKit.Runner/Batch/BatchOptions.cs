using NotebookKit.Flight.Dispersion;

namespace NotebookKit.Runner.Batch;

/// <summary>What a run does with the dispersions of a notebook, where it doesn't just fly them.</summary>
/// <param name="Shard">The part to fly of each.</param>
/// <param name="KeepIn">Folder that gets the parts; none keeps none.</param>
/// <param name="FlownIn">Folder with merged flights that stand in for flying; none where there is none.</param>
internal sealed record BatchOptions(ShardNumber Shard, string? KeepIn, string? FlownIn);
