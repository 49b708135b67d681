using NotebookKit.Flight.Dispersion;
using NotebookKit.Runner.Notebooks;

namespace NotebookKit.Runner.Batch;

/// <summary>A worker's side of a batch: every dispersion flies its part and leaves it in a file, or takes its flights from one.</summary>
/// <param name="options">What is wanted.</param>
internal sealed class NotebookBatch(BatchOptions options) : IDispersionBatch
{
    /// <inheritdoc />
    public ShardNumber Part => options.Shard;

    /// <inheritdoc />
    public void Keep(DispersionShard shard)
    {
        if (options.KeepIn is { } folder) AtomicFile.Write(Path.Combine(folder, ShardFiles.Name(shard)), shard.Write);
    }

    /// <inheritdoc />
    public DispersionShard? Find(DispersionPlan plan) =>
        options.FlownIn is { } folder && ShardFiles.MergedBelow(folder, plan.Fingerprint) is { } file ? ShardFiles.Read(file) : null;
}

/// <summary>What a run does with the dispersions of a notebook, where it doesn't just fly them.</summary>
/// <param name="Shard">The part to fly of each.</param>
/// <param name="KeepIn">Folder that gets the parts; none keeps none.</param>
/// <param name="FlownIn">Folder with merged flights that stand in for flying; none where there is none.</param>
internal sealed record BatchOptions(ShardNumber Shard, string? KeepIn, string? FlownIn);
