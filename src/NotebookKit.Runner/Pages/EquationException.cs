namespace NotebookKit.Runner.Pages;

/// <summary>A formula isn't TeX that can be set.</summary>
/// <param name="reason">Which and why.</param>
internal sealed class EquationException(string reason) : Exception(reason);
