using NotebookKit.Materials.Solids;
using NotebookKit.Provenance;

namespace NotebookKit.Vessels.Design;

/// <summary>A surfacing veil wrapped round: mass and finish, no strength counted.</summary>
/// <param name="Veil">The veil.</param>
/// <param name="Turns">Full turns; 1 to 10.</param>
public sealed record VeilWrap(Veil Veil, int Turns = 1) : Ply
{
    /// <inheritdoc/>
    public override string Name => Veil.Name;

    /// <inheritdoc/>
    public override IReadOnlyList<string> Overrides => Veil.Overrides;

    /// <inheritdoc/>
    public override IReadOnlyList<Finding> Validate()
    {
        List<Finding> findings = [.. base.Validate(), .. Veil.Validate()];
        if (Turns is < 1 or > 10) findings.Add(VesselsFindings.VeilTurnsOutOfRange(Name, Turns));
        return findings;
    }
}
