using NotebookKit.Provenance;
using NotebookKit.Quantities;

namespace NotebookKit.Vessels.Uncertainty;

/// <summary>What tests taught of every part of a vessel, and of the vessel that is as strong as its weakest part.</summary>
/// <remarks>Source: as <see cref="PartEvidence"/>.</remarks>
public sealed record PartLearning : Result
{
    private static readonly Source Grid = new("Gelman et al.", "Bayesian Data Analysis, 3rd ed.", 2013, "ch. 3, §8.7");
    private static readonly Source Modes = new("Meeker and Escobar", "Statistical Methods for Reliability Data", 1998, "ch. 15");
    private static readonly Source Size = new("Weibull", "J. Appl. Mech. 18", 1951, "");
    private static readonly Source Fibres = new("Bader and Priest", "ICCM-IV, p. 1129", 1982, "");

    // Of the clubs by which the prior was chosen.
    private const double HighestStudied = 0.20;

    private readonly PartStudy _study;
    private readonly Lazy<GaugePressure> _aBasis;
    private readonly Lazy<IReadOnlyList<PartMove>> _moves;

    internal PartLearning(PartStudy study, PartStudy? before, string batch)
    {
        Batch = batch;
        _study = study;
        Parts = [.. study.Parts.Select((p, k) => new PartBelief(p, study.Beliefs[k], study.Tests))];
        Weakest = Parts.MinBy(p => p.BBasis.Pascals)!;
        BBasis = GaugePressure.FromPascals(Math.Exp(study.LowLogPascals(0.10, VesselLow.Draws)));
        _aBasis = new(() => GaugePressure.FromPascals(Math.Exp(study.LowLogPascals(0.01, VesselLow.Draws))),
            LazyThreadSafetyMode.PublicationOnly);
        _moves = new(() => before is null ? [] : [.. Parts.Select((p, k) => new PartMove(p.Part.Name,
            GaugePressure.FromPascals(p.Part.Burst.Pascals * Math.Exp(before.Beliefs[k].LowLogPoint(0.10, 0.95))), p.BBasis))
            .OrderByDescending(m => Math.Abs(Math.Log(m.After / m.Before)))], LazyThreadSafetyMode.PublicationOnly);
    }

    /// <summary>Batch of the vessel in hand; empty where none was named.</summary>
    public string Batch { get; }

    /// <summary>What is believed of each part, in the order of the vessel's.</summary>
    public IReadOnlyList<PartBelief> Parts { get; }

    /// <summary>Tests used: of each vessel its burst, or the highest it held.</summary>
    public IReadOnlyList<PartTest> Tests => _study.Tests;

    /// <summary>The part with the lowest B-basis.</summary>
    public PartBelief Weakest { get; }

    /// <summary>B-basis of the vessel: nine in ten burst above, with 95 % confidence, whichever part is the weakest. Source: definition in
    /// MIL-HDBK-17-1F, ch. 8.</summary>
    public GaugePressure BBasis { get; }

    /// <summary>A-basis of the vessel: ninety-nine in a hundred burst above, with 95 % confidence. Source: definition in MIL-HDBK-17-1F,
    /// ch. 8.</summary>
    public GaugePressure ABasis => _aBasis.Value;

    /// <summary>How far the last test of the list moved each part, the most moved first; empty without a test.</summary>
    public IReadOnlyList<PartMove> Moves => _moves.Value;

    /// <summary>
    /// Chance that the next such vessel gives way below a pressure [-], whichever part is the weakest: scatter and what isn't known,
    /// together.
    /// Source: posterior predictive distribution, Gelman et al. 2013, §1.3; parts as independent as the beliefs in them.
    /// </summary>
    /// <param name="pressure">The pressure; 0 bar gauge or below gives 0.</param>
    public double ChanceBelow(GaugePressure pressure) => pressure.Pascals > 0 ? _study.ChanceBelow(Math.Log(pressure.Pascals)) : 0;

