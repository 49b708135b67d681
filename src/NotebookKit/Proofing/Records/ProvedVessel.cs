using System.Globalization;
using NotebookKit.Proofing.Plans;
using NotebookKit.Provenance;
using NotebookKit.Quantities;
using NotebookKit.Vessels;
using NotebookKit.Vessels.Bursting;
using NotebookKit.Vessels.Ratings;
using NotebookKit.Vessels.Testing;
using UnitsNet;

namespace NotebookKit.Proofing.Records;

/// <summary>
/// A very vessel that held a proof: which one, when, how much, and what it may be filled to since. Only an accepted proof record makes one.
/// Source: the rating's rule set; the lowest reading of the proof hold.
/// </summary>
/// <remarks>It says what the vessel held on that day. Damage, heat, repair and time undo it; the service record tells of those.</remarks>
public sealed class ProvedVessel : IResult, IEquatable<ProvedVessel>
{
    // A proof with less than these proves less than it says: 49 CFR 178 special permits ask 60 s at proof; five minutes for leaks is common
    // practice.
    private static readonly Duration ShortestHold = 60.Seconds();
    private static readonly Duration ShortestLeakHold = 5.Minutes();
    private static readonly Ratio MostLeak = 1.Percent();
    private static readonly Duration LongestGap = 10.Seconds();
    private const double VolumeTolerance = 0.005;

    // Chance of a burst at a fill that a risk rule may be flown on. Common practice, no source.
    private const double MostChance = 1e-3;

    // Another layup under the same name grows by another amount. Common practice, no source.
    private const double GrowthTolerance = 0.1;

    private ProvedVessel(ProofRecord record, Rating rating, GaugePressure held, string serial, DateOnly day)
    {
        Record = record;
        Rating = rating;
        Held = held;
        Serial = serial;
        Day = day;
        var factor = rating.ProofPressure / rating.WorkingPressure;
        ByProof = held / factor;
        Allowed = ByProof < rating.WorkingPressure ? ByProof : rating.WorkingPressure;
    }

    /// <summary>The accepted record.</summary>
    public ProofRecord Record { get; }

    /// <summary>The rating that the proof stands for.</summary>
    public Rating Rating { get; }

    /// <summary>Name of the vessel.</summary>
    public string Vessel => Rating.Vessel.Name;

    /// <summary>Serial, as it stands on the vessel.</summary>
    public string Serial { get; }

    /// <summary>Name of the rule set it was rated and proved by.</summary>
    public string RuleSet => Rating.Rules.Name;

    /// <summary>Pressure held: the lowest reading of the proof hold less the error of the gauge.</summary>
    public GaugePressure Held { get; }

    /// <summary>Day of the proof.</summary>
    public DateOnly Day { get; }

    /// <summary>Fingerprint of the record: SHA-256 of plan and readings, in hexadecimal.</summary>
    public string Fingerprint => Record.Fingerprint;

    /// <summary>Pressure that the proof allows: what was held over the rating's own proof factor.</summary>
    public GaugePressure ByProof { get; }

    /// <summary>Pressure it may be filled to by rating and proof, the lower of both; a service record may allow less.</summary>
    public GaugePressure Allowed { get; }

    /// <summary>What filling, propulsion and flight know of it; its rated pressure is the allowed one.</summary>
    public Chamber Chamber => Chamber.Proved(Rating.Vessel.Volume, Rating.Vessel.Liner.Bore, Allowed, Rating.Rules.Overshoot, ToString());

    /// <inheritdoc/>
    public string Title => $"Proved vessel, {Vessel} {Serial}";

    /// <inheritdoc/>
    public ModelCard Model => new(
        "Proved vessel",
        [
            "What counts is the lowest reading of the proof hold, less what the gauge can't tell.",
            "The factor between proof and fill is that of the rating's rule set, whatever the plan of the proof used.",
            "A held proof tells of this very vessel as it was that day.",
        ],
        "Until damage, heat, repair, age or the proof interval end it.",
        [Rating.Rules.Source, ProofingSources.Steps]);

    /// <inheritdoc/>
    public ResultStatus Status => ResultStatus.Completed;

