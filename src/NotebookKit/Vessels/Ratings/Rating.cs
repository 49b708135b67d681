using NotebookKit.Provenance;
using NotebookKit.Quantities;
using NotebookKit.Vessels.Bursting;
using NotebookKit.Vessels.Design;
using NotebookKit.Vessels.Testing;
using NotebookKit.Vessels.Uncertainty;

namespace NotebookKit.Vessels.Ratings;

/// <summary>What a vessel may be used at under a rule set, or why it isn't rated.</summary>
/// <remarks>Source: as the rule set names; the design burst as its prediction names.</remarks>
public sealed record Rating : Result
{
    private readonly GaugePressure _working;
    private readonly GaugePressure _maximumExpected;
    private readonly GaugePressure _proof;
    private readonly FillRisk _risk;

    private readonly Lazy<TestChoice> _next;

    internal Rating(BurstPrediction prediction, PartLearning learning, IReadOnlyList<VesselTest> tests, RuleSet rules,
        (GaugePressure DesignBurst, string Basis, FillRisk Risk) basis, GaugePressure maximumExpected, IReadOnlyList<Finding> findings,
        Working working)
    {
        Prediction = prediction;
        Learning = learning;
        Tests = tests;
        Rules = rules;
        (DesignBurst, Basis, _risk) = basis;
        _maximumExpected = maximumExpected;
        _working = maximumExpected / rules.Overshoot;
        _proof = rules.Proof * maximumExpected;
        // A run that was stopped is no answer to keep.
        _next = new(() => learning.NextTest(UsualTests.Of(prediction, learning, _proof)), LazyThreadSafetyMode.PublicationOnly);
        Findings = findings;
        Working = working;
    }

    /// <summary>The burst it rests on.</summary>
    public BurstPrediction Prediction { get; }

    /// <summary>The vessel.</summary>
    public PressureVessel Vessel => Prediction.Vessel;

    /// <summary>The rule set.</summary>
    public RuleSet Rules { get; }

    /// <summary>Burst that the rating is taken from; errs low.</summary>
    public GaugePressure DesignBurst { get; }

    /// <summary>What that burst is, in words.</summary>
    public string Basis { get; }

    /// <summary>The part that sets the design burst: strengthening another one changes nothing.</summary>
    public string LimitedBy => Learning.Weakest.Part.Name;

    /// <summary>What tests have taught of every part, and of the vessel as its weakest part.</summary>
    public PartLearning Learning { get; }

    /// <summary>Tests that it was given.</summary>
    public IReadOnlyList<VesselTest> Tests { get; }

    /// <summary>How far the last test moved each part, the most moved first; empty without a test.</summary>
    public IReadOnlyList<PartMove> Moves => Learning.Moves;

    /// <summary>Which of the usual tests would raise the rating most for the evenings it takes: bursts of a full and of a short twin, of
    /// either end alone, a proof. Their hours are common practice, no source.</summary>
    public TestChoice NextTest => _next.Value;

    /// <summary>Chance that a vessel of its kind bursts at the maximum expected pressure, before its own proof.</summary>
    /// <exception cref="InvalidDesignException">The rating was refused.</exception>
    public FillRisk Risk
    {
        get
        {
            InvalidDesignException.ThrowIfAny(Title, Findings);
            return _risk;
        }
    }

    /// <summary>Chance that a vessel of its kind bursts at a fill, before its own proof. Source: as <see cref="FillRisk"/>.</summary>
    /// <param name="fill">Pressure of the fill; 0 bar gauge or above.</param>
    public FillRisk RiskAt(GaugePressure fill) => RatingModel.RiskAt(Learning, fill);

    /// <summary>Working pressure that the club's fixed factors allow on the same design burst.</summary>
    public GaugePressure ByFixedFactor => DesignBurst / RuleSets.Club.Burst / RuleSets.Club.Overshoot;

    /// <summary>Whether a rating is given; refused where the proof itself would risk damage.</summary>
    public bool IsRated => Status == ResultStatus.Completed;

    /// <summary>Pressure it may be filled to.</summary>
    /// <exception cref="InvalidDesignException">The rating was refused.</exception>
    public GaugePressure WorkingPressure => Given(_working);

