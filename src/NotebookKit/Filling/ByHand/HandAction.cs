using NotebookKit.Filling.Restrictors;
using NotebookKit.Provenance;
using NotebookKit.Quantities;
using UnitsNet;

namespace NotebookKit.Filling.ByHand;

/// <summary>One thing that a hand does at the fill valve: what is made of the methods below.</summary>
public sealed record HandAction
{
    private HandAction(HandActionKind kind) => Kind = kind;

    /// <summary>What is done.</summary>
    public HandActionKind Kind { get; }

    /// <summary>Gauge reading at which the valve is shut; none where it isn't shut by the gauge.</summary>
    public GaugePressure? Gauge { get; private init; }

    /// <summary>How far above the surroundings the gas may still be when the hold ends; none where the hold isn't by temperature.</summary>
    public TemperatureDelta? Cooled { get; private init; }

    /// <summary>Time of the hold; 0 where it has none.</summary>
    public Duration Time { get; private init; }

    /// <summary>Clicks; 0 where there are none.</summary>
    public int Count { get; private init; }

    /// <summary>How long each click is open and shut; none where there are no clicks.</summary>
    public (Duration Open, Duration Shut) Click { get; private init; }

    /// <summary>The passage that is fitted; none where none is.</summary>
    public IRestrictor? Passage { get; private init; }

    /// <summary>Opens the valve until the gauge reads so much, and shuts it.</summary>
    /// <param name="gauge">The reading; above what the vessel holds then, to its rating.</param>
    public static HandAction OpenTo(GaugePressure gauge) => new(HandActionKind.OpenTo) { Gauge = gauge };

    /// <summary>Holds with the valve shut until the gas has cooled to so far above the surroundings.</summary>
    /// <param name="above">What is left of its heat; 0.5 to 50 K.</param>
    public static HandAction HoldUntilCooled(TemperatureDelta above) => new(HandActionKind.Hold) { Cooled = above };

    /// <summary>Holds with the valve shut for a time.</summary>
    /// <param name="time">The time; 0.1 s to 1 hour.</param>
    public static HandAction Hold(Duration time) => new(HandActionKind.Hold) { Time = time };

    /// <summary>Clicks the valve open and shut.</summary>
    /// <param name="count">Number of clicks; 1 to 200.</param>
    /// <param name="open">Time each is open; 0.1 s to 10 min.</param>
    /// <param name="shut">Time shut after each; 0.1 s to 10 min.</param>
    public static HandAction Clicks(int count, Duration open, Duration shut) =>
        new(HandActionKind.Clicks) { Count = count, Click = (open, shut) };

    /// <summary>Fits another restrictor, or takes out one that is too small, with the line vented.</summary>
    /// <param name="passage">What the gas has to pass from then on.</param>
    public static HandAction Fit(IRestrictor passage) => new(HandActionKind.Fit) { Passage = passage };

    /// <summary>In words: "open to 40 bar gauge".</summary>
    public override string ToString() => Kind switch
    {
        HandActionKind.OpenTo => $"open to {Gauge}, then shut",
        HandActionKind.Hold => Cooled is { } k ? $"hold until the gas is within {Digits.Round(k.Kelvins)} K of the surroundings"
            : $"hold for {Time.Show()}",
        HandActionKind.Clicks => $"{Count} clicks, {Click.Open.Show()} open and {Click.Shut.Show()} shut",
        _ => $"vent the line and fit {Passage}",
    };

    internal IReadOnlyList<Finding> Validate() =>
    [
        .. Passage?.Validate() ?? [],
        .. new[]
        {
            Cooled is { } above ? new ValidRange<TemperatureDelta>(0.5.KelvinsOfChange(), 50.KelvinsOfChange()).Find(above,
                "rest of the gas's heat", "Gas comes to the surroundings' temperature only in hours.") : null,
            Kind == HandActionKind.Hold && Cooled is null ? new ValidRange<Duration>(0.1.Seconds(), 1.Hours()).Find(Time,
                "time of the hold",
                "It cools within minutes.") : null,
            Kind == HandActionKind.Clicks ? new ValidRange<double>(1, 200).Find(Count, "number of clicks", "Use a larger restrictor.")
                : null,
            Kind == HandActionKind.Clicks ? new ValidRange<Duration>(0.1.Seconds(), 10.Minutes()).Find(Click.Open, "time of a click",
                "A hand can't do less.") : null,
            Kind == HandActionKind.Clicks ? new ValidRange<Duration>(0.1.Seconds(), 10.Minutes()).Find(Click.Shut, "time between clicks",
                "A hand can't do less.") : null,
        }.OfType<Finding>(),
    ];
}

/// <summary>What a hand does.</summary>
public enum HandActionKind
{
    /// <summary>Opens until the gauge reads so much.</summary>
    OpenTo,

    /// <summary>Holds with the valve shut.</summary>
    Hold,

    /// <summary>Clicks.</summary>
    Clicks,

    /// <summary>Fits another restrictor.</summary>
    Fit,
}
