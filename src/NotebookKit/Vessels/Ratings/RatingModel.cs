using NotebookKit.Provenance;
using NotebookKit.Quantities;
using NotebookKit.Vessels.Bursting;
using NotebookKit.Vessels.Testing;

namespace NotebookKit.Vessels.Ratings;

/// <summary>Turns a design burst into a rating, or refuses.</summary>
internal static class RatingModel
{
    /// <summary>Part of a closure's first yield that a proof may come to [-]; common practice, no source.</summary>
    private const double YieldShare = 0.9;

    private static readonly ValidRange<GaugePressure> Wanted = new(0.5.BarGauge(), 300.BarGauge());

    public static Rating Rate(BurstPrediction prediction, BurstPrediction proved, RuleSet rules, GaugePressure designBurst, string basis,
        GaugePressure? wanted, IReadOnlyList<VesselTest> tests)
    {
        InvalidDesignException.ThrowIfAny(rules.Name, rules.Validate());
        var findings = new List<Finding>();
        var byBurst = designBurst / rules.Burst;
        var capped = rules.MaximumPressure is { } most && most < byBurst;
        var highest = capped ? rules.MaximumPressure!.Value : byBurst;
        if (capped) findings.Add(VesselsFindings.BurstAloneWouldAllowMore(byBurst, rules.Name, highest));
        if (proved.Yield is { } soft && YieldShare * soft.Burst / rules.Proof is var byYield && byYield < highest)
        {
            findings.Add(VesselsFindings.ProofMustStayBelowYield(soft.Name, soft.Burst, YieldShare, byYield));
            highest = byYield;
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
                    proved.LimitingPart));
            }
        }

        if (!findings.Any(f => f.Severity == FindingSeverity.Error)) FindProof(findings, proved, rules, designBurst,
            rules.Proof * expected);
        findings.AddRange(EvidenceCheck.Find(prediction.Vessel, tests));
        findings.AddRange(EvidenceCheck.FindProof(prediction.Vessel, tests, rules.Proof * expected));
        findings.Add(Finding.Note(RuleSets.NoneCovers));
        if (rules.Source.Kind == SourceKind.Unverified) findings.Add(VesselsFindings.FactorsAreUnverified(rules.Name));
        findings.AddRange(prediction.Findings.Where(f => f.Severity != FindingSeverity.Note));
        findings.AddRange(prediction.Vessel.OwnValues);
        return new Rating(prediction, rules, designBurst, basis, proved.LimitingPart, expected, findings,
            Work(prediction, rules, designBurst, basis, expected));
    }

    /// <summary>A proof of the vessel as it is taken to be made, that takes a ply or a part past its allowed share does damage that no
    /// later look will find.</summary>
    private static void FindProof(List<Finding> findings, BurstPrediction prediction, RuleSet rules, GaugePressure designBurst,
        GaugePressure proof)
    {
        var limit = rules.MaximumProofUse.DecimalFractions;
        if (proof >= prediction.WallBurst)
        {
            findings.Add(VesselsFindings.ProofAboveWallBurst(proof, prediction.WallBurst));
            return;
        }

        var held = prediction.Vessel.Expansion(proof);
        // Where the rating rests on less than the mean prediction, what the fibres deliver is less in the same measure.
        var rested = prediction.WeakestPart == prediction.Parts[0] ? designBurst : prediction.WallLow;
        var scale = Math.Max(1, prediction.WallBurst / rested);
        foreach (var ply in held.Plies.Where(p => p.FibreUse.DecimalFractions * scale > limit))
        {
            findings.Add(VesselsFindings.ProofStrainsFibres(
                proof, ply.Ply, 100 * ply.FibreUse.DecimalFractions * scale, rules.MaximumProofUse, rules.Proof / limit));
        }

        if (!findings.Any(f => f.Severity == FindingSeverity.Error) && proof / designBurst > limit)
        {
            findings.Add(VesselsFindings.ProofStrainsPart(
                proof, prediction.LimitingPart, 100 * (proof / designBurst), rules.MaximumProofUse, rules.Proof / limit));
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
