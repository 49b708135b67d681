using NotebookKit.Provenance;
using NotebookKit.Quantities;

namespace NotebookKit.Proofing.Blast;

/// <summary>A harm done by blast alone, and the scaled distance within which it is to be expected. Fragments and jets are not
/// covered.</summary>
/// <remarks>Source: ASME PCC-2, Appendix 501-III, table of alternative scaled distances (unverified: source not at hand; confirm before
/// relying on it).</remarks>
/// <param name="Name">The harm.</param>
/// <param name="Within">Scaled distance; above 0.</param>
public sealed record BlastEffect(string Name, ScaledDistance Within)
{
    /// <summary>Window glass breaks: the distance the method asks for.</summary>
    public static BlastEffect GlassBreakage { get; } = new("window glass breaks", ScaledDistance.FromMetresPerCubeRootKilogram(20));

    /// <summary>Eardrums may rupture.</summary>
    public static BlastEffect EardrumRupture { get; } = new("eardrums may rupture", ScaledDistance.FromMetresPerCubeRootKilogram(12));

    /// <summary>Lungs may be damaged.</summary>
    public static BlastEffect LungDamage { get; } = new("lungs may be damaged", ScaledDistance.FromMetresPerCubeRootKilogram(6));

    /// <summary>Death is to be expected.</summary>
    public static BlastEffect Fatality { get; } = new("death is to be expected", ScaledDistance.FromMetresPerCubeRootKilogram(2));

    /// <summary>All four, farthest first.</summary>
    public static IReadOnlyList<BlastEffect> All { get; } = [GlassBreakage, EardrumRupture, LungDamage, Fatality];

    /// <summary>Where the table comes from.</summary>
    public static Source Source { get; } = new("ASME", "PCC-2 Repair of Pressure Equipment and Piping", 2008,
        "Appendix 501-III, alternative scaled distances", SourceKind.Unverified);
}