    /// <summary>Pressure that the next such vessel gives way below with a chance. Source: as <see cref="ChanceBelow"/>.</summary>
    /// <param name="chance">Chance [-]; 1e-9 to 0.5.</param>
    /// <exception cref="OutOfRangeException">The chance is out of range.</exception>
    public GaugePressure PressureOfChance(double chance)
    {
        new ValidRange<double>(1e-9, 0.5).Check(chance, "chance of a burst", "0.001 is one vessel in a thousand.");
        return GaugePressure.FromPascals(Math.Exp(_study.LogPascalsOfChance(chance)));
    }

    /// <summary>Which test next would raise the B-basis most for its work. Source: see the result's model card.</summary>
    /// <param name="options">The tests to choose from: a proof, a burst of a twin, of a short twin, of an end alone.</param>
    /// <exception cref="InvalidDesignException">An option isn't valid.</exception>
    public TestChoice NextTest(params IReadOnlyList<TestOption> options)
    {
        ArgumentNullException.ThrowIfNull(options);
        var findings = options.SelectMany(o => o.Validate()).Concat(options.SelectMany(o => PartEvidence.ValidateSizes(_study.Parts,
            o.Parts, $"test \"{o.Name}\""))).ToList();
        if (options.Count == 0) findings.Add(VesselsFindings.NoTestToChoose());
        InvalidDesignException.ThrowIfAny("Tests to choose from", findings);
        return TestForesight.Choose(_study, BBasis, options);
    }

    /// <inheritdoc/>
    public override string Title => "What tests teach of each part";

    /// <inheritdoc/>
    public override ModelCard Model => new(
        "Bayesian update of each part's strength and scatter on a grid",
        [
            "Vessels of one batch were made by the same hands, of the same materials, in the same way; the mean of another batch "
                + $"differs by a standard deviation of {Digits.Round(100 * PartPosterior.BatchShift)} % (common practice, no source).",
            "The actual strength of a part is its predicted one times a ratio; it scatters from vessel to vessel as a Weibull "
                + "distribution.",
            "The part that gave way is a measurement of that part; every other part held at least as much.",
            "A smaller part is stronger by the whole Weibull size effect that its scatter allows; a larger one is not taken to be "
                + "weaker. Both keep the rating low.",
            "Parts are believed in one by one, and drawn independently for the vessel.",
            "Of one vessel only one test counts: its burst, or the highest it held, less the gauge's error where that is given.",
            "An end that let go counts for the other end of its design as well, which only held.",
            $"Before any test a part delivers {Digits.Round(PartPrior.Default.Ratio)} of its prediction within a standard deviation of "
                + $"{Digits.Round(100 * PartPrior.Default.RatioDoubt)} %, and scatters by "
                + $"{Digits.Round(100 * PartPrior.Default.Scatter)} %, where its prior says nothing else (common practice, no source).",
        ],
        "Actual strength 0.14 to 2.7 times the predicted one, scatter 3 to 60 %.",
        [Grid, Modes, Size, Fibres, Source.CommonPractice("Prior of ratio and scatter, chosen so that simulated clubs err on "
            + "the safe side")]);

    /// <inheritdoc/>
    public override IReadOnlyList<Caution> Cautions => Provenance.Cautions.ForProof;

    /// <inheritdoc/>
    public override IReadOnlyList<ResultLine> Lines =>
    [
        new("B-basis of the vessel", BBasis.ToString(), "nine in ten burst above, with 95 % confidence"),
        new("A-basis of the vessel", ABasis.ToString(), "ninety-nine in a hundred burst above, with 95 % confidence"),
        new("Weakest part", Weakest.Part.Name, $"B-basis {Weakest.BBasis}"),
        .. Parts.Select(p => new ResultLine(
            p.Part.Name, $"{Digits.Round(p.Ratio)} of the prediction, {Digits.Round(p.RatioLow)} to {Digits.Round(p.RatioHigh)} "
                + "in nine of ten",
            $"scatter {Digits.Round(100 * p.Scatter, 2)} %; B-basis {p.BBasis}; the next one fails below {p.NextLow} once in a hundred; "
                + $"gave way {p.Bursts}, held {p.Held}")),
        .. Moves.Take(1).Select(m => new ResultLine("Last test moved most", m.Part,
            $"B-basis {m.Before} to {m.After}, {Digits.Round(100 * m.Change, 2)} %")),
    ];

