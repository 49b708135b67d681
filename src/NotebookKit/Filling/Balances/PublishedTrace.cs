using NotebookKit.Provenance;
using NotebookKit.Quantities;
using NotebookKit.Vessels;

namespace NotebookKit.Filling.Balances;

/// <summary>
/// The publication that a measured fill or discharge comes from. A vessel of one's own starts at 300 bar gauge at most; one that others
/// measured may be computed to 700 bar gauge, for comparison only: such a result clears no fill, no vent and no flight.
/// </summary>
/// <remarks>Above 300 bar gauge only by the gas's equation of state. Source: the publication itself.</remarks>
/// <param name="Source">Author, title and year; read, or recalled from the literature.</param>
public sealed record PublishedTrace(Source Source)
{
    internal static GaugePressure HighestOfOwn { get; } = GaugePressure.FromBar(300);

    internal static GaugePressure HighestPublished { get; } = GaugePressure.FromBar(700);

    internal static GaugePressure Highest(PublishedTrace? trace) => trace is null ? HighestOfOwn : HighestPublished;

    /// <summary>What to do about a pressure above the highest.</summary>
    internal static string Remedy(PublishedTrace? trace, string usual) =>
        trace is null ? $"{usual} Only a measurement that others published is computed to 700 bar gauge: name it by Trace." : usual;

    /// <summary>The range of a model as its card prints it.</summary>
    internal static string Range(PublishedTrace? trace) =>
        trace is null ? "To 300 bar gauge." : "To 700 bar gauge, a published measurement only; no vessel is filled, vented or flown on it.";

    /// <summary>Everything wrong with it.</summary>
    public IReadOnlyList<Finding> Validate() =>
        Source is { Kind: SourceKind.Published or SourceKind.Standard or SourceKind.Unverified, Year: not null, Author.Length: > 0,
            Title.Length: > 0 } ? [] : [FillingFindings.TraceIsNotPublished(Source?.ToString() ?? "not given")];

    /// <summary>What a vessel and its pressures break of the rules for a published trace.</summary>
    internal static IEnumerable<Finding> Find(PublishedTrace? trace, Chamber chamber, GaugePressure highest, GasProperties properties)
    {
        if (trace is null) yield break;
        foreach (var finding in trace.Validate()) yield return finding;
        if (chamber.Basis != PressureBasis.Stated) yield return FillingFindings.TraceOfRatedVessel(chamber.RestsOn);
        if (highest > HighestOfOwn && properties != GasProperties.Real) yield return FillingFindings.TraceNeedsRealGas(highest);
    }
}
