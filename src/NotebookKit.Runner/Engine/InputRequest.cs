namespace NotebookKit.Runner.Engine;

/// <summary>A running cell asks its reader to type something.</summary>
/// <param name="Prompt">What to type.</param>
/// <param name="Hidden">Whether what is typed must not be shown.</param>
internal sealed record InputRequest(string Prompt, bool Hidden);
