using NotebookKit.Provenance;
using NotebookKit.Quantities;

namespace NotebookKit.Vessels.Uncertainty;

/// <summary>Tests that might be made next, the one that raises the rating most for its work first.</summary>
/// <param name="Now">B-basis of the vessel now.</param>
/// <param name="Worths">What each test may be expected to bring, best for its work first.</param>
/// <remarks>Source: Raiffa and Schlaifer, Applied Statistical Decision Theory, 1961 (expected value of sample information),
/// unverified.</remarks>
public sealed record TestChoice(GaugePressure Now, IReadOnlyList<TestGain> Worths) : Result
{
    private static readonly Source Book = new("Raiffa and Schlaifer", "Applied Statistical Decision Theory", 1961, "",
        SourceKind.Unverified);

    /// <summary>The test that raises the B-basis most for its work.</summary>
    public TestGain Best => Worths[0];

    /// <inheritdoc/>
    public override string Title => "Which test next";

    /// <inheritdoc/>
    public override ModelCard Model => new(
        "Expected gain of the B-basis by one more test",
        ["Outcomes are drawn from what is believed now, and the belief is updated by each.", "The test does no damage that is not seen.",
            "Work is as given; water, cover and a remote pump are at hand."],
        "As the evidence that it starts from; 64 outcomes a test, so that gains closer than about a tenth can't be told apart.",
        [Book]);

    /// <inheritdoc/>
    public override IReadOnlyList<Caution> Cautions => Provenance.Cautions.ForProof;

    /// <inheritdoc/>
    public override IReadOnlyList<ResultLine> Lines =>
    [
        new("B-basis of the vessel now", Now.ToString()),
        .. Worths.Select(w => new ResultLine(
            w.Option.Name, $"{Digits.Round(w.GainPerHour, 2)} bar for each hour",
            $"{w.Expected} expected after {w.Option.Work.Show(2)}; chance that the B-basis falls "
                + $"{Digits.Round(100 * w.ChanceOfLess, 2)} %")),
    ];

    /// <inheritdoc/>
    public override IReadOnlyList<Finding> Findings =>
        Best.GainPerHour > 0
            ? [VesselsFindings.BestTestForWork(Best.Option.Name, Best.GainPerHour)]
            : [VesselsFindings.NoTestRaisesBasis()];

    /// <inheritdoc/>
    public override Working Working => new(Title,
    [
        new("Gain", @"g = \frac{E[B\,|\,\text{outcome}]-B}{t}", $"({Best.Expected} − {Now}) / {Best.Option.Work.Show(2)}",
            $"{Digits.Round(Best.GainPerHour, 2)} bar/h", Book),
    ]);
}

/// <summary>What one test may be expected to bring.</summary>
/// <param name="Option">The test.</param>
/// <param name="Expected">B-basis of the vessel to be expected after it, the mean over what may come out.</param>
/// <param name="GainPerHour">What the B-basis may be expected to gain for each hour of work, in bar [bar/h]; below 0 where it would
/// fall.</param>
/// <param name="ChanceOfLess">Chance that the B-basis falls [-].</param>
public sealed record TestGain(TestOption Option, GaugePressure Expected, double GainPerHour, double ChanceOfLess);
