namespace NotebookKit.Runner.Engine;

/// <summary>What is known about a name in the code.</summary>
/// <param name="Markdown">As Markdown.</param>
/// <param name="Text">As plain text.</param>
internal sealed record Description(string Markdown, string Text);
