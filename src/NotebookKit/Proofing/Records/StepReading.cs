using NotebookKit.Proofing.Plans;
using NotebookKit.Provenance;
using NotebookKit.Quantities;
using UnitsNet;

namespace NotebookKit.Proofing.Records;

/// <summary>What is read, counted and heard at one step while a proof is pumped, to be held against the plan before anybody pumps
/// on.</summary>
/// <remarks>Source: springs side by side (<see cref="FilledVessel"/>) for the water to expect; the limits are those by which the
/// record is judged afterwards (common practice, no source).</remarks>
public sealed record StepReading
{
    /// <summary>The plan.</summary>
    public required ProofPlan Plan { get; init; }

    /// <summary>Which step of it, counted from 1; 1 to the number of steps.</summary>
    public required int Step { get; init; }

    /// <summary>The gauge now; −1 to 300 bar gauge.</summary>
    public required GaugePressure Gauge { get; init; }

    /// <summary>The gauge when this hold began; none before it began.</summary>
    public GaugePressure? AtStart { get; init; }

    /// <summary>How long the step has been held; none before it was reached.</summary>
    public Duration? Held { get; init; }

    /// <summary>Water pumped in since no pressure, less what was let out; none where it isn't read: then a wall that yields isn't
    /// seen.</summary>
    public Volume? Pumped { get; init; }

    /// <summary>What the gauge can't tell apart; 0.001 to 5 bar.</summary>
    public Pressure GaugeError { get; init; } = 0.1.Bar();

    /// <summary>Drops counted so far; empty where none were seen, or nobody looked.</summary>
    public IReadOnlyList<DropsSeen> Drops { get; init; } = [];

    /// <summary>Sounds heard so far; empty where none were, or nobody listened.</summary>
    public IReadOnlyList<SoundHeard> Sounds { get; init; } = [];

    /// <summary>Everything wrong with it.</summary>
    public IReadOnlyList<Finding> Validate()
    {
        List<Finding?> findings =
        [
            new ValidRange<double>(1, Plan.Steps.Count).Find(Step, "step of the proof", "The plan has no other steps."),
            new ValidRange<GaugePressure>((-1).BarGauge(), 300.BarGauge()).Find(Gauge, "gauge", "Check the unit it was read in."),
            Held is { } held ? new ValidRange<Duration>(Duration.Zero, 12.Hours()).Find(held, "time held", "A hold is minutes.") : null,
            Pumped is { } water ? new ValidRange<Volume>((-10).Litres(), 100.Litres()).Find(
                water.ToUnit(UnitsNet.Units.VolumeUnit.Milliliter), "water pumped", "Check the unit it was read in.") : null,
            new ValidRange<Pressure>(0.001.Bar(), 5.Bar()).Find(GaugeError.ToUnit(UnitsNet.Units.PressureUnit.Bar), "error of the gauge",
                "A gauge that can't tell 5 bar apart proves nothing."),
        ];
        findings.AddRange(Drops.SelectMany(d => d.Validate()));
        findings.AddRange(Sounds.SelectMany(s => s.Validate()));
        return findings.OfType<Finding>().ToList();
    }

    /// <summary>Go on, hold, or stop and vent, with every reason. Source: as the type; on doubt the safer one.</summary>
    /// <exception cref="InvalidDesignException">A reading is refused; all reasons are in it.</exception>
    public StepAdvice Advise()
    {
        InvalidDesignException.ThrowIfAny($"Reading at step {Step} of the proof of {Plan.Proof.Vessel}", Validate());
        return StepJudgement.Of(this);
    }
}
