using NotebookKit.Provenance;
using NotebookKit.Quantities;
using UnitsNet;

namespace NotebookKit.Vessels.Ratings;

/// <summary>Factors by which a burst becomes a rating.</summary>
/// <param name="Name">What it is called.</param>
/// <param name="Proof">Proof pressure over maximum expected pressure [-]; 1 to 3.</param>
/// <param name="Burst">Burst pressure over maximum expected pressure [-]; above the proof factor, up to 10.</param>
/// <param name="Source">Where the factors come from, and how far that carries.</param>
/// <param name="Covers">What vessels it was written for.</param>
public sealed record RuleSet(string Name, double Proof, double Burst, Source Source, string Covers)
{
    // One and a half times as a proof is two thirds of it.
    private const double LeastBurst = 2.25;

    private static readonly ValidRange<double> Chances = new(1e-6, 0.1);

    /// <summary>Maximum expected pressure over working pressure [-]: regulator creep, warming in the sun; 1 to 1.5. Common practice, no
    /// source.</summary>
    public double Overshoot { get; init; } = 1.05;

    /// <summary>Largest share of its strength that any part or ply may be proved at; 30 to 95 %. Common practice, no source.</summary>
    public Ratio MaximumProofUse { get; init; } = 67.Percent();

    /// <summary>Highest maximum expected pressure that the rules were written for; none where they set none.</summary>
    public GaugePressure? MaximumPressure { get; init; }

    /// <summary>Chance that a vessel bursts at a fill that a club is ready to run [-]; 1e-6 to 0.1; none where a fixed factor alone
    /// counts.</summary>
    public double? TargetChance { get; init; }

    /// <summary>Where people are and what covers them while a vessel is under pressure; empty where it isn't given. A risk is that of a
    /// burst, not of an injury: distance and cover stand between both.</summary>
    public string People { get; init; } = "";

    /// <summary>
    /// A rule that rates by the chance of a burst. The pressure is never above the design burst over 2.25, nor so high that a proof of one
    /// and a half times would take a part past two thirds of its strength: a chance alone, whose tail no club can test, doesn't rate.
    /// Factors: common practice, no source.
    /// </summary>
    /// <param name="targetChance">Chance of a burst at a fill that the club is ready to run [-]; 1e-6 to 0.1.</param>
    /// <param name="people">Where people are and what covers them.</param>
    /// <exception cref="OutOfRangeException">The chance is out of range.</exception>
    public static RuleSet ByRisk(double targetChance, string people = "") => new(
        $"Risk rule, one burst in {Digits.Round(1 / Chances.Check(targetChance, "target chance of a burst at a fill",
            "0.001 is one vessel in a thousand."), 2)}",
        RuleSets.Club.Proof, LeastBurst, Source.CommonPractice("Target chance chosen by the club; burst at least 2.25 times, proof one and "
            + "a half times the maximum expected pressure"), "a club's own vessels, behind cover, each of them proved")
    {
        TargetChance = targetChance,
        People = people,
    };

    /// <summary>All that is wrong with it.</summary>
    public IReadOnlyList<Finding> Validate()
    {
        var findings = new List<Finding>();
        Add(new ValidRange<double>(1, 3).Find(Proof, $"{Name}: proof factor", "1.25 to 1.67 is usual."));
        Add(new ValidRange<double>(1, 10).Find(Burst, $"{Name}: burst factor", "2.25 to 3.65 is usual, 5 to 6 for contact-moulded walls."));
        if (!(Burst > Proof)) findings.Add(VesselsFindings.BurstFactorBelowProofFactor(Name, Burst, Proof));
        Add(new ValidRange<double>(1, 1.5).Find(Overshoot, $"{Name}: overshoot", "5 % is common practice."));
        if (TargetChance is { } chance) Add(Chances.Find(chance, $"{Name}: target chance of a burst at a fill",
            "0.001 is one vessel in a thousand."));
        if (MaximumPressure is { } most) Add(new ValidRange<GaugePressure>(0.5.BarGauge(), 1000.BarGauge()).Find(most,
            $"{Name}: maximum pressure", "Leave it out where the rules set none."));
        Add(new ValidRange<Ratio>(30.Percent(), 95.Percent()).Find(MaximumProofUse, $"{Name}: highest use in a proof",
            "Two thirds is common practice."));
        return findings;

        void Add(Finding? finding)
        {
            if (finding is not null) findings.Add(finding);
        }
    }
}
