using NotebookKit.Provenance;
using NotebookKit.Quantities;
using UnitsNet;

namespace NotebookKit.Launching;

/// <summary>What a pad's procedure is written from. What isn't given stays so; nothing is assumed for it.</summary>
public sealed record PadTimes
{
    /// <summary>Planned fill time; 0.1 s to 2 hours.</summary>
    public Duration? Fill { get; init; }

    /// <summary>Longest time that the filled vessel may stand before it has to be vented; 1 s to 24 hours.</summary>
    public Duration? Stand { get; init; }

    /// <summary>Vent time of the worst state; 0.1 s to 24 hours.</summary>
    public Duration? Vent { get; init; }

    /// <summary>Distance of the crew, behind cover; 1 m to 2 km.</summary>
    public Length? Crew { get; init; }

    /// <summary>Distance of spectators; 1 m to 2 km.</summary>
    public Length? Spectators { get; init; }

    /// <summary>Whether a second stage stands on the first.</summary>
    public bool HasSecondStage { get; init; }

    /// <summary>Everything wrong with it.</summary>
    public IReadOnlyList<Finding> Validate() =>
        new[]
        {
            Time(Fill, "planned fill time"), Time(Stand, "time that the filled vessel may stand"), Time(Vent, "vent time"),
            Distance(Crew, "distance of the crew"), Distance(Spectators, "distance of spectators"),
            Crew > Spectators ? LaunchingFindings.SpectatorsNearerThanCrew(Crew.Value, Spectators!.Value) : null,
        }.OfType<Finding>().ToList();

    private static Finding? Time(Duration? time, string name) => time is { } t
        ? new ValidRange<Duration>(0.1.Seconds(), 24.Hours()).Find(t, name, "Check the unit it was given in.") : null;

    private static Finding? Distance(Length? length, string name) => length is { } l
        ? new ValidRange<Length>(1.Metres(), 2000.Metres()).Find(l, name, "Check the unit it was given in.") : null;
}
