namespace NotebookKit.Provenance;

/// <summary>How an answer was reached, step by step, for a learner to read and a checker to trust.</summary>
/// <param name="Title">What is worked out.</param>
/// <param name="Steps">Its steps in order.</param>
public sealed record Working(string Title, IReadOnlyList<WorkingStep> Steps)
{
    /// <summary>Plain text, a step a paragraph.</summary>
    public override string ToString() =>
        Title + Environment.NewLine + string.Join(Environment.NewLine, Steps.Select(s => $"  {s.What}: {s.Formula} = {s.Numbers} = {s.Answer}   [{s.Source}]"));
}
