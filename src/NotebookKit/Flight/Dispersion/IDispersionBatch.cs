namespace NotebookKit.Flight.Dispersion;

/// <summary>What a batch wants of every dispersion that is flown in it: a part of the flights, or flights that were flown before.</summary>
public interface IDispersionBatch
{
    /// <summary>The part to fly.</summary>
    ShardNumber Part { get; }

    /// <summary>Told of every part that was flown.</summary>
    /// <param name="shard">The part.</param>
    void Keep(DispersionShard shard);

    /// <summary>The whole of a dispersion, where it was flown before; none where it has to be flown. Anything but the whole of that plan is
    /// refused.</summary>
    /// <param name="plan">What is wanted.</param>
    DispersionShard? Find(DispersionPlan plan);
}
