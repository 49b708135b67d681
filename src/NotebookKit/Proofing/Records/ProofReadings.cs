using NotebookKit.Proofing.Plans;
using NotebookKit.Provenance;
using NotebookKit.Quantities;
using UnitsNet;

namespace NotebookKit.Proofing.Records;

/// <summary>A proof as it was logged, to be judged against its plan.</summary>
/// <remarks>
/// Source: springs side by side (<see cref="FilledVessel"/>) turn a fall of the gauge into water lost; least squares through each hold; the
/// permanent part against the rule's limit.
/// </remarks>
public sealed record ProofReadings
{
    /// <summary>The proof that was planned.</summary>
    public required Proof Proof { get; init; }

    /// <summary>Name of the vessel as the log gives it; none where the log doesn't say.</summary>
    public string? Vessel { get; init; }

    /// <summary>Serial of the very vessel, as it stands on it; none where the log doesn't say: such a record proves no vessel.</summary>
    public string? Serial { get; init; }

    /// <summary>Mark of the vessel's design as it was proved; none where nobody wrote it down.</summary>
    public string? MadeAs { get; init; }

    /// <summary>Day of the proof; none where the log doesn't say: such a record proves no vessel.</summary>
    public DateOnly? Day { get; init; }

    /// <summary>The clock, in s, rising.</summary>
    public required Series Time { get; init; }

    /// <summary>The gauge, in bar gauge.</summary>
    public required Series Pressure { get; init; }

    /// <summary>Temperature of the water or the vessel, in °C; without it a slow fall can't be told from cooling.</summary>
    public Series? Temperature { get; init; }

    /// <summary>Water pumped in less water let out, in mL; without it a permanent expansion can't be told.</summary>
    public Series? Expansion { get; init; }

    /// <summary>Girth and length by tape and rule; none where they weren't read. A burette, where there is one, goes before it.</summary>
    public TapeReadings? Tape { get; init; }

    /// <summary>Drops counted, a place each; a place that was watched and stayed dry has a rate of 0. Empty where nobody looked.</summary>
    public IReadOnlyList<DropsSeen> Drops { get; init; } = [];

    /// <summary>Sounds heard; empty where none were, or nobody listened.</summary>
    public IReadOnlyList<SoundHeard> Sounds { get; init; } = [];

    /// <summary>What the gauge can't tell apart; 0.001 to 5 bar, 0.1 bar unless said.</summary>
    public Pressure GaugeError { get; init; } = 0.1.Bar();

    /// <summary>Fall at working pressure that is accepted in ten minutes, warmth and sudden drops taken off; 0.1 % to 10 %, 1 % unless said
    /// (common practice, no source).</summary>
    public Ratio LeakLimit { get; init; } = 1.Percent();

    /// <summary>What has to be said about the log that they come from: what was guessed, skipped, drawn and left out. They change no
    /// verdict and are said with it.</summary>
    public IReadOnlyList<Finding> OfLog { get; init; } = [];

    /// <summary>Everything wrong with these readings.</summary>
    public IReadOnlyList<Finding> Validate()
    {
        List<Finding?> findings =
        [
            Column(Time, "s", "time"), Column(Pressure, "bar gauge", "pressure"), Column(Temperature, "°C", "temperature"),
                Column(Expansion, "mL", "expansion"),
            Time.Count < 20 ? ProofingFindings.TooFewReadings(Time.Count) : null,
            Vessel is { } name && !string.Equals(name.Trim(), Proof.Vessel.Trim(), StringComparison.OrdinalIgnoreCase)
                ? ProofingFindings.LogIsOfAnotherVessel(name, Proof.Vessel)
                : null,
            Rising() ? null : ProofingFindings.TimesDoNotRise(),
            new ValidRange<Pressure>(0.001.Bar(), 5.Bar()).Find(GaugeError.ToUnit(UnitsNet.Units.PressureUnit.Bar), "error of the gauge",
                "A gauge that can't tell 5 bar apart proves nothing."),
            new ValidRange<Ratio>(0.1.Percent(), 10.Percent()).Find(LeakLimit.ToUnit(UnitsNet.Units.RatioUnit.Percent),
                "limit of the leak", "A proof vessel holds its pressure within a few per cent in ten minutes."),
        ];
        findings.AddRange(Tape?.Validate() ?? []);
        findings.AddRange(Drops.SelectMany(d => d.Validate()));
        findings.AddRange(Sounds.SelectMany(d => d.Validate()));
        findings.AddRange(Proof.Validate());
        return findings.OfType<Finding>().ToList();
    }

    /// <summary>Judges the proof: which steps were held, what leaked, what stays grown; accept, repeat or reject with every
    /// reason.</summary>
    /// <exception cref="InvalidDesignException">The readings can't be judged; all reasons are in it.</exception>
    public ProofRecord Judge()
    {
        var findings = Validate();
        InvalidDesignException.ThrowIfAny($"Proof log of {Proof.Vessel}", findings);
        double[] seconds = [.. Time.Values], bar = [.. Pressure.Values];
        double[]? celsius = Temperature is null ? null : [.. Temperature.Values];
        var plan = Proof.Plan();
        var rows = HoldFinder.Rows(plan.Steps, Proof.Steps.Count - 1, seconds, bar, GaugeError.Bars);
        var holds = plan.Steps.Select((step, i) => rows[i] is { } r
            ? HoldFinder.Read(step, r, seconds, bar, celsius, Proof.Filled, GaugeError.Bars) : null).ToList();
        return new ProofRecord(this, plan, holds, ExpansionReading.From(this, plan, holds), TapeExpansion.From(this, plan, holds));
    }

    private Finding? Column(Series? column, string unit, string name)
    {
        if (column is null) return null;
        if (column.Unit != unit) return ProofingFindings.UnitOfReadingsRefused(name, column.Unit, unit);
        if (column.Count != Time.Count) return ProofingFindings.ReadingsAndClockDiffer(name, column.Count, Time.Count);
        return column.Values.All(double.IsFinite) ? null : ProofingFindings.ReadingsAreNotNumbers(name);
    }

    private bool Rising()
    {
        for (var i = 1; i < Time.Count; i++)
            if (!(Time[i] > Time[i - 1]))
                return false;
        return true;
    }
}
