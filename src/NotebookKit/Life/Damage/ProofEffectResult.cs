using System.Globalization;
using NotebookKit.Provenance;
using NotebookKit.Quantities;
using UnitsNet;
using UnitsNet.Units;

namespace NotebookKit.Life.Damage;

/// <summary>What a proof does for a vessel and what it costs it. Source: see <see cref="Model"/>.</summary>
public sealed record ProofEffectResult : Result
{
    private static readonly ModelCard Card = new(
        "Both truths about a proof",
        [
            "Screening: burst pressures are lognormal; those at or below the proof burst in it; afterwards the share of strength "
                + "given is left.",
            "Ageing by time: stress over strength is pressure over median burst; time at each load adds up.",
            "Ageing by cycles: one proof counts as the fills that use up as much life.",
            "The two are separate models of the same vessel; a page with only one of them misleads.",
        ],
        "Vessels made alike. Chances rarer than one in a thousand rest on the shape of the assumed distributions.",
        [LifeSources.ConditionalChance, LifeSources.StressRupture, LifeSources.Slope]);

    internal ProofEffectResult(ProofEffect input, IReadOnlyList<Finding> findings)
    {
        Input = input;
        var screening = input.Screening;
        BurstInProof = screening.BurstInProof();
        RulesOutDownTo = screening.RulesOutDownTo();
        if (input.Kept is { } kept) (ChanceWithoutProof, ChanceAfterProof) = (screening.WithoutProof(kept), screening.AfterProof(kept));
        if (input.Slope is { } slope) FillsUsed = slope.FillsFor(screening.Proof / screening.Fill);
        if (input.Rupture is { } parameters)
        {
            var rupture = new StressRupture(parameters);
            LoadHold[] proof = [new(Share(screening.Proof), input.ProofHold)];
            LoadHold[] fills = [new(Share(screening.Fill), Duration.FromHours(input.Fills * input.FillHold.Hours))];
            ReliabilityWithoutProof = rupture.Reliability(fills);
            ReliabilitySeenBefore = rupture.Reliability([.. proof, .. fills]);
            var given = rupture.ReliabilityGiven(proof, fills);
            // With a shape below 1 the formula makes a survivor younger; unpublished parameters aren't trusted with that.
            ReliabilityGivenProof = parameters.IsPublished ? given : Math.Min(given, ReliabilityWithoutProof.Value);
            TimeUsed = rupture.Equivalent(input.ProofHold, Share(screening.Proof), Share(screening.Fill));
        }

        Findings =
        [
            .. findings,
            .. input.Kept is null ? [LifeFindings.ShareOfStrengthKeptIsNotGiven(RulesOutDownTo)] : Array.Empty<Finding>(),
            .. input.Kept is { } left && left < RulesOutDownTo
                ? [LifeFindings.ProofNoLongerRulesOutBurst(left, RulesOutDownTo)]
                : Array.Empty<Finding>(),
            .. input.Rupture is null ? [LifeFindings.NoStressRuptureParametersAreGiven()] : Array.Empty<Finding>(),
            .. input.Slope is null ? [LifeFindings.NoFatigueSlopeIsGiven()] : Array.Empty<Finding>(),
        ];
    }

    /// <summary>What was asked.</summary>
    public ProofEffect Input { get; }

    /// <summary>Share of new vessels that burst in the proof [-].</summary>
    public double BurstInProof { get; }

    /// <summary>Least share of the strength for which the proof still rules a burst out.</summary>
    public Ratio RulesOutDownTo { get; }

    /// <summary>Chance of bursting in a fill without a proof [-]; none where the strength that is left is not given.</summary>
    public double? ChanceWithoutProof { get; }

    /// <summary>Chance of bursting in a fill after a passed proof [-]; none where the strength that is left is not given.</summary>
    public double? ChanceAfterProof { get; }

    /// <summary>Chance of outlasting all fills without a proof, by time under load [-]; none without parameters.</summary>
    public double? ReliabilityWithoutProof { get; }

    /// <summary>Chance of outlasting all fills given that the proof was survived, by time under load [-]; none without
    /// parameters.</summary>
    public double? ReliabilityGivenProof { get; }

    /// <summary>Chance of outlasting proof and fills, as seen before the proof, by time under load [-]; none without parameters.</summary>
    public double? ReliabilitySeenBefore { get; }

    /// <summary>Time at fill pressure that uses up as much life as the proof; none without parameters.</summary>
    public Duration? TimeUsed { get; }

    /// <summary>Fills that use up as much life as the proof [-]; none without a slope.</summary>
    public double? FillsUsed { get; }

    /// <summary>The first truth in a sentence.</summary>
    public string Screens =>
        $"The proof at {Input.Screening.Proof} screens: it bursts the weakest vessels behind cover ({Chance(BurstInProof)}), and "
            + $"by this model a vessel that passes does not burst at {Input.Screening.Fill} while it keeps {RulesOutDownTo.Show()} of "
            + "its strength"
        + (ChanceAfterProof is { } after ? $"; with {Input.Kept!.Value.ToUnit(RatioUnit.Percent).Show()} left the chance in a fill is "
            + $"{Chance(after)} against {Chance(ChanceWithoutProof!.Value)} without a proof." : ".");

