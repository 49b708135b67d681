using NotebookKit.Provenance;
using NotebookKit.Quantities;
using NotebookKit.Vessels.Bursting;
using NotebookKit.Vessels.Testing;
using NotebookKit.Vessels.Uncertainty;

namespace NotebookKit.Vessels.Ratings;

/// <summary>Turns a design burst into a rating, or refuses.</summary>
internal static class RatingModel
{
    /// <summary>Part of a closure's first yield that a proof may come to [-]; common practice, no source.</summary>
    private const double YieldShare = 0.9;

    private static readonly ValidRange<GaugePressure> Wanted = new(0.5.BarGauge(), 300.BarGauge());

    public static Rating Rate(BurstPrediction prediction, RuleSet rules, GaugePressure? wanted, VesselEvidence evidence,
        TestedVessels known)
    {
        InvalidDesignException.ThrowIfAny(rules.Name, rules.Validate());
        var (vessel, tests) = (prediction.Vessel, evidence.Tests);
        List<Finding> findings = [.. prediction.RatingRefusals];
        List<Finding> seen = [.. EvidenceCheck.Find(vessel, tests, known)];
        // What can't be of this design teaches nothing; the rating is refused for it below.
        var learning = (seen.Exists(f => f.Severity == FindingSeverity.Error) ? VesselEvidence.Of() : evidence)
            .LearnParts(prediction, known);
        var (designBurst, basis) = Basis(prediction, learning);
        var byBurst = designBurst / rules.Burst;
        var capped = rules.MaximumPressure is { } most && most < byBurst;
        var highest = capped ? rules.MaximumPressure!.Value : byBurst;
        if (capped) findings.Add(VesselsFindings.BurstAloneWouldAllowMore(byBurst, rules.Name, highest));
        if (prediction.Yield is { } soft && YieldShare * soft.Burst / rules.Proof is var byYield && byYield < highest)
        {
            findings.Add(VesselsFindings.ProofMustStayBelowYield(soft.Name, soft.Burst, YieldShare, byYield));
            highest = byYield;
        }

        if (rules.TargetChance is { } chance)
        {
            var byRisk = learning.PressureOfChance(chance);
            findings.Add(byRisk < highest ? VesselsFindings.RiskSetsPressure(FillRisk.Of(chance), byRisk)
                : VesselsFindings.FactorCapsRisk(FillRisk.Of(chance), byRisk, rules.Burst, highest));
            if (byRisk < highest) (highest, capped) = (byRisk, true);
        }

        // What the library's models of filling and flying end at is where a rating ends.
        if (highest > Wanted.Maximum * rules.Overshoot)
        {
            findings.Add(VesselsFindings.RatingEndsAt(highest / rules.Overshoot, Wanted.Maximum));
            (highest, capped) = (Wanted.Maximum * rules.Overshoot, true);
        }

        var expected = highest;
        if (wanted is { } asked)
        {
            expected = asked * rules.Overshoot;
            if (Wanted.Find(asked, "working pressure wanted", "Club vessels work at 5 to 90 bar; was another unit meant?")
                is { } range) findings.Add(range);
            else if (expected > highest)
            {
                findings.Add(VesselsFindings.WorkingPressureNotAllowed(
                    asked, rules.Name, highest / rules.Overshoot, designBurst, capped, highest, rules.Burst, rules.Overshoot,
                    learning.Weakest.Part.Name));
            }
        }

        if (!findings.Any(f => f.Severity == FindingSeverity.Error)) FindProof(findings, prediction, learning, rules, designBurst,
            rules.Proof * expected);
        findings.AddRange(seen);
        findings.AddRange(EvidenceCheck.FindProof(vessel, tests, rules.Proof * expected));
        findings.AddRange(EvidenceCheck.FindLeaks(tests, rules.Proof * expected));
        if (prediction.Leak is { } leak && leak.Burst < rules.Proof * expected)
            findings.Add(VesselsFindings.LeaksBelowProof(leak.Name, leak.Burst, leak.Cause, rules.Proof * expected,
                expected / rules.Overshoot));
        findings.AddRange(EvidenceCheck.FindGrowths(vessel, tests, known));
        findings.Add(Finding.Note(RuleSets.NoneCovers));
        if (rules.Source.Kind == SourceKind.Unverified) findings.Add(VesselsFindings.FactorsAreUnverified(rules.Name));
        findings.AddRange(prediction.Findings.Where(f => f.Severity != FindingSeverity.Note));
        findings.AddRange(learning.Findings.Where(f => f.Severity != FindingSeverity.Note));
        var risk = RiskAt(learning, expected);
        if (rules.TargetChance is { } target) findings.AddRange(OfRisk(risk, target));
        findings.AddRange(vessel.OwnValues);
        return new Rating(prediction, learning, tests, rules, (designBurst, basis, risk), expected, findings,
            Work(prediction, rules, designBurst, basis, expected));
    }

