namespace NotebookKit.DesignFiles.Trees;

/// <summary>One thing that is wrong with a design file.</summary>
/// <param name="Line">Line, from 1; 0 where the value doesn't come from a file.</param>
/// <param name="Column">Column, from 1; 0 where the value doesn't come from a file.</param>
/// <param name="Path">Value that it is about: "vessel.plies.1"; empty for the whole file.</param>
/// <param name="Sentence">What is wrong and what to do.</param>
public sealed record DesignFileMistake(int Line, int Column, string Path, string Sentence);
