using NotebookKit.Record;

namespace NotebookKit.DesignFiles.Parts;

/// <summary>What a design must keep: a computed figure on the right side of a limit.</summary>
/// <param name="Name">Name, unique in its design.</param>
/// <param name="Of">The figure: "apogee", "minimum static margin".</param>
/// <param name="Side">Which side of the limit is right.</param>
/// <param name="Limit">The limit with its unit.</param>
/// <param name="Why">Why it is required.</param>
public sealed record DesignRequirement(string Name, string Of, Limit Side, string Limit, string Why)
{
    /// <summary>The limit as a value: a quantity, a gauge pressure or a plain number.</summary>
    internal object Value { get; init; } = 0.0;
}
