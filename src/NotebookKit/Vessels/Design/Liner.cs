using NotebookKit.Materials.Solids;
using NotebookKit.Provenance;
using NotebookKit.Quantities;
using UnitsNet;

namespace NotebookKit.Vessels.Design;

/// <summary>The tube the plies are laid on: it keeps the water in, and carries what share of the load its stiffness takes.</summary>
/// <param name="Material">What it is made of; none where the mandrel was taken out.</param>
/// <param name="Bore">Inner diameter; 5 to 500 mm.</param>
/// <param name="Wall">Wall; 0.05 to 20 mm, nothing where the mandrel was taken out.</param>
public sealed record Liner(IsotropicMaterial? Material, Length Bore, Length Wall)
{
    /// <summary>No liner: the plies were laid on a mandrel that was taken out, and the resin alone keeps the water in.</summary>
    /// <param name="bore">Diameter of the mandrel; 5 to 500 mm.</param>
    public static Liner Removed(Length bore) => new(null, bore, 0.Millimetres());

    /// <summary>Diameter the first ply is laid on.</summary>
    public Length OuterDiameter => Bore + Wall + Wall;

    /// <summary>All that is wrong with it.</summary>
    public IReadOnlyList<Finding> Validate()
    {
        var findings = new List<Finding>();
        if (new ValidRange<Length>(5.Millimetres(), 500.Millimetres()).Find(Bore, "liner bore", "Vessels here are 10 to 200 mm across.")
            is { } bore) findings.Add(bore);
        if (Material is null)
        {
            if (Wall.Meters != 0) findings.Add(VesselsFindings.LinerMaterialIsNotGiven(Wall));
            return findings;
        }

        if (new ValidRange<Length>(0.05.Millimetres(), 20.Millimetres()).Find(Wall, "liner wall",
            "A bottle wall is 0.3, a thin pipe 1 to 2 mm.") is { } wall) findings.Add(wall);
        else if (Wall > Bore / 4) findings.Add(VesselsFindings.LinerWallTooThick(Wall, Bore));
        findings.AddRange(Material.Validate());
        return findings;
    }
}
