namespace NotebookKit.Provenance;

/// <summary>One number of a result as people read it.</summary>
/// <param name="Name">What it is.</param>
/// <param name="Value">The value with its unit and sensible digits.</param>
/// <param name="Note">A short remark; may be empty.</param>
public sealed record ResultLine(string Name, string Value, string Note = "");
