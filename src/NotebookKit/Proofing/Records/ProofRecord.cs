using NotebookKit.Proofing.Plans;
using NotebookKit.Provenance;
using NotebookKit.Quantities;
using NotebookKit.Vessels.Ratings;
using UnitsNet;

namespace NotebookKit.Proofing.Records;

/// <summary>A proof judged: what was held, what leaked, what stays, and the verdict with every reason.</summary>
/// <remarks>Source: as <see cref="ProofReadings"/>; limits of the rule that the proof was planned by.</remarks>
public sealed record ProofRecord : Result
{
    internal ProofRecord(ProofReadings readings, ProofPlan plan, IReadOnlyList<HoldReading?> holds, ExpansionReading? expansion,
        TapeExpansion? tape)
    {
        Readings = readings;
        Plan = plan;
        Fingerprint = ProofRecordDocument.Fingerprint(readings);
        Holds = holds;
        Expansion = expansion;
        TapeExpansion = tape;
        Leaks = [.. readings.Drops.Select(LeakDecision.For).OfType<LeakDecision>()];
        (Verdict, var findings) = ProofJudgement.Of(this);
        Findings = [.. findings, .. readings.OfLog];
    }

    /// <summary>The readings that were judged.</summary>
    public ProofReadings Readings { get; }

    /// <summary>The plan that they were judged against.</summary>
    public ProofPlan Plan { get; }

    /// <summary>The planned holds in order, as found in the log; none where a step isn't in it.</summary>
    public IReadOnlyList<HoldReading?> Holds { get; }

    /// <summary>What the burette said; none where expansion wasn't logged, or not to the end.</summary>
    public ExpansionReading? Expansion { get; }

    /// <summary>What tape and rule said; none where they weren't read, or the proof hold isn't in the log.</summary>
    public TapeExpansion? TapeExpansion { get; }

    /// <summary>What each leak that was seen leads to, with its reasons; empty where none was seen.</summary>
    public IReadOnlyList<LeakDecision> Leaks { get; }

    /// <summary>Accept, repeat or reject.</summary>
    public ProofVerdict Verdict { get; }

    /// <summary>Highest reading of the log.</summary>
    public GaugePressure MaximumPressure => Readings.Pressure.Values.Max().BarGauge();

    /// <summary>The hold at proof pressure; none where the log doesn't show it.</summary>
    public HoldReading? ProofHold => Holds[Plan.Proof.Steps.Count - 1];

    /// <summary>The hold at working pressure after the proof; none where the log doesn't show it or none was planned.</summary>
    public HoldReading? LeakHold => Holds.Count > Plan.Proof.Steps.Count ? Holds[^1] : null;

    /// <summary>Pressure that the vessel is known to have held: the lowest reading of the proof hold less the error of the gauge. None
    /// where it wasn't held; this is the evidence a rating may use.</summary>
    public GaugePressure? HeldAtLeast => ProofHold is { LongEnough: true } hold ? hold.Minimum + -Readings.GaugeError : null;

    /// <summary>Working pressure that was proved: what was held over the rule's factor, never above the one planned for. None where it
    /// wasn't held. Source: the rule's.</summary>
    public GaugePressure? WorkingPressureShown =>
        HeldAtLeast is not { } held ? null : held / Plan.Proof.Rule.Factor is var proved && proved < Plan.Proof.WorkingPressure ? proved
            : Plan.Proof.WorkingPressure;

    /// <summary>Water lost per minute at working pressure, warmth and sudden drops taken off; none where the leak hold is
    /// missing.</summary>
    public VolumeFlow? LeakRate => LeakHold is { } hold
        ? VolumeFlow.FromMillilitersPerMinute(Plan.Proof.Filled.LossFor(hold.Fall, hold.Planned.Pressure).Milliliters / hold.Held.Minutes)
        : null;

    /// <summary>Smallest leak that the log could tell from nothing, two standard errors; none where the leak hold is missing.</summary>
    public VolumeFlow? LeakRateVisible => LeakHold is { } hold
        ? VolumeFlow.FromMillilitersPerMinute(Plan.Proof.Filled.LossFor(2 * hold.FallUncertainty,
            hold.Planned.Pressure).Milliliters / hold.Held.Minutes)
        : null;

    /// <summary>Fall at working pressure in ten minutes over working pressure; none where the leak hold is missing.</summary>
    public Ratio? FallInTenMinutes => LeakHold is { } hold
        ? Ratio.FromPercent(100 * hold.Fall.Bars / hold.Held.Minutes * 10 / Plan.Proof.WorkingPressure.Bar)
        : null;

    /// <summary>SHA-256 of plan and readings in SI units, in hexadecimal: another reading, plan, serial or day gives another one.</summary>
    public string Fingerprint { get; }

