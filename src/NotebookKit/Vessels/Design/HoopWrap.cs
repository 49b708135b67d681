using NotebookKit.Materials.Solids;
using NotebookKit.Provenance;
using UnitsNet;

namespace NotebookKit.Vessels.Design;

/// <summary>A unidirectional tape wound round side by side, each layer back along the vessel over the one before.</summary>
/// <param name="Tape">The tape; all its fibre runs along it.</param>
/// <param name="Layers">Layers; 1 to 50. An even number leaves the vessel without twist.</param>
public sealed record HoopWrap(Cloth Tape, int Layers = 2) : Ply
{
    /// <inheritdoc/>
    public override string Name => Tape.Name;

    /// <inheritdoc/>
    public override IReadOnlyList<string> Overrides => Tape.Overrides;

    /// <inheritdoc/>
    public override IReadOnlyList<Finding> Validate()
    {
        List<Finding> findings = [.. base.Validate(), .. Tape.Validate()];
        if (Layers is < 1 or > 50) findings.Add(VesselsFindings.LayersOutOfRange(Name, Layers));
        if (Tape.WarpShare.DecimalFractions < 0.9)
            findings.Add(VesselsFindings.HoopWrapIsNotTape(Name, Tape.WarpShare.Percent));
        return findings;
    }

    /// <summary>Angle of its fibres from the axis: tan α = πD/width, a little under 90°. Source: geometry of a helix.</summary>
    /// <param name="diameter">Diameter it lies on; above 0.</param>
    internal double AngleRadians(double diameter) => Math.Atan(Math.PI * diameter / Tape.RollWidth.Meters);

    /// <summary>Angle of its fibres from the axis on a diameter. Source: geometry of a helix.</summary>
    /// <param name="diameter">Diameter it lies on; above 0.</param>
    public Angle AngleOn(Length diameter) => Angle.FromDegrees(AngleRadians(diameter.Meters) * 180 / Math.PI);
}
