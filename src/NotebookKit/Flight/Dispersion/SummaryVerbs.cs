using NotebookKit.Flight.Design;
using NotebookKit.Flight.Site;
using NotebookKit.Provenance;

namespace NotebookKit.Flight.Dispersion;

/// <summary>Flies a design any number of times in the memory of a thousand flights. Source: see the result's model.</summary>
public static class SummaryVerbs
{
    private const int Most = 10_000_000;

    /// <summary>
    /// Flies it many times and keeps moments, extremes, quantiles and the landing ellipse alone. The flights are those of
    /// <see cref="DispersionVerbs.Disperse(Vehicle, LaunchSite, Spread, int, ulong, bool, IProgress{int}, int?, IDispersionBatch,
    /// CancellationToken)"/> with the same seed; the answer is the same on any number of threads. Source: see the result's model.
    /// </summary>
    /// <param name="vehicle">The vehicle.</param>
    /// <param name="site">Where it starts.</param>
    /// <param name="spread">What varies, and how far.</param>
    /// <param name="flights">Number of flights; 2 to 10 000 000.</param>
    /// <param name="seed">Seed; any number.</param>
    /// <param name="sixDegrees">Whether to fly in six degrees of freedom; three where not.</param>
    /// <param name="threads">Most threads to use; as many as the machine has where none is given.</param>
    /// <param name="cancellation">Stops it.</param>
    /// <exception cref="InvalidDesignException">Something can't be computed; carries all findings.</exception>
    /// <exception cref="OperationCanceledException">It was stopped.</exception>
    public static DispersionSummary DisperseMany(this Vehicle vehicle, LaunchSite site, Spread spread, int flights, ulong seed,
        bool sixDegrees = false, int? threads = null, CancellationToken cancellation = default) =>
        DispersionVerbs.Dispersion(vehicle, site, spread, flights, seed, sixDegrees, threads, Most).Summary(threads, cancellation);

    /// <summary>
    /// Flies two stages many times and keeps moments, extremes, quantiles and the landing ellipses alone. The answer is the same on any
    /// number of threads. Source: see the result's model.
    /// </summary>
    /// <param name="vehicle">The vehicle.</param>
    /// <param name="site">Where it starts.</param>
    /// <param name="spread">What varies, and how far.</param>
    /// <param name="flights">Number of flights; 2 to 10 000 000.</param>
    /// <param name="seed">Seed; any number.</param>
    /// <param name="sixDegrees">Whether stack and sustainer fly in six degrees of freedom; three where not.</param>
    /// <param name="threads">Most threads to use; as many as the machine has where none is given.</param>
    /// <param name="cancellation">Stops it.</param>
    /// <exception cref="InvalidDesignException">Something can't be computed; carries all findings.</exception>
    /// <exception cref="OperationCanceledException">It was stopped.</exception>
    public static DispersionSummary DisperseMany(this TwoStageVehicle vehicle, LaunchSite site, TwoStageSpread spread, int flights,
        ulong seed, bool sixDegrees = false, int? threads = null, CancellationToken cancellation = default) =>
        DispersionVerbs.Dispersion(vehicle, site, spread, flights, seed, sixDegrees, threads, Most).Summary(threads, cancellation);
}
