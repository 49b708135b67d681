namespace NotebookKit.Clearance.Service;

/// <summary>One reason why a vessel may not be filled.</summary>
/// <param name="Rule">The rule, in a few words.</param>
/// <param name="Sentence">What happened or is missing, and what to do.</param>
public sealed record ServiceReason(string Rule, string Sentence);
