namespace NotebookKit.DesignFiles.Parts;

/// <summary>One test of a design as it lay there: which it was, and a mark of all that it says.</summary>
/// <param name="Name">What it is called: "burst of T-1".</param>
/// <param name="Mark">The first eight digits of the SHA-256 over its values, in hexadecimal.</param>
public sealed record TestMark(string Name, string Mark);
