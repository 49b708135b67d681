namespace NotebookKit.Clearance.Designs;

/// <summary>One design of a sweep.</summary>
/// <param name="Values">Its values, in the order of the sweep's axes.</param>
/// <param name="Outcomes">Every requirement with its verdict; none where the design can't be made.</param>
/// <param name="Refusal">Why it can't be made; empty where it can.</param>
public sealed record SweptDesign(IReadOnlyList<string> Values, IReadOnlyList<RequirementOutcome>? Outcomes, string Refusal)
{
    /// <summary>Its values as they are shown, with sensible digits.</summary>
    public IReadOnlyList<string> Labels { get; internal init; } = Values;

    /// <summary>Whether every requirement holds.</summary>
    public bool Holds => Outcomes is not null && Outcomes.All(o => o.Verdict == RequirementVerdict.Holds);

    /// <summary>What stands against it: the requirements that don't hold or can't be told, or the refusal; empty where all hold.</summary>
    public string Against => Outcomes is null ? Refusal : string.Join(", ", Outcomes.Where(o => o.Verdict != RequirementVerdict.Holds)
        .Select(o => o.Verdict == RequirementVerdict.CannotTell ? $"can't tell {o.Requirement.Name}" : o.Requirement.Name));

    /// <summary>Why what can't be told can't be, or why the design can't be made; empty where neither is so.</summary>
    public string Why => Outcomes is null ? Refusal : string.Join(' ', Outcomes.Select(o => o.Reason).Where(r => r.Length > 0).Distinct());

    /// <summary>Figures by name. A thousand designs' flights would fill the memory; their figures don't.</summary>
    internal IReadOnlyDictionary<string, object> Figures { get; init; } = new Dictionary<string, object>();

    internal object? Figure(string figure) => Figures.GetValueOrDefault(figure);
}