    /// <inheritdoc/>
    public IReadOnlyList<ResultLine> Lines =>
    [
        new("Vessel", Vessel, $"serial {Serial}"),
        new("Held", Held.ToString(), $"on {Iso(Day)}, lowest reading of the proof hold less the gauge's error"),
        new("Allowed by the proof", ByProof.ToString(), $"held over {Digits.Round(Rating.ProofPressure / Rating.WorkingPressure, 4)}, "
            + $"{RuleSet}"),
        new("Allowed by the rating", Rating.WorkingPressure.ToString(), Rating.Basis),
        new("Maximum fill pressure", Allowed.ToString(), ByProof < Rating.WorkingPressure ? "the proof sets it" : "the rating sets it"),
        new("Permanent expansion", Record.Expansion is { } burette ? $"{Digits.Round(burette.PermanentShare.Percent, 2)} %"
            : Record.TapeExpansion?.PermanentShare?.ToString() ?? "not shown",
            $"{(Record.Expansion is null ? "by tape and rule" : "by burette")}; limit {Record.Plan.Proof.Rule.PermanentLimit.Show()}"),
        new("Record", Fingerprint[..12], "first twelve digits of its fingerprint"),
    ];

    /// <inheritdoc/>
    public IReadOnlyList<Finding> Findings => [.. Record.Findings, .. Rating.Findings.Where(f => f.Severity == FindingSeverity.Warning)];

    /// <inheritdoc/>
    public IReadOnlyList<Caution> Cautions => Provenance.Cautions.ForProof;

    /// <inheritdoc/>
    public Working Working => new(Title,
    [
        new("Allowed by the proof", @"p_{allowed} = \frac{p_{held}}{k_p\,k_o}",
            $"{Held} / ({Digits.Round(Rating.Rules.Proof, 4)} × {Digits.Round(Rating.Rules.Overshoot, 4)})", ByProof.ToString(),
            Rating.Rules.Source),
        new("Maximum fill pressure", @"p = \min(p_{rated},\ p_{allowed})", $"min({Rating.WorkingPressure}, {ByProof})", Allowed.ToString(),
            Rating.Rules.Source),
    ]);

    /// <summary>Two are the same where their records are.</summary>
    /// <param name="other">Another one.</param>
    public bool Equals(ProvedVessel? other) => other is not null && Fingerprint == other.Fingerprint && Allowed == other.Allowed;

    /// <inheritdoc/>
    public override bool Equals(object? obj) => Equals(obj as ProvedVessel);

    /// <inheritdoc/>
    public override int GetHashCode() => Fingerprint.GetHashCode(StringComparison.Ordinal);

    /// <summary>For example "Curlew C-1, held 60 bar gauge on 2026-03-14, record 1f09ab34c2de".</summary>
    public override string ToString() => $"{Vessel} {Serial}, held {Held} on {Iso(Day)}, record {Fingerprint[..12]}";

    /// <summary>Makes the proved vessel, or says everything that stands against it.</summary>
    internal static ProvedVessel From(ProofRecord record, Rating rating)
    {
        List<Finding> against = [.. Against(record, rating)];
        InvalidDesignException.ThrowIfAny($"Proof of {record.Plan.Proof.Vessel}", against);
        return new(record, rating, record.HeldAtLeast!.Value, record.Readings.Serial!.Trim(), record.Readings.Day!.Value);
    }

