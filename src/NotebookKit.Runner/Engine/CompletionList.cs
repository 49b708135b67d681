namespace NotebookKit.Runner.Engine;

/// <summary>What could stand in place of a part of the code.</summary>
/// <param name="Start">First character replaced, from 0.</param>
/// <param name="End">Character after the last one replaced.</param>
/// <param name="Entries">What could stand there, best first.</param>
internal sealed record CompletionList(int Start, int End, IReadOnlyList<CompletionEntry> Entries);

/// <summary>One thing that could stand there.</summary>
/// <param name="Text">Text to put in.</param>
/// <param name="Kind">Method, property, class...</param>
internal sealed record CompletionEntry(string Text, string Kind);