    /// <summary>Highest pressure it is expected ever to see (MEOP): working pressure with regulator creep and warming.</summary>
    /// <exception cref="InvalidDesignException">The rating was refused.</exception>
    public GaugePressure MaximumExpectedPressure => Given(_maximumExpected);

    /// <summary>Pressure it has to be proved at, with water.</summary>
    /// <exception cref="InvalidDesignException">The rating was refused.</exception>
    public GaugePressure ProofPressure => Given(_proof);

    /// <summary>Burst pressure that the rule set asks for at this rating.</summary>
    /// <exception cref="InvalidDesignException">The rating was refused.</exception>
    public GaugePressure RequiredBurst => Given(Rules.Burst * _maximumExpected);

    /// <inheritdoc/>
    public override string Title => $"Rating by {Rules.Name}, {Vessel.Name}";

    /// <inheritdoc/>
    public override ModelCard Model => new(
        $"Rating by {Rules.Name}",
        [$"Written for {Rules.Covers}.", .. Learning.Model.Assumptions, RuleSets.NoneCovers, $"Rests on {Basis}.",
            $"No part or ply is proved past {Rules.MaximumProofUse.Show()} of its strength (common practice, no source)."],
        "As its burst prediction. A rating lapses with damage, heat, and time.",
        [Rules.Source, .. Learning.Model.Sources]);

    /// <inheritdoc/>
    public override ResultStatus Status => HasError ? ResultStatus.Failed : ResultStatus.Completed;

    /// <inheritdoc/>
    public override IReadOnlyList<Caution> Cautions => Provenance.Cautions.ForProof;

    /// <inheritdoc/>
    public override IReadOnlyList<ResultLine> Lines => IsRated
        ?
        [
            new("Working pressure", _working.ToString(), $"maximum expected over {Digits.Round(Rules.Overshoot)}"),
            new("Maximum expected pressure (MEOP)", _maximumExpected.ToString()),
            new("Proof pressure", _proof.ToString(), $"{Digits.Round(Rules.Proof)} × maximum expected, with water"),
            new("Required burst", RequiredBurst.ToString(), $"{Digits.Round(Rules.Burst)} × maximum expected"),
            new("Design burst", DesignBurst.ToString(), Basis),
            new("Limited by", LimitedBy, $"its B-basis {Learning.Weakest.BBasis}"),
            .. Moves.Take(1).Select(m => new ResultLine("Last test moved most", m.Part,
                $"B-basis {m.Before} to {m.After}, {Digits.Round(100 * m.Change, 2)} %")),
            new("Next test for the rating", NextTest.Best.Option.Name,
                NextTest.Best.GainPerHour > 0
                    ? $"{Digits.Round(UsualTests.HoursOfEvening * NextTest.Best.GainPerHour, 2)} bar of design burst for each evening"
                    : "none of the usual tests may be expected to raise it"),
            new("Chance of a burst at the maximum expected pressure", _risk.ToString(),
                $"of a vessel not proved yet, by {_risk.Tests} tests"
                + (_risk.Showable is { } shown ? $"; these alone can't show less than {FillRisk.Of(shown)}" : "; model alone")),
            new("Rests on tests", Tests.Count > 0 ? string.Join("; ", Tests.Select(Say)) : "none"),
            new("People", Rules.People.Length > 0 ? Rules.People : "not given"),
            .. Rules.TargetChance is null ? (ResultLine[])[] : [new("Club's fixed factor beside it", ByFixedFactor.ToString(),
                $"design burst over {Digits.Round(RuleSets.Club.Burst)} and {Digits.Round(RuleSets.Club.Overshoot)}")],
            new("Rule set", Rules.Name, Rules.Source.ToString()),
        ]
        : [new("Rating", "refused", "see the findings"), new("Design burst", DesignBurst.ToString(), Basis),
            new("Rule set", Rules.Name, Rules.Source.ToString())];

    /// <inheritdoc/>
    public override Working Working { get; }

    private static string Say(VesselTest test) => test is BurstTest burst ? $"{test.Id}: {burst.Failed} gave way at {test.Pressure}"
        : $"{test.Id}: held {test.Pressure}";

    private GaugePressure Given(GaugePressure pressure)
    {
        InvalidDesignException.ThrowIfAny(Title, Findings);
        return pressure;
    }
}