    /// <summary>The vessel as proved by this record: what it may be filled to, and what that rests on. Source: the rating's rule
    /// set.</summary>
    /// <param name="rating">The rating of the vessel's design.</param>
    /// <exception cref="InvalidDesignException">The record doesn't prove the vessel; carries every reason.</exception>
    public ProvedVessel ToProvedVessel(Rating rating)
    {
        ArgumentNullException.ThrowIfNull(rating);
        return ProvedVessel.From(this, rating);
    }

    /// <summary>The record as text, for a file of its own: plan, readings, verdict, fingerprint.</summary>
    public string ToJson() => ProofRecordDocument.Write(this);

    /// <summary>Reads a record that <see cref="ToJson"/> wrote. Its readings are judged anew; what it says of itself is not
    /// believed.</summary>
    /// <param name="json">The kept text.</param>
    /// <param name="name">What the text is called in a message: the name of its file.</param>
    /// <exception cref="FormatException">The text is cut off, was edited, or is no proof record.</exception>
    public static ProofRecord FromJson(string json, string name = "The text")
    {
        ArgumentNullException.ThrowIfNull(json);
        return ProofRecordDocument.Read(json, name);
    }

    /// <inheritdoc/>
    public override string Title => $"Proof record, {Plan.Proof.Vessel}: {Verdict.ToString().ToLowerInvariant()}";

    /// <inheritdoc/>
    public override ModelCard Model => new(
        "Reading of a proof log",
        [
            "A hold is the longest stay within 2.5 % of a planned step, in the planned order; 10 % for the one at working pressure.",
            "Falls are straight lines through a hold; water and wall have the logged temperature.",
            "Water lost follows from the fall and the springs of wall, water and trapped air as planned.",
            "At proof pressure a fall may be creep of the laminate as well as a leak; leaks are judged at working pressure.",
        ],
        "Logs of at least 20 readings, one every few seconds.",
        [ProofingSources.Spring, Materials.Fluids.Water.Source, Plan.Proof.Wall.Source, Plan.Proof.Rule.Source, ProofingSources.Steps]);

    /// <inheritdoc/>
    public override IReadOnlyList<ResultLine> Lines =>
    [
        new("Verdict", Verdict.ToString().ToLowerInvariant(), $"planned for a working pressure of {Plan.Proof.WorkingPressure}"),
        .. WorkingPressureShown is { } good && Verdict != ProofVerdict.Reject
            ? [new ResultLine(Verdict == ProofVerdict.Accept ? "Working pressure shown" : "Working pressure the hold would show",
            good.ToString(), $"held at least over the factor of {Digits.Round(Plan.Proof.Rule.Factor, 4)}")] : Array.Empty<ResultLine>(),
        new("Maximum pressure", MaximumPressure.ToString(), $"planned {Plan.ProofPressure}"),
        .. HeldAtLeast is { } held ? [new ResultLine("Held at least", held.ToString(),
            $"for {ProofPlan.Seconds(ProofHold!.Held)}; lowest reading less the gauge's {Digits.Round(Readings.GaugeError.Bars, 2)} bar")]
            : Array.Empty<ResultLine>(),
        .. LeakRate is { } rate ? [new ResultLine("Leak at working pressure", $"{Digits.Round(rate.MillilitersPerMinute, 2)} mL/min",
            $"{Digits.Round(FallInTenMinutes!.Value.Percent, 2)} % in ten minutes; the log could tell "
            + $"{Digits.Round(LeakRateVisible!.Value.MillilitersPerMinute, 2)} mL/min")] : Array.Empty<ResultLine>(),
        .. Expansion is { } e
            ? [
                new ResultLine("Total expansion at proof", ProofPlan.Millilitres(e.Total),
                    $"of the wall alone, expected {ProofPlan.Millilitres(Plan.Proof.Filled.WallExpansion(Plan.ProofPressure))}; of the "
                    + $"{ProofPlan.Millilitres(Plan.WaterToPump)} that the plan pumps, the rest goes into water and air as they "
                    + "are compressed"),
                new ResultLine("Permanent expansion", $"{Digits.Round(e.Permanent.Milliliters, 2)} mL, "
                    + $"{Digits.Round(e.PermanentShare.Percent, 2)} %", $"limit {Plan.Proof.Rule.PermanentLimit.Show()}"),
                new ResultLine("Trapped air", $"{Digits.Round(e.TrappedAir.Milliliters, 2)} mL",
                    $"planned {ProofPlan.Millilitres(Plan.Proof.TrappedAir)}"),
            ]
            : Array.Empty<ResultLine>(),
        .. TapeExpansion is { } t
            ? [
                new ResultLine("Growth by tape and rule", t.Total.ToString(), $"{t.Around} around, {t.Along} along; expected "
                    + ProofPlan.Millilitres(Plan.Proof.Filled.WallExpansion(Plan.ProofPressure))),
                new ResultLine("Permanent expansion by tape and rule", t.PermanentShare?.ToString() ?? "not shown",
                    $"limit {Plan.Proof.Rule.PermanentLimit.Show()}"),
                new ResultLine("Trapped air by water pumped", t.TrappedAir?.ToString() ?? "not shown"),
            ]
            : Array.Empty<ResultLine>(),
        .. Leaks.Select(l => new ResultLine($"Leak, {TapeJudgement.NameOf(l.Seen.Place)}", TapeJudgement.NameOf(l.Action),
            $"{Digits.Round(l.Seen.Rate.Hertz * 60, 2)} drops a minute at {l.Seen.At}")),
        // A hold that isn't in the log stands among the findings.
        .. Holds.Select((h, i) => h is null ? null : new ResultLine($"Step {i + 1}, {Plan.Steps[i].Pressure}",
            $"held {ProofPlan.Seconds(h.Held)}",
            $"fell {Digits.Round(h.Fall.Bars, 2)} ± {Digits.Round(h.FallUncertainty.Bars, 1)} bar, warmth taken off")).OfType<ResultLine>(),
    ];