    public static FillRisk RiskAt(PartLearning learning, GaugePressure fill) => new(fill, learning.ChanceBelow(fill), learning.Tests.Count,
        learning.Tests.Count(t => t is PartBurst && t.Pressure <= fill));

    /// <summary>
    /// One basis for every rating: the B-basis by what is believed of each part. A test below the low end of the prediction can't show that
    /// a vessel is better than that end; until one has gone past it, the end is not exceeded.
    /// </summary>
    private static (GaugePressure Burst, string Basis) Basis(BurstPrediction prediction, PartLearning learning)
    {
        var fabrication = prediction.Vessel.Fabrication;
        var low = (prediction.Vessel with { Fabrication = fabrication
            with { Efficiency = fabrication.EfficiencyLow } }).Burst(prediction.Criterion).KnownLow;
        var after = learning.Tests.Count switch { 0 => "before any test", 1 => "after the test of 1 vessel",
            var n => $"after tests of {n} vessels" };
        return learning.BBasis > low && !learning.Tests.Any(t => t.Pressure > low)
            ? (low, $"the low end of the predicted burst at {fabrication.EfficiencyLow.Show()} of the fibre's strength, which no test has "
                + "gone past yet")
            : (learning.BBasis, $"the B-basis of the vessel {after}: nine in ten burst above, with 95 % confidence");
    }

    private static IEnumerable<Finding> OfRisk(FillRisk risk, double target)
    {
        if (risk.RestsOnModel)
            yield return VesselsFindings.RiskRestsOnModel(risk.ToString(), risk.Tests,
                risk.Showable is { } shown ? FillRisk.Of(shown) : null);
        yield return VesselsFindings.FillsToShowRisk(FillRisk.Of(target), FillRisk.FillsToShowOf(target));
    }

    /// <summary>A proof of the vessel as it is taken to be made, that takes a ply or a part past its allowed share does damage that no
    /// later look will find.</summary>
    private static void FindProof(List<Finding> findings, BurstPrediction prediction, PartLearning learning, RuleSet rules,
        GaugePressure designBurst, GaugePressure proof)
    {
        var limit = rules.MaximumProofUse.DecimalFractions;
        if (proof >= prediction.WallBurst)
        {
            findings.Add(VesselsFindings.ProofAboveWallBurst(proof, prediction.WallBurst));
            return;
        }

        var held = prediction.Vessel.Expansion(proof);
        // What the fibres deliver is less, or more, in the measure in which the wall's own B-basis is.
        var scale = prediction.WallBurst / learning.Parts[0].BBasis;
        foreach (var ply in held.Plies.Where(p => p.FibreUse.DecimalFractions * scale > limit))
        {
            findings.Add(VesselsFindings.ProofStrainsFibres(
                proof, ply.Ply, 100 * ply.FibreUse.DecimalFractions * scale, rules.MaximumProofUse, rules.Proof / limit));
        }

        if (!findings.Any(f => f.Severity == FindingSeverity.Error) && proof / designBurst > limit)
        {
            findings.Add(VesselsFindings.ProofStrainsPart(
                proof, learning.Weakest.Part.Name, 100 * (proof / designBurst), rules.MaximumProofUse, rules.Proof / limit));
        }

        if (!held.IsSound)
        {
            var first = held.Steps[0];
            findings.Add(VesselsFindings.ProofCracksResin(proof, first.Pressure, !(first.Ply == "liner") ? first.Ply : null));
        }
    }

    private static Working Work(BurstPrediction prediction, RuleSet rules, GaugePressure designBurst, string basis, GaugePressure expected)
        => new($"Rating by {rules.Name}",
    [
        new("Design burst", @"p_b", basis, designBurst.ToString(), VesselSources.Jones),
        new("Maximum expected pressure", @"p_{MEOP} = \frac{p_b}{k_b}",
            $"{designBurst} / {Digits.Round(rules.Burst)}{(expected < designBurst / rules.Burst ? ", less as wanted or as the rules go" :
                "")}", expected.ToString(), rules.Source),
        new("Working pressure", @"p_w = \frac{p_{MEOP}}{k_o}", $"{expected} / {Digits.Round(rules.Overshoot)}",
            (expected / rules.Overshoot).ToString(), Source.CommonPractice("Five per cent for regulator creep and warming")),
        new("Proof pressure", @"p_p = k_p\,p_{MEOP}", $"{Digits.Round(rules.Proof)} × {expected}", (rules.Proof * expected).ToString(),
            rules.Source),
        new("Share of the design burst at the proof", @"\frac{p_p}{p_b}", $"{rules.Proof * expected} / {designBurst}",
            $"{Digits.Round(100 * (rules.Proof * expected / designBurst))} %, limit {rules.MaximumProofUse.Show()}",
            Source.CommonPractice("Two thirds as the highest use in a proof")),
    ]);
}
