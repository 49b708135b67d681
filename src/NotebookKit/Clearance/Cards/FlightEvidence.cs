using NotebookKit.Clearance.Service;
using NotebookKit.Flight.Dispersion;

namespace NotebookKit.Clearance.Cards;

/// <summary>What stands behind a flight of one stage. What is left out is "not shown", and that forbids.</summary>
public sealed record FlightEvidence : StageEvidence
{
    /// <summary>Day of the flight.</summary>
    public DateOnly? Day { get; init; }

    /// <summary>The stand-off, computed for this vehicle and fill.</summary>
    public LaunchStandOff? StandOff { get; init; }

    /// <summary>The scatter of this vehicle's landings on this site.</summary>
    public DispersionResult? Scatter { get; init; }

    /// <summary>Limits of a vessel's life; the club's unless given.</summary>
    public LifeLimits Life { get; init; } = LifeLimits.Club;

    /// <summary>The flight as the club counts it, for the heading; may be empty. It decides nothing.</summary>
    public string Flight { get; init; } = "";

    /// <summary>What else stands against the flight, such as a requirement of the design that doesn't hold; each error forbids.</summary>
    public IReadOnlyList<Provenance.Finding> Against { get; init; } = [];

    /// <summary>Why a piece isn't here, with its remedy, by the piece's name on the card ("proved vessel"); empty where nobody looked. It
    /// decides nothing: the card says it in place of the usual remedy.</summary>
    public IReadOnlyDictionary<string, string> Missing { get; init; } = System.Collections.Frozen.FrozenDictionary<string, string>.Empty;
}