    /// <inheritdoc/>
    public override IReadOnlyList<Caution> Cautions => Provenance.Cautions.ForProof;

    /// <inheritdoc/>
    public override Working Working
    {
        get
        {
            List<WorkingStep> steps = [];
            if (WorkingPressureShown is { } good)
                steps.Add(new("Working pressure proved", @"p_w = \min\left(p_{w,plan},\ \frac{p_{low} - e}{f}\right)",
                    $"min({Plan.Proof.WorkingPressure}, ({ProofHold!.Minimum} − {Digits.Round(Readings.GaugeError.Bars, 2)} bar) / "
                    + $"{Digits.Round(Plan.Proof.Rule.Factor, 4)})", good.ToString(), Plan.Proof.Rule.Source));
            if (LeakHold is { } hold)
            {
                var warmth = Plan.Proof.Filled.RiseFor(hold.Warming, hold.Planned.Pressure);
                steps.Add(new("Fall at working pressure", @"\Delta p = \Delta p_{gauge} + \left(\frac{dp}{dT}\right) \Delta T",
                    $"{Digits.Round(hold.Fall.Bars - warmth.Bars, 3)} bar + {Digits.Round(warmth.Bars, 3)} bar for "
                    + $"{Digits.Round(hold.Warming.Kelvins, 2)} K",
                    $"{Digits.Round(hold.Fall.Bars, 3)} bar in {ProofPlan.Seconds(hold.Held)}", Materials.Fluids.Water.Source));
                steps.Add(new("Leak", @"\dot V = \frac{\Delta p}{t}\,\frac{dV}{dp}",
                    $"{Digits.Round(hold.Fall.Bars, 3)} bar / {Digits.Round(hold.Held.Minutes, 3)} min × "
                    + $"{Digits.Round(1 / Plan.Proof.Filled.DropFor(1.Millilitres(), hold.Planned.Pressure).Bars, 3)} mL/bar",
                    $"{Digits.Round(LeakRate!.Value.MillilitersPerMinute, 3)} mL/min", ProofingSources.Spring));
            }

            if (Expansion is { } e)
                steps.Add(new("Permanent share", @"\frac{\Delta V_{perm}}{\Delta V_{wall}}",
                    $"{Digits.Round(e.Permanent.Milliliters, 3)} mL / {Digits.Round(e.Total.Milliliters, 3)} mL",
                    $"{Digits.Round(e.PermanentShare.Percent, 3)} %", Plan.Proof.Rule.Source));
            if (TapeExpansion is { } tape)
                steps.Add(new("Growth by tape and rule", @"\frac{\Delta V}{V} = (1 + \epsilon_h)^2\,(1 + \epsilon_a) - 1",
                    $"{tape.Around} around, {tape.Along} along, of {ProofPlan.Millilitres(Plan.Proof.Volume)}", tape.Total.ToString(),
                    ProofingSources.Cylinder));
            return new(Title, steps);
        }
    }
}

/// <summary>What a proof log says of the vessel.</summary>
public enum ProofVerdict
{
    /// <summary>It held: the working pressure shown is what it held over the factor, at most the one it was planned for.</summary>
    Accept,

    /// <summary>The log can't decide: mend what is named and proof-test the vessel again.</summary>
    Retest,

    /// <summary>It did not hold, or took a set: cut it up.</summary>
    Reject,
}
