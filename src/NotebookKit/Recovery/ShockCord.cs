using NotebookKit.Provenance;
using NotebookKit.Quantities;
using UnitsNet;

namespace NotebookKit.Recovery;

/// <summary>The cord between two halves that come apart. Source: two free masses on a linear spring, H. Goldstein, Classical Mechanics
/// (unverified).</summary>
/// <param name="Stiffness">Pull per stretch of its whole length; 10 N/m to 1 MN/m. For a cord of given stretch at break: breaking load over
/// stretch.</param>
/// <param name="BreakingLoad">Load at which it or its knot breaks, knots taking half of the cord's own; 1 N to 100 kN.</param>
public sealed record ShockCord(ForcePerLength Stiffness, Force BreakingLoad)
{
    /// <summary>Factor of breaking load over peak load that is wanted [-]; common practice: two.</summary>
    public const double RequiredFactor = 2;

    /// <summary>Everything that is wrong with the cord.</summary>
    public IReadOnlyList<Finding> Validate()
    {
        Finding?[] findings =
        [
            new ValidRange<ForcePerLength>(ForcePerLength.FromNewtonsPerMeter(10), ForcePerLength.FromNewtonsPerMeter(1e6))
                .Find(Stiffness, "cord stiffness", "Divide breaking load by the stretch at break."),
            new ValidRange<Force>(1.Newtons(), 100_000.Newtons()).Find(BreakingLoad, "breaking load of the cord",
                "Pull a sample with its knot."),
        ];
        return findings.OfType<Finding>().ToArray();
    }

    /// <summary>Pull when the halves fly apart and the cord stops them. Source: F = Δv √(k μ) with the reduced mass μ.</summary>
    /// <param name="one">Mass on one end; 1 g to 500 kg.</param>
    /// <param name="other">Mass on the other end; 1 g to 500 kg.</param>
    /// <param name="apart">Speed at which they part; 0.1 to 100 m/s.</param>
    /// <exception cref="InvalidDesignException">The cord can't be computed; carries all findings.</exception>
    /// <exception cref="OutOfRangeException">An input is outside its range.</exception>
    public CordResult Snatch(Mass one, Mass other, Speed apart)
    {
        InvalidDesignException.ThrowIfAny("Cord", Validate());
        var masses = new ValidRange<Mass>(1.Grams(), 500.Kilograms());
        masses.Check(one, "mass on one end of the cord", "Weigh both halves.");
        masses.Check(other, "mass on the other end of the cord", "Weigh both halves.");
        new ValidRange<Speed>(0.1.MetresPerSecond(), 100.MetresPerSecond()).Check(apart, "speed of separation",
            "Some 5 to 15 m/s is usual.");
        var (m1, m2, v, k) = (one.Kilograms, other.Kilograms, apart.MetersPerSecond, Stiffness.NewtonsPerMeter);
        var reduced = m1 * m2 / (m1 + m2);
        var peak = v * Math.Sqrt(k * reduced);
        var stretch = v * Math.Sqrt(reduced / k);
        var findings = new List<Finding>();
        if (peak * RequiredFactor > BreakingLoad.Newtons)
            findings.Add(RecoveryFindings.PeakPullOutOfRange(Force.FromNewtons(peak), BreakingLoad));
        return new CordResult
        {
            Title = "Pull of the cord as the halves part",
            ReducedMass = Mass.FromKilograms(reduced),
            Energy = Energy.FromJoules(reduced * v * v / 2),
            Peak = Force.FromNewtons(peak),
            Stretch = Length.FromMeters(stretch),
            TimeToPeak = Duration.FromSeconds(Math.PI / 2 * Math.Sqrt(reduced / k)),
            Factor = BreakingLoad.Newtons / peak,
            Findings = findings,
            Working = new Working("Cord",
            [
                new("Reduced mass", @"\mu = \frac{m_1\,m_2}{m_1 + m_2}",
                    $"{Digits.Round(m1, 4)} kg × {Digits.Round(m2, 4)} kg / {Digits.Round(m1 + m2, 4)} kg",
                    $"{Digits.Round(reduced, 4)} kg", RecoveryLiterature.Goldstein),
                new("Peak pull", @"F = \Delta v\,\sqrt{k\,\mu}",
                    $"{Digits.Round(v, 4)} m/s × √({Digits.Round(k, 4)} N/m × {Digits.Round(reduced, 4)} kg)",
                    $"{Digits.Round(peak, 4)} N", RecoveryLiterature.Goldstein),
                new("Stretch", @"x = \Delta v\,\sqrt{\mu/k}",
                    $"{Digits.Round(v, 4)} m/s × √({Digits.Round(reduced, 4)} kg / {Digits.Round(k, 4)} N/m)",
                    Length.FromMeters(stretch).Show(), RecoveryLiterature.Goldstein),
            ]),
        };
    }
}
