namespace NotebookKit.Provenance;

/// <summary>How an answer was reached, step by step, for a learner to read and a checker to trust.</summary>
/// <param name="Title">What is worked out.</param>
/// <param name="Steps">Its steps in order.</param>
public sealed record Working(string Title, IReadOnlyList<WorkingStep> Steps)
{
    /// <summary>Plain text, a step a paragraph.</summary>
    public override string ToString() =>
        Title + Environment.NewLine + string.Join(Environment.NewLine,
            Steps.Select(s => $"  {s.What}: {s.Formula} = {s.Numbers} = {s.Answer}   [{s.Source}]"));
}

/// <summary>One line of shown working: the formula, the formula with numbers, the answer.</summary>
/// <param name="What">What is worked out: "Hoop stress".</param>
/// <param name="Formula">The formula in symbols, in the TeX subset the exported page draws: "\sigma_h = \frac{p\,r}{t}".</param>
/// <param name="Numbers">The right-hand side with numbers and units, plain text: "6 MPa × 50 mm / 1 mm".</param>
/// <param name="Answer">The answer with its unit: "300 MPa".</param>
/// <param name="Source">Where the formula comes from.</param>
public sealed record WorkingStep(string What, string Formula, string Numbers, string Answer, Source Source);
