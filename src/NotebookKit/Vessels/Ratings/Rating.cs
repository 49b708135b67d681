using NotebookKit.Provenance;
using NotebookKit.Quantities;
using NotebookKit.Vessels.Bursting;
using NotebookKit.Vessels.Design;

namespace NotebookKit.Vessels.Ratings;

/// <summary>What a vessel may be used at under a rule set, or why it isn't rated.</summary>
/// <remarks>Source: as the rule set names; the design burst as its prediction names.</remarks>
public sealed record Rating : IResult
{
    private readonly GaugePressure _working;
    private readonly GaugePressure _maximumExpected;
    private readonly GaugePressure _proof;

    internal Rating(
        BurstPrediction prediction, RuleSet rules, GaugePressure designBurst, string basis, string limitedBy,
            GaugePressure maximumExpected, IReadOnlyList<Finding> findings, Working working)
    {
        Prediction = prediction;
        Rules = rules;
        DesignBurst = designBurst;
        Basis = basis;
        LimitedBy = limitedBy;
        _maximumExpected = maximumExpected;
        _working = maximumExpected / rules.Overshoot;
        _proof = rules.Proof * maximumExpected;
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
    public string LimitedBy { get; }

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
    public string Title => $"Rating by {Rules.Name}, {Vessel.Name}";

    /// <inheritdoc/>
    public ModelCard Model => new(
        $"Rating by {Rules.Name}",
        [$"Written for {Rules.Covers}.", RuleSets.NoneCovers, $"Rests on {Basis}.",
            $"No part or ply is proved past {Rules.MaximumProofUse.Show()} of its strength (common practice, no source)."],
        "As its burst prediction. A rating lapses with damage, heat, and time.",
        [Rules.Source]);

    /// <inheritdoc/>
    public ResultStatus Status => Findings.Any(f => f.Severity == FindingSeverity.Error) ? ResultStatus.Failed : ResultStatus.Completed;

    /// <inheritdoc/>
    public IReadOnlyList<Finding> Findings { get; internal init; }

    /// <inheritdoc/>
    public IReadOnlyList<Caution> Cautions => Provenance.Cautions.ForProof;

    /// <inheritdoc/>
    public IReadOnlyList<ResultLine> Lines => IsRated
        ?
        [
            new("Working pressure", _working.ToString(), $"maximum expected over {Digits.Round(Rules.Overshoot)}"),
            new("Maximum expected pressure (MEOP)", _maximumExpected.ToString()),
            new("Proof pressure", _proof.ToString(), $"{Digits.Round(Rules.Proof)} × maximum expected, with water"),
            new("Required burst", RequiredBurst.ToString(), $"{Digits.Round(Rules.Burst)} × maximum expected"),
            new("Design burst", DesignBurst.ToString(), Basis),
            new("Limited by", LimitedBy),
            new("Rule set", Rules.Name, Rules.Source.ToString()),
        ]
        : [new("Rating", "refused", "see the findings"), new("Design burst", DesignBurst.ToString(), Basis),
            new("Rule set", Rules.Name, Rules.Source.ToString())];

    /// <inheritdoc/>
    public Working Working { get; }

    private GaugePressure Given(GaugePressure pressure)
    {
        InvalidDesignException.ThrowIfAny(Title, Findings);
        return pressure;
    }
}
