using NotebookKit.Flight.Dispersion;
using NotebookKit.Provenance;

namespace NotebookKit.Flight.Staging;

public sealed partial record TwoStageVehicle
{
    /// <summary>
    /// Flies it many times, each with its own draw of everything that varies: where sustainer and booster come down, and what matters most. The same
    /// seed gives the same answer on any number of threads. Source: see the result's model.
    /// </summary>
    /// <param name="site">Where it starts.</param>
    /// <param name="spread">What varies, and how far.</param>
    /// <param name="flights">Number of flights; 2 to 1 000 000.</param>
    /// <param name="seed">Seed; any number.</param>
    /// <param name="sixDegrees">Whether stack and sustainer fly in six degrees of freedom; three where not.</param>
    /// <param name="progress">Told the number of flights done, now and then.</param>
    /// <param name="threads">Most threads to use; as many as the machine has where none is given.</param>
    /// <param name="cancellation">Stops it.</param>
    /// <exception cref="InvalidDesignException">Something can't be computed; carries all findings.</exception>
    /// <exception cref="OperationCanceledException">It was stopped.</exception>
    public DispersionResult Disperse(
        LaunchSite site, TwoStageSpread spread, int flights, ulong seed, bool sixDegrees = false, IProgress<int>? progress = null, int? threads = null,
        CancellationToken cancellation = default) =>
        Dispersion(site, spread, flights, seed, sixDegrees, threads).Result(progress, threads, cancellation);

    /// <summary>Flies one of several even parts of a dispersion, to be merged with the others. Source: see the result's model.</summary>
    /// <param name="site">Where it starts.</param>
    /// <param name="spread">What varies, and how far.</param>
    /// <param name="flights">Number of flights of the whole; 2 to 1 000 000.</param>
    /// <param name="seed">Seed of the whole; any number.</param>
    /// <param name="shard">Which part; 1 to the number of parts.</param>
    /// <param name="of">Number of parts; 1 to the number of flights.</param>
    /// <param name="sixDegrees">Whether stack and sustainer fly in six degrees of freedom; three where not.</param>
    /// <param name="progress">Told the number of flights done, now and then.</param>
    /// <param name="threads">Most threads to use; as many as the machine has where none is given.</param>
    /// <param name="cancellation">Stops it.</param>
    /// <exception cref="InvalidDesignException">Something can't be computed; carries all findings.</exception>
    /// <exception cref="OperationCanceledException">It was stopped.</exception>
    public DispersionShard DisperseShard(
        LaunchSite site, TwoStageSpread spread, int flights, ulong seed, int shard, int of, bool sixDegrees = false, IProgress<int>? progress = null,
        int? threads = null, CancellationToken cancellation = default) =>
        Dispersion(site, spread, flights, seed, sixDegrees, threads).Shard(new(shard, of), progress, threads, cancellation);

    private TwoStageDispersion Dispersion(LaunchSite site, TwoStageSpread spread, int flights, ulong seed, bool sixDegrees, int? threads)
    {
        ArgumentNullException.ThrowIfNull(spread);
        InvalidDesignException.ThrowIfAny(Name, [.. Validate(site, sixDegrees), .. spread.Validate(), .. DispersionRun.Validate(flights, threads)]);
        return new(this, site, spread, flights, seed, sixDegrees);
    }
}
