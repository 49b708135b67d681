using NotebookKit.Provenance;

namespace NotebookKit.Filling.Networks;

/// <summary>A tee or a manifold: gas meets and parts there, and so little of it stands there that it isn't followed.</summary>
/// <remarks>
/// Water that comes to it goes on by every line that leads on, mixed with the gas that comes: a line passes ṁ (ṁg/Gg² + ṁw/Gw²) = 1 of
/// it, Gg and Gw what it passes of each alone. That is flow without slip, the least of both: a vent takes longer, never less long, and a
/// vessel that drains keeps its pressure up. A vessel that is filled through it meanwhile fills later. Gas and water exchange no heat
/// there; each line's area for water is good down to a drop of 0.1 bar. Source: G. B. Wallis, One-dimensional Two-phase Flow, 1969
/// (unverified: source not at hand; confirm before relying on it).
/// </remarks>
/// <param name="Name">What it is called.</param>
public sealed record JunctionNode(string Name) : PadNode(Name)
{
    /// <inheritdoc/>
    public override IReadOnlyList<Finding> Validate() => [];
}
