namespace NotebookKit.Interactive.Commands;

/// <summary>A command of ours as it explains itself.</summary>
/// <param name="Name">How it is called: "#!cautions".</param>
/// <param name="Usage">The whole line: "#!working burst".</param>
/// <param name="Explanation">What it does, a sentence.</param>
internal sealed record KitCommandInfo(string Name, string Usage, string Explanation);