    private static IEnumerable<Finding> Against(ProofRecord record, Rating rating)
    {
        var (proof, readings) = (record.Plan.Proof, record.Readings);
        if (record.Verdict != ProofVerdict.Accept)
            yield return ProofingFindings.ProofWasNotAccepted(record.Verdict.ToString().ToLowerInvariant());
        if (record.HeldAtLeast is null)
            yield return ProofingFindings.ProofPressureWasNotHeld();
        if (!rating.IsRated)
        {
            yield return ProofingFindings.RatingWasRefused();
            yield break;
        }

        if (!RuleSets.All.Any(published => IsAsStrict(rating, published)))
            yield return ProofingFindings.RuleSetAsksTooLittle(
                rating.Rules.Name, rating.Rules.Proof, rating.Rules.Burst, rating.Rules.Overshoot, rating.Rules.MaximumProofUse);
        if (rating.Rules.TargetChance is not null && !IsRiskAccepted(rating))
            yield return ProofingFindings.RiskIsTooHigh(rating.Rules.Name, rating.Risk.ToString(), MostChance, rating.Learning.Tests.Count,
                rating.Rules.Proof, RuleSets.Club.Proof);
        if (rating.Tests.OfType<BurstTest>().FirstOrDefault(t => IsOf(t.Id, readings.Serial)) is { } burst)
            yield return ProofingFindings.VesselHasBurst(burst.Id, burst.Pressure);
        if (string.IsNullOrWhiteSpace(readings.Serial))
            yield return ProofingFindings.ProofLogGivesNoSerial();
        if (readings.Day is null)
            yield return ProofingFindings.ProofLogGivesNoDay();
        if (!string.Equals(rating.Vessel.Name.Trim(), proof.Vessel.Trim(), StringComparison.OrdinalIgnoreCase))
            yield return ProofingFindings.ProofIsOfAnotherVessel(proof.Vessel, rating.Vessel.Name);
        if (Math.Abs(proof.Volume / rating.Vessel.Volume - 1) > VolumeTolerance)
            yield return ProofingFindings.ProofIsOfAnotherVolume(proof.Volume, rating.Vessel.Volume, 100 * VolumeTolerance);
        var (planned, rated) = (proof.Wall.VolumeRatio.DecimalFractions / proof.Wall.At.Pascals,
            WallExpansion.Of(rating.Vessel.Expansion(rating.ProofPressure)) is var wall
            ? wall.VolumeRatio.DecimalFractions / wall.At.Pascals : 0);
        if (!(Math.Abs(planned / rated - 1) <= GrowthTolerance))
            yield return ProofingFindings.ProofWasPlannedForAnotherWall(planned / rated, 100 * GrowthTolerance);
        if (proof.ProofHold < ShortestHold)
            yield return ProofingFindings.ProofWasHeldTooShort(ProofPlan.Seconds(proof.ProofHold), ProofPlan.Seconds(ShortestHold));
        if (proof.LeakHold < ShortestLeakHold)
            yield return ProofingFindings.LeaksWereLookedForTooShort(
                ProofPlan.Seconds(proof.LeakHold), ProofPlan.Seconds(ShortestLeakHold));
        if (LongestGapS(record) is var gap && gap > LongestGap.Seconds)
            yield return ProofingFindings.ReadingsOfHoldTooFarApart(gap, ProofPlan.Seconds(LongestGap));
        if (readings.LeakLimit > MostLeak)
            yield return ProofingFindings.LimitOfLeakWasSetTooHigh(readings.LeakLimit, MostLeak);
        if (proof.Rule.PermanentLimit > ProofRule.Club.PermanentLimit)
            yield return ProofingFindings.LimitOfExpansionWasSetTooHigh(proof.Rule.PermanentLimit, ProofRule.Club.PermanentLimit);
    }

    private static bool IsAsStrict(Rating rating, RuleSet published) =>
        rating.Rules.Proof >= published.Proof && rating.Rules.Burst >= published.Burst && rating.Rules.Overshoot >= published.Overshoot
        && rating.Rules.MaximumProofUse <= published.MaximumProofUse && !(rating.MaximumExpectedPressure > published.MaximumPressure);

    // A chance that nobody has tested at all, or a proof that shows less than the club's own, is no ground for a fill.
    private static bool IsRiskAccepted(Rating rating) => rating.Risk.Chance <= MostChance && rating.Learning.Tests.Count > 0
        && rating.Rules.Proof >= RuleSets.Club.Proof;

    private static bool IsOf(string id, string? serial) => string.Equals(id.Trim(), serial?.Trim(), StringComparison.OrdinalIgnoreCase);

    private static double LongestGapS(ProofRecord record)
    {
        if (record.ProofHold is not { } hold) return 0;
        var (from, to, time) = (hold.From.Seconds, (hold.From + hold.Held).Seconds, record.Readings.Time);
        var longest = 0.0;
        for (var i = 1; i < time.Count; i++)
            if (time[i] > from && time[i - 1] < to)
                longest = Math.Max(longest, time[i] - time[i - 1]);
        return longest;
    }

    private static string Iso(DateOnly day) => day.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);
}
