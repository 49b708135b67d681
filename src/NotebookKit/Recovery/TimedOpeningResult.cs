using NotebookKit.Provenance;
using NotebookKit.Quantities;
using UnitsNet;
using UnitsNet.Units;

namespace NotebookKit.Recovery;

/// <summary>
/// Opening by a timer when the time of apogee is uncertain: what early or late does to the load. Source: free flight about the top,
/// v² = v_x² + (g δ)²; T. W. Knacke, NWC TP 6575, 1991; E. Pflanz, 1942, for the load.
/// </summary>
public sealed record TimedOpeningResult : StatedResult
{
    /// <summary>Setting of the timer, from release.</summary>
    public required Duration Timer { get; init; }

    /// <summary>Expected time of apogee, from release.</summary>
    public required Duration Apogee { get; init; }

    /// <summary>Standard deviation of the opening against apogee: flight and timer together.</summary>
    public required Duration Spread { get; init; }

    /// <summary>Opening against the top [s]; negative is early.</summary>
    public required Series Offset { get; init; }

    /// <summary>Speed at opening [m/s].</summary>
    public required Series Speed { get; init; }

    /// <summary>Opening load with finite mass [N].</summary>
    public required Series Load { get; init; }

    /// <summary>Load at the expected offset.</summary>
    public required Force ExpectedLoad { get; init; }

    /// <summary>Load that 19 of 20 openings stay below.</summary>
    public required Force LoadAt95Percent { get; init; }

    /// <summary>The same opening's load at infinite mass: the upper bound, to make the gear for where the speed is below the published
    /// range.</summary>
    public required Force UpperBoundAt95Percent { get; init; }

    /// <summary>Load the recovery gear takes; none where none was given.</summary>
    public required Force? Allowed { get; init; }

    /// <summary>Chance that an opening exceeds what the gear takes; none where none was given.</summary>
    public required Ratio? ChanceOfExceeding { get; init; }

    /// <inheritdoc/>
    public override IReadOnlyList<Caution> Cautions => Provenance.Cautions.ForFlight;

    /// <inheritdoc/>
    public override ModelCard Model { get; } = new(
        "Opening by a timer",
        [
            "Near apogee the vehicle flies free: its vertical speed is g times the offset, its sideways speed stays. Drag, left out, "
                + "lowers the late speed.",
            "Opening against apogee is normally distributed.",
            "Load by the opening model at that speed.",
        ],
        "Offsets of up to some 5 s. The fill constant is published for 46 to 152 m/s; slower openings are an extrapolation.",
        [RecoveryLiterature.Knacke, RecoveryLiterature.Pflanz]);

    /// <inheritdoc/>
    public override IReadOnlyList<ResultLine> Lines =>
    [
        new("Expected load", ExpectedLoad.Show(),
            $"timer {Timer.Show(DurationUnit.Second)}, apogee at {Apogee.Show(DurationUnit.Second)} ± "
            + $"{Spread.Show(DurationUnit.Second)}"),
        new("95 % stay below", LoadAt95Percent.Show()),
        new("Upper bound, infinite mass", UpperBoundAt95Percent.Show(),
            "design the gear for this load where the fill time is an extrapolation"),
        .. ChanceOfExceeding is { } chance && Allowed is { } allowed
            ? new ResultLine[] { new("Chance of exceeding the allowed load", chance.Percent < 0.01 ? "below 0.01 %" : chance.Show(2),
                $"above {allowed.Show()}") }
            : [],
    ];
}
