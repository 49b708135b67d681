using NotebookKit.Provenance;
using UnitsNet;

namespace NotebookKit.Flight.Vertical;

/// <summary>The few numbers of a vertical flight that a search or a map needs, without any curve.</summary>
/// <param name="Status">
/// Whether it may be used; the numbers are NaN where not, but for a vehicle that comes down with water and pressure aboard: they are those
/// of where it comes to rest, and no flight.
/// </param>
/// <param name="ApogeeMetres">Height above the pad [m]; 0 or above.</param>
/// <param name="ApogeeSeconds">Time from release to apogee [s]; 0 or above.</param>
/// <param name="MaximumSpeedMetresPerSecond">Maximum speed [m/s]; 0 or above.</param>
/// <param name="EndOfJetSeconds">End of the jet from release [s], the top where the jet still runs then; 0 or above.</param>
/// <param name="Evaluations">Right-hand sides computed; 0 or above.</param>
public readonly record struct VerticalFlightPeak(
    ResultStatus Status, double ApogeeMetres, double ApogeeSeconds, double MaximumSpeedMetresPerSecond, double EndOfJetSeconds,
        int Evaluations)
{
    /// <summary>Height above the pad.</summary>
    public Length Apogee => Length.FromMeters(ApogeeMetres);

    /// <summary>Time from release to apogee.</summary>
    public Duration Time => Duration.FromSeconds(ApogeeSeconds);

    /// <summary>Maximum speed.</summary>
    public Speed MaximumSpeed => Speed.FromMetersPerSecond(MaximumSpeedMetresPerSecond);
}