    /// <inheritdoc/>
    public override IReadOnlyList<Finding> Findings
    {
        get
        {
            var findings = new List<Finding>();
            if (Tests.Count > 0 && Batch.Length == 0 && Tests.All(t => t.Batch.Length == 0))
                findings.Add(VesselsFindings.NoBatchIsNamed());
            foreach (var held in new[] { false, true })
                if (Parts.Where(p => p.Bursts == 0 && p.Held > 0 == held).Select(p => p.Part.Name).ToList() is { Count: > 0 } names)
                    findings.Add(VesselsFindings.PartsHaveNeverGivenWay(names, held));
            foreach (var part in Parts.Where(p => p.Bursts == 1))
                findings.Add(VesselsFindings.PartHasGivenWayOnce(part.Part.Name));
            foreach (var part in Parts.Where(p => p.Scatter > HighestStudied))
                findings.Add(VesselsFindings.PartScattersTooMuch(part.Part.Name, 100 * part.Scatter, 100 * HighestStudied));
            foreach (var part in Parts.Where(p => p.Part.Before.IsBolder))
                findings.Add(VesselsFindings.PriorIsBolderThanDefault(part.Part.Name));
            foreach (var test in Tests.OfType<PartBurst>())
            {
                var k = _study.Parts.ToList().FindIndex(p => p.Is(test.Failed));
                if (k < 0 && test.AtOtherEnd is { } like)
                {
                    findings.Add(VesselsFindings.EndOfSameDesignLetGo(test.Id, test.Failed, test.Pressure, like));
                    continue;
                }

                if (k < 0)
                {
                    findings.Add(test.Parts.Any(p => p.Is(test.Failed))
                        ? VesselsFindings.VesselFailedAtPartOfOtherEnds(test.Id, test.Failed)
                        : VesselsFindings.VesselFailedAtPartNotInHand(test.Id, test.Failed));
                    continue;
                }

                var tested = test.Parts.First(p => p.Is(test.Failed));
                var below = PartPosterior.Before(_study.Parts[k].Before).NextBelow(Math.Log(test.Pressure / tested.Burst),
                    PartStudy.LogSize(_study.Parts[k], tested));
                if (below is < 0.025 or > 0.975)
                    findings.Add(VesselsFindings.PartGaveWayFarFromBelief(test.Failed, test.Id, below, test.Pressure, tested.Burst));
            }

            return findings;
        }
    }

    /// <inheritdoc/>
    public override Working Working => new(Title,
    [
        new("Chance of holding p", @"S(p) = \exp\left(-\ln 2\left(\frac{p}{\rho\,\hat p}\right)^m\frac{V}{V_0}\right)",
            $"{Tests.OfType<PartHeld>().Count()} tests held, and every part that did "
            + "not end a test", "each a factor of the likelihood", Size),
        new("Chance of giving way at p", @"f(p) = -\frac{dS}{dp}",
            string.Join(", ", Tests.OfType<PartBurst>().Select(t => $"{t.Id} {t.Failed} {t.Pressure}")), "each a factor of the likelihood",
            Modes),
        new("Modulus and scatter", @"m = \frac{\pi}{\sqrt 6\,s}",
            $"s = {Digits.Round(100 * Weakest.Scatter)} % of the {Weakest.Part.Name}",
            Digits.Round(Math.PI / Math.Sqrt(6) / Weakest.Scatter), Size),
        new("Belief now", @"\pi(\rho, s\,|\,\text{tests}) \propto \pi(\rho, s)\prod S\prod f", $"{Tests.Count} vessels",
            string.Join(", ", Parts.Select(p => $"{p.Part.Name} {Digits.Round(p.Ratio)}")), Grid),
        new("B-basis of a part", @"P(p_{0.10} > B) = 0.95", $"over the belief in ρ and s of the {Weakest.Part.Name}",
            Weakest.BBasis.ToString(), Allowables.AllowableSources.Handbook),
        new("B-basis of the vessel", @"\prod_k S_k(p_{0.10}) = 0.90,\quad P(p_{0.10} > B) = 0.95",
            $"{Parts.Count} parts, {VesselLow.Draws} draws", BBasis.ToString(), Allowables.AllowableSources.Handbook),
    ]);
}
