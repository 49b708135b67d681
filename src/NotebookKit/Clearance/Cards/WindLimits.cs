using NotebookKit.Provenance;
using NotebookKit.Quantities;
using UnitsNet;
using UnitsNet.Units;

namespace NotebookKit.Clearance.Cards;

/// <summary>
/// How much wind a vehicle may have at the rail: the lowest of what its speed off the rail, its drift against the field and the load of its
/// canopy allow.
/// Source: the flights it is found from; the rail's rules are common practice, no source.
/// </summary>
public sealed record WindLimits : Result
{
    internal WindLimits(string vehicle, Speed railExit, string railBy, Speed? drift, bool hasField, Speed? opening, bool hasGear,
        IReadOnlyList<string> directions)
    {
        Vehicle = vehicle;
        RailExit = railExit;
        RailExitSetBy = railBy;
        Drift = drift;
        Opening = opening;
        (HasField, HasGear, Directions) = (hasField, hasGear, directions);
        (Speed Limit, string By)[] all =
        [
            (railExit, railBy),
            .. drift is { } d ? [(d, "drift against the field")] : Array.Empty<(Speed, string)>(),
            .. opening is { } o ? [(o, "opening load against the recovery gear")] : Array.Empty<(Speed, string)>(),
        ];
        (Limit, SetBy) = all.MinBy(l => l.Limit.MetersPerSecond);
    }

    /// <summary>What flies.</summary>
    public string Vehicle { get; }

    /// <summary>The wind at the rail that is allowed: the lowest of all limits.</summary>
    public Speed Limit { get; private init; }

    /// <summary>What sets it.</summary>
    public string SetBy { get; private init; }

    /// <summary>A quarter of the speed off the rail, at most 15° of wind angle, and at least one calibre of margin there.</summary>
    public Speed RailExit { get; }

    /// <summary>What sets the limit off the rail: its speed, or the margin at the wind's angle.</summary>
    public string RailExitSetBy { get; }

    /// <summary>Most wind in which everything lands on the field at the light end of the drag band; none where the rail's limit comes
    /// first, or no field is given.</summary>
    public Speed? Drift { get; }

    /// <summary>Most wind in which the canopy opens within what the gear takes; none where the rail's limit comes first, or no gear was
    /// judged.</summary>
    public Speed? Opening { get; }

    /// <summary>The gust that the fins were judged with, where that is the lowest of all; none otherwise, or where no fins were judged
    /// with the limits.</summary>
    public Speed? Gust { get; private init; }

    private bool HasField { get; }

    private bool HasGear { get; }

    private IReadOnlyList<string> Directions { get; }

    /// <inheritdoc/>
    public override string Title => $"Wind limits, {Vehicle}";

    /// <inheritdoc/>
    public override ModelCard Model => new(
        "Wind limits by flights in more and more wind",
        [
            "The wind at the rail is raised until a flight fails; its profile keeps the shape of the site's, one seventh power over open "
                + "land where none is given.",
            $"The wind comes from {string.Join(", ", Directions)}.",
            "Drift is that of the flight with the least drag in the band, which goes highest and drifts farthest; what scatters from "
                + "flight to flight isn't counted in the limit.",
            "Off the rail: at least four times the wind, at most 15°, at least one calibre (common practice, no source).",
        ],
        "Up to the limit of the rail; a steady wind. Gusts and scatter are part of the dispersion.",
        [Source.CommonPractice("a quarter of the speed off the rail")]);

    /// <inheritdoc/>
    public override IReadOnlyList<ResultLine> Lines =>
    [
        new("Wind limit at the rail", Limit.Show(SpeedUnit.MeterPerSecond), $"{SetBy} sets it"),
        new("Off the rail", RailExit.Show(SpeedUnit.MeterPerSecond), RailExitSetBy),
        new("By the drift", Drift is { } drift ? drift.Show(SpeedUnit.MeterPerSecond) : HasField ? "not below the rail's" : "not shown",
            HasField ? "expected flight with the least drag; scatter not counted" : "no field is given"),
        new("By the opening load", Opening is { } opening ? opening.Show(SpeedUnit.MeterPerSecond) : HasGear ? "not below the rail's"
            : "not shown", HasGear ? "" : "no recovery gear was judged"),
        .. Gust is { } gust ? [new ResultLine("By the fins", gust.Show(SpeedUnit.MeterPerSecond), "the gust that they were judged with")]
            : Array.Empty<ResultLine>(),
    ];

    /// <summary>The same limits on fins that were judged with less than the wind that the others allow.</summary>
    internal WindLimits WithGust(Speed gust, string fins) =>
        gust < Limit ? this with { Gust = gust, Limit = gust, SetBy = $"the gust that the {fins} were judged with" } : this;

    /// <inheritdoc/>
    public override IReadOnlyList<Caution> Cautions => Provenance.Cautions.ForFlight;

    /// <inheritdoc/>
    public override Working Working => new(Title,
    [
        new("Wind limit", Gust is null ? @"w = \min(w_{rail},\ w_{drift},\ w_{opening})"
            : @"w = \min(w_{rail},\ w_{drift},\ w_{opening},\ w_{fins})", string.Join(", ", Lines.Skip(1).Select(l => l.Value)),
            Limit.Show(SpeedUnit.MeterPerSecond), Model.Sources[0]),
    ]);
}
