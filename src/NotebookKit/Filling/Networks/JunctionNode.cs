using NotebookKit.Provenance;

namespace NotebookKit.Filling.Networks;

/// <summary>A tee or a manifold: gas meets and parts there, and so little of it stands there that it isn't followed.</summary>
/// <remarks>
/// Water that comes to it goes on by every line that leads on, mixed with the gas that comes, as a mixture in which neither slips past the
/// other, which chokes, and which has one temperature: about the least that passes, from 23 % less to 2 % more. A vent errs long by it, and
/// a vessel that drains keeps its pressure up. A vessel that is filled through it meanwhile fills later. In the junction gas and water
/// exchange no heat; each line's area for water is good down to a drop of 0.1 bar. Source: G. B. Wallis, One-dimensional Two-phase Flow,
/// 1969 (unverified: source not at hand; confirm before relying on it).
/// </remarks>
/// <param name="Name">What it is called.</param>
public sealed record JunctionNode(string Name) : PadNode(Name)
{
    /// <inheritdoc/>
    public override IReadOnlyList<Finding> Validate() => [];
}