    /// <summary>The second truth in a sentence.</summary>
    public string Ages
    {
        get
        {
            List<string> parts = [];
            if (TimeUsed is { } time)
                parts.Add($"it counts as {Digits.Round(time.Hours)} h at {Input.Screening.Fill}, and the chance of not outlasting "
                    + $"{Input.Fills.ToString(CultureInfo.InvariantCulture)} fills is {Chance(1 - ReliabilityGivenProof!.Value)} against "
                    + $"{Chance(1 - ReliabilityWithoutProof!.Value)} without a proof");
            if (FillsUsed is { } fills) parts.Add($"it counts as {Digits.Round(fills)} fills");
            return parts.Count > 0
                ? $"The same proof ages the vessel: {string.Join("; ", parts)}."
                : "The same proof ages the vessel; by how much is not known.";
        }
    }

    /// <inheritdoc/>
    public override string Title => Input.Vessel.Length > 0 ? $"What the proof does for {Input.Vessel} and what it costs"
        : "What a proof does and what it costs";

    /// <inheritdoc/>
    public override ModelCard Model => Card;

    /// <inheritdoc/>
    public override IReadOnlyList<Caution> Cautions => Provenance.Cautions.ForProof;

    /// <inheritdoc/>
    public override IReadOnlyList<ResultLine> Lines =>
    [
        new("Screening by the proof", Screens),
        new("Life used up by the proof", Ages),
        new("Proof and fill", $"{Input.Screening.Proof} and {Input.Screening.Fill}",
            $"held for {Digits.Round(Input.ProofHold.Minutes)} min; {Input.Fills.ToString(CultureInfo.InvariantCulture)} fills follow"),
        new("Burst of vessels made alike", $"{Input.Screening.Median} in the middle",
            $"spread {Digits.Round(100 * Input.Screening.Spread)} %, lognormal"),
        new("Burst in the proof", Chance(BurstInProof)),
        new("A burst is ruled out down to", RulesOutDownTo.Show(), "of the strength at the proof"),
        .. ChanceAfterProof is { } after
            ? [new("Chance in a fill after the proof", Chance(after)),
                new ResultLine("Chance in a fill without a proof", Chance(ChanceWithoutProof!.Value))]
            : Array.Empty<ResultLine>(),
        .. ReliabilityGivenProof is { } given
            ? [
                new("Not outlasting the fills, proof survived", Chance(1 - given)),
                new("Not outlasting proof and fills, seen before", Chance(1 - ReliabilitySeenBefore!.Value)),
                new ResultLine("Not outlasting the fills, without a proof", Chance(1 - ReliabilityWithoutProof!.Value)),
            ]
            : Array.Empty<ResultLine>(),
        .. TimeUsed is { } time ? [new ResultLine("The proof counts as", $"{Digits.Round(time.Hours)} h", "at fill pressure")]
            : Array.Empty<ResultLine>(),
        .. FillsUsed is { } fills ? [new ResultLine("The proof counts as", $"{Digits.Round(fills)} fills")] : Array.Empty<ResultLine>(),
    ];

    /// <inheritdoc/>
    public override Working Working => new(Title,
    [
        new("Burst in the proof", @"F(p_{proof}) = \Phi\left(\frac{\ln(p_{proof}/\tilde p)}{\sqrt{\ln(1 + V^2)}}\right)",
            $"{Input.Screening.Proof}, median {Input.Screening.Median}, spread {Digits.Round(100 * Input.Screening.Spread)} %",
                Chance(BurstInProof), LifeSources.ConditionalChance),
        .. ChanceAfterProof is { } after
            ? [new WorkingStep("Chance in a fill after the proof", @"\frac{[F(p_{fill}/k) - F(p_{proof})]^+}{1 - F(p_{proof})}",
                $"k = {Digits.Round(Input.Kept!.Value.DecimalFractions)}", Chance(after), LifeSources.ConditionalChance)]
            : Array.Empty<WorkingStep>(),
        .. ReliabilityGivenProof is { } given
            ? [new WorkingStep("Outlasting the fills, proof survived", @"\exp(-H_1^{\beta} + H_0^{\beta})",
                $"ρ = {Digits.Round(Input.Rupture!.Exponent)}, β = {Digits.Round(Input.Rupture.Shape)}", Digits.Round(given, 7),
                Input.Rupture.Source)]
            : Array.Empty<WorkingStep>(),
        .. FillsUsed is { } fills
            ? [new WorkingStep("Fills that the proof counts for", @"\left(\frac{p_{proof}}{p_{fill}}\right)^m",
                $"({Digits.Round(Input.Screening.Proof / Input.Screening.Fill)})^{Digits.Round(Input.Slope!.Exponent)}",
                Digits.Round(fills), Input.Slope.Source)]
            : Array.Empty<WorkingStep>(),
    ]);

    private Ratio Share(GaugePressure pressure) => Ratio.FromPercent(100 * (pressure / Input.Screening.Median));

    // Below one in a million the figure is the assumed shape's alone: nobody has made that many vessels.
    private static string Chance(double chance) => chance switch
    {
        <= 0 => "none by this model",
        < 1e-6 => "fewer than 1 in a million, by the assumed shape",
        < 0.01 => $"1 in {Digits.Round(1 / chance, 2)}",
        _ => $"{Digits.Round(100 * chance)} %",
    };
}
