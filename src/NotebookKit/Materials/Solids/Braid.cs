using NotebookKit.Provenance;
using NotebookKit.Quantities;
using UnitsNet;

namespace NotebookKit.Materials.Solids;

/// <summary>A biaxial braided sleeve as it is bought: at its nominal diameter its yarns lie at its nominal angle; over any other body they
/// turn.</summary>
/// <param name="Name">Name it is looked up by.</param>
/// <param name="Fibre">What its yarns are made of.</param>
/// <param name="NominalDiameter">Diameter at which the yarns lie at the nominal angle; 3 to 1000 mm.</param>
/// <param name="NominalAngle">Angle of the yarns from the axis at the nominal diameter; 10° to 80°.</param>
/// <param name="Carriers">Yarns in the sleeve, both directions together; 4 to 2000.</param>
/// <param name="Yarn">Weight of one yarn along its length; 5 to 5000 tex.</param>
/// <param name="YarnWidth">Width of one yarn lying flat; 0.1 to 20 mm.</param>
public sealed record Braid(
    string Name,
    Fibre Fibre,
    Length NominalDiameter,
    Angle NominalAngle,
    int Carriers,
    Property<LinearDensity> Yarn,
    Property<Length> YarnWidth) : IMaterial
{
    /// <inheritdoc/>
    public IReadOnlyList<string> Overrides => [.. OverrideList.Of(Name, (Yarn, "yarn"), (YarnWidth, "yarn width")), .. Fibre.Overrides];

    /// <inheritdoc/>
    public IReadOnlyList<Finding> Validate()
    {
        List<Finding> findings =
        [
            .. Yarn.Find(Name, "yarn", new(5.Tex(), 5000.Tex()), "A 3K carbon tow is near 200 tex, 12K near 800 tex."),
            .. YarnWidth.Find(Name, "yarn width", new(0.1.Millimetres(), 20.Millimetres()), "Measure it on the sleeve lying flat."),
            .. Fibre.Validate(),
        ];
        Add(new ValidRange<Length>(3.Millimetres(), 1000.Millimetres()).Find(NominalDiameter, $"{Name}: nominal diameter",
            "It is printed on the sleeve's label."));
        Add(new ValidRange<Angle>(10.Degrees(), 80.Degrees()).Find(NominalAngle, $"{Name}: nominal angle",
            "Most biaxial sleeves are 45° at their nominal diameter."));
        if (Carriers is < 4 or > 2000 || Carriers % 2 != 0)
            findings.Add(MaterialsFindings.CarrierCountOutOfRange(Name, Carriers));
        return findings;

        void Add(Finding? finding)
        {
            if (finding is not null) findings.Add(finding);
        }
    }

    /// <summary>Its name.</summary>
    public override string ToString() => Name;
}
