namespace NotebookKit.Record;

/// <summary>An input of the design: what it is, what it may be, and why it is what it is.</summary>
/// <param name="Name">Name, unique in its record.</param>
/// <param name="Value">Value with its unit, every digit kept.</param>
/// <param name="Range">The range it may be changed within, with units.</param>
/// <param name="Why">Why it has this value.</param>
/// <param name="Overridden">Whether this run was asked to use another value than the notebook's own.</param>
public sealed record Given(string Name, string Value, string Range, string Why, bool Overridden = false);
