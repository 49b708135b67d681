using NotebookKit.Flight.Design;
using NotebookKit.Flight.Flights;
using NotebookKit.Flight.Site;
using NotebookKit.Flight.Staging;
using NotebookKit.Provenance;

namespace NotebookKit.Flight.Dispersion;

/// <summary>Flies a design many times, each with its own draw of everything that varies. Source: see the results' models.</summary>
public static class DispersionVerbs
{
    /// <summary>
    /// Flies it many times, each with its own draw of everything that varies. The same seed gives the same answer on any number of threads.
    /// Source: see the result's model.
    /// </summary>
    /// <param name="vehicle">The vehicle.</param>
    /// <param name="site">Where it starts.</param>
    /// <param name="spread">What varies, and how far.</param>
    /// <param name="flights">Number of flights; 2 to 1 000 000.</param>
    /// <param name="seed">Seed; any number.</param>
    /// <param name="sixDegrees">Whether to fly in six degrees of freedom; three where not.</param>
    /// <param name="progress">Told the number of flights done, now and then.</param>
    /// <param name="threads">Most threads to use; as many as the machine has where none is given.</param>
    /// <param name="batch">Which part to fly, or flights that were flown before; none flies the whole. A notebook passes on its
    /// <c>session.Batch</c>.</param>
    /// <param name="cancellation">Stops it.</param>
    /// <exception cref="InvalidDesignException">Something can't be computed; carries all findings.</exception>
    /// <exception cref="OperationCanceledException">It was stopped.</exception>
    public static DispersionResult Disperse(
        this Vehicle vehicle, LaunchSite site, Spread spread, int flights, ulong seed, bool sixDegrees = false,
            IProgress<int>? progress = null, int? threads = null,
        IDispersionBatch? batch = null, CancellationToken cancellation = default) =>
        Dispersion(vehicle, site, spread, flights, seed, sixDegrees, threads).Result(batch, progress, threads, cancellation);

    /// <summary>Flies one of several even parts of a dispersion, to be merged with the others. Source: see the result's model.</summary>
    /// <param name="vehicle">The vehicle.</param>
    /// <param name="site">Where it starts.</param>
    /// <param name="spread">What varies, and how far.</param>
    /// <param name="flights">Number of flights of the whole; 2 to 1 000 000.</param>
    /// <param name="seed">Seed of the whole; any number.</param>
    /// <param name="shard">Which part; 1 to the number of parts.</param>
    /// <param name="of">Number of parts; 1 to the number of flights.</param>
    /// <param name="sixDegrees">Whether to fly in six degrees of freedom; three where not.</param>
    /// <param name="progress">Told the number of flights done, now and then.</param>
    /// <param name="threads">Most threads to use; as many as the machine has where none is given.</param>
    /// <param name="cancellation">Stops it.</param>
    /// <exception cref="InvalidDesignException">Something can't be computed; carries all findings.</exception>
    /// <exception cref="OperationCanceledException">It was stopped.</exception>
    public static DispersionShard DisperseShard(
        this Vehicle vehicle, LaunchSite site, Spread spread, int flights, ulong seed, int shard, int of, bool sixDegrees = false,
            IProgress<int>? progress = null,
        int? threads = null, CancellationToken cancellation = default) =>
        Dispersion(vehicle, site, spread, flights, seed, sixDegrees, threads).Shard(new(shard, of), progress, threads, cancellation);

    internal static VehicleDispersion Dispersion(Vehicle vehicle, LaunchSite site, Spread spread, int flights, ulong seed, bool sixDegrees,
        int? threads, int most = 1_000_000)
    {
        ArgumentNullException.ThrowIfNull(vehicle);
        ArgumentNullException.ThrowIfNull(spread);
        InvalidDesignException.ThrowIfAny(vehicle.Name, [.. sixDegrees ? vehicle.ValidateSixDegrees(site) : vehicle.Validate(site),
            .. spread.Validate(), .. DispersionRun.Validate(flights, threads, most)]);
        return new(vehicle, site, spread, flights, seed, sixDegrees);
    }

    /// <summary>
    /// Flies it many times, each with its own draw of everything that varies: where sustainer and booster come down, and what matters most.
    /// The same seed gives the same answer on any number of threads. Source: see the result's model.
    /// </summary>
    /// <param name="vehicle">The vehicle.</param>
    /// <param name="site">Where it starts.</param>
    /// <param name="spread">What varies, and how far.</param>
    /// <param name="flights">Number of flights; 2 to 1 000 000.</param>
    /// <param name="seed">Seed; any number.</param>
    /// <param name="sixDegrees">Whether stack and sustainer fly in six degrees of freedom; three where not.</param>
    /// <param name="progress">Told the number of flights done, now and then.</param>
    /// <param name="threads">Most threads to use; as many as the machine has where none is given.</param>
    /// <param name="batch">Which part to fly, or flights that were flown before; none flies the whole. A notebook passes on its
    /// <c>session.Batch</c>.</param>
    /// <param name="cancellation">Stops it.</param>
    /// <exception cref="InvalidDesignException">Something can't be computed; carries all findings.</exception>
    /// <exception cref="OperationCanceledException">It was stopped.</exception>
    public static DispersionResult Disperse(
        this TwoStageVehicle vehicle, LaunchSite site, TwoStageSpread spread, int flights, ulong seed, bool sixDegrees = false,
            IProgress<int>? progress = null, int? threads = null,
        IDispersionBatch? batch = null, CancellationToken cancellation = default) =>
        Dispersion(vehicle, site, spread, flights, seed, sixDegrees, threads).Result(batch, progress, threads, cancellation);

    /// <summary>Flies one of several even parts of a dispersion, to be merged with the others. Source: see the result's model.</summary>
    /// <param name="vehicle">The vehicle.</param>
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
    public static DispersionShard DisperseShard(
        this TwoStageVehicle vehicle, LaunchSite site, TwoStageSpread spread, int flights, ulong seed, int shard, int of,
            bool sixDegrees = false, IProgress<int>? progress = null,
        int? threads = null, CancellationToken cancellation = default) =>
        Dispersion(vehicle, site, spread, flights, seed, sixDegrees, threads).Shard(new(shard, of), progress, threads, cancellation);

    internal static TwoStageDispersion Dispersion(TwoStageVehicle vehicle, LaunchSite site, TwoStageSpread spread, int flights, ulong seed,
        bool sixDegrees, int? threads, int most = 1_000_000)
    {
        ArgumentNullException.ThrowIfNull(vehicle);
        ArgumentNullException.ThrowIfNull(spread);
        InvalidDesignException.ThrowIfAny(vehicle.Name, [.. vehicle.Validate(site, sixDegrees), .. spread.Validate(),
            .. DispersionRun.Validate(flights, threads, most)]);
        return new(vehicle, site, spread, flights, seed, sixDegrees);
    }
}
