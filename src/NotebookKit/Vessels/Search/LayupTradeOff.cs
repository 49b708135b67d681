using NotebookKit.Provenance;
using NotebookKit.Quantities;
using NotebookKit.Vessels.Design;
using NotebookKit.Vessels.Ratings;

namespace NotebookKit.Vessels.Search;

/// <summary>Mass against rated pressure of every layup tried: the choices, and why the others aren't.</summary>
/// <param name="Search">What was asked.</param>
/// <param name="Options">Every layup tried, lightest first.</param>
/// <remarks>Source: as <see cref="LayupSearch"/>.</remarks>
public sealed record LayupTradeOff(LayupSearch Search, IReadOnlyList<LayupOption> Options) : Result
{
    /// <summary>The choices: nothing is both lighter and stronger. Lightest first.</summary>
    public IReadOnlyList<LayupOption> Choices => [.. Options.Where(o => o.IsChoice)];

    /// <summary>The others, each with its reason.</summary>
    public IReadOnlyList<LayupOption> Rejected => [.. Options.Where(o => !o.IsChoice)];

    /// <inheritdoc/>
    public override string Title => $"Layups for {Search.Vessel.Name}";

    /// <inheritdoc/>
    public override ModelCard Model => new(
        "Every layup in stock, rated and weighed",
        ["Sleeves first, wraps over them, the vessel's own veil outermost.",
            "Every end in question with every layup, its fitting, cap discs and tails weighed with it.",
            $"Rated by {Search.Rules.Name} on the low end of the predicted burst.", RuleSets.NoneCovers],
        "As the burst prediction.",
        [VesselSources.Jones, VesselSources.Netting, Search.Rules.Source]);

    /// <inheritdoc/>
    public override ResultStatus Status => Choices.Count > 0 ? ResultStatus.Completed : ResultStatus.Failed;

    /// <inheritdoc/>
    public override IReadOnlyList<Caution> Cautions => Provenance.Cautions.ForPressure;

    /// <inheritdoc/>
    public override IReadOnlyList<ResultLine> Lines => [.. Choices.Select(o => new ResultLine(o.Name, o.Rated!.Value.ToString(),
        $"{o.Mass!.Value.Show()}, limited by the {o.Limit}"))];

    /// <inheritdoc/>
    public override IReadOnlyList<Finding> Findings
    {
        get
        {
            List<Finding> findings = [VesselsFindings.LayupsTried(Options.Count, Choices.Count)];
            if (Choices.Count == 0)
                findings.Add(VesselsFindings.NoLayupMeetsWhatIsWanted(Rejected.Count > 0 ? Rejected[^1].Refusal : null));
            if (Choices.Count > 0 && Choices[^1].Limit != "wall")
                findings.Add(VesselsFindings.MorePliesOnlyAddMass(Choices[^1].Rated, Choices[^1].Limit));
            findings.AddRange(PressureVessel.OwnValuesIn([.. Options.SelectMany(o => o.Vessel.Overrides).Distinct()]));
            return findings;
        }
    }

    /// <inheritdoc/>
    public override Working Working => new(Title, [.. Choices.Select(o => new WorkingStep(
        o.Name, @"p_w = \frac{p_b}{k_b\,k_o}", $"{Digits.Round(Search.Rules.Burst)} × {Digits.Round(Search.Rules.Overshoot)} below "
            + "its low burst", $"{o.Rated}, {o.Mass!.Value.Show()}", Search.Rules.Source))]);
}
