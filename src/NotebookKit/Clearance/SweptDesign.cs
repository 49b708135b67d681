namespace NotebookKit.Clearance;

/// <summary>One design of a sweep.</summary>
/// <param name="Values">Its values, in the order of the sweep's axes.</param>
/// <param name="Check">The design held against its requirements; none where it can't be made.</param>
/// <param name="Refusal">Why it can't be made; empty where it can.</param>
public sealed record SweptDesign(IReadOnlyList<string> Values, DesignCheck? Check, string Refusal)
{
    /// <summary>Whether every requirement holds.</summary>
    public bool Holds => Check is { Holds: true };

    /// <summary>What stands against it: the requirements that don't hold or can't be told, or the refusal; empty where all hold.</summary>
    public string Against => Check is null ? Refusal : string.Join(", ", Check.Outcomes.Where(o => o.Verdict != RequirementVerdict.Holds)
        .Select(o => o.Verdict == RequirementVerdict.CannotTell ? $"can't tell {o.Requirement.Name}" : o.Requirement.Name));

    internal object? Figure(string figure) => Check?.Figures.Of(figure, Record.Limit.AtMost, out _);
}
