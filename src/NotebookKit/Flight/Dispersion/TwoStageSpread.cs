using NotebookKit.Provenance;
using NotebookKit.Quantities;
using UnitsNet;

namespace NotebookKit.Flight.Dispersion;

/// <summary>
/// What varies from one flight of two stages to the next. The day is the same for both; charge, thrust, drag, mass, timer and canopy are
/// drawn for each stage by itself. The defaults are common practice, no source: put in your own as you learn them.
/// </summary>
public sealed record TwoStageSpread
{
    /// <summary>Wind, gusts and rail of the whole flight, and what either stage varies by where it has no spread of its own.</summary>
    public Spread Both { get; init; } = new();

    /// <summary>What the booster varies by; as both where none is given. Its wind, gusts and rail are not looked at.</summary>
    public Spread? Booster { get; init; }

    /// <summary>What the sustainer varies by; as both where none is given. Its wind, gusts and rail are not looked at.</summary>
    public Spread? Sustainer { get; init; }

    /// <summary>
    /// Time of separation; 0 to 2 s. 30 ms unless given. A timer is early or late by it. A latch without delay, and a joint that drag
    /// opens, can only be late: half of a normal distribution.
    /// </summary>
    public Duration Separation { get; init; } = 30.Milliseconds();

    /// <summary>Nothing varies: every flight is the same.</summary>
    public static TwoStageSpread None { get; } = new() { Both = Spread.None, Separation = Duration.Zero };

    /// <summary>Everything that is wrong with the spread.</summary>
    public IReadOnlyList<Finding> Validate()
    {
        List<Finding> findings = [.. Both.Validate()];
        if (Booster is { } booster) findings.AddRange(booster.Validate().Select(f => f with { Message = $"booster: {f.Message}" }));
        if (Sustainer is { } sustainer) findings.AddRange(sustainer.Validate().Select(f => f with { Message = $"sustainer: {f.Message}" }));
        if (new ValidRange<Duration>(Duration.Zero, 2.Seconds()).Find(Separation, "spread of the time of separation",
            "It is a standard deviation.") is { } wrong) findings.Add(wrong);
        return findings;
    }
}
