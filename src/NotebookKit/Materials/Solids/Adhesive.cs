using NotebookKit.Provenance;
using NotebookKit.Quantities;
using UnitsNet;

namespace NotebookKit.Materials.Solids;

/// <summary>A two-part adhesive: lap-shear strength on each kind of surface, as a short overlap coupon gives it.</summary>
/// <param name="Name">Name it is looked up by.</param>
/// <param name="Density">Cured density; 800 to 3000 kg/m³.</param>
/// <param name="ShearModulus">Shear modulus; 10 to 5000 MPa.</param>
/// <param name="OnTreatedMetal">Lap-shear strength on treated metal; 0.1 to 60 MPa.</param>
/// <param name="OnAbradedMetal">Lap-shear strength on metal abraded by hand; 0.1 to 60 MPa.</param>
/// <param name="OnAbradedLaminate">Lap-shear strength on abraded laminate; 0.1 to 60 MPa.</param>
/// <param name="OnAbradedPlastic">Lap-shear strength on abraded plastic; 0.1 to 60 MPa.</param>
public sealed record Adhesive(
    string Name,
    Property<Density> Density,
    Property<Pressure> ShearModulus,
    Property<Pressure> OnTreatedMetal,
    Property<Pressure> OnAbradedMetal,
    Property<Pressure> OnAbradedLaminate,
    Property<Pressure> OnAbradedPlastic) : IMaterial
{
    /// <inheritdoc/>
    public IReadOnlyList<string> Overrides => OverrideList.Of(
        Name, (Density, "density"), (ShearModulus, "shear modulus"), (OnTreatedMetal, "strength on treated metal"),
        (OnAbradedMetal, "strength on abraded metal"), (OnAbradedLaminate, "strength on abraded laminate"),
            (OnAbradedPlastic, "strength on abraded plastic"));

    /// <summary>Lap-shear strength on one kind of surface.</summary>
    /// <param name="surface">What it holds on to.</param>
    public Property<Pressure> On(BondSurface surface) => surface switch
    {
        BondSurface.TreatedMetal => OnTreatedMetal,
        BondSurface.AbradedMetal => OnAbradedMetal,
        BondSurface.AbradedLaminate => OnAbradedLaminate,
        BondSurface.AbradedPlastic => OnAbradedPlastic,
        _ => throw new ArgumentOutOfRangeException(nameof(surface),
            $"bond surface is {surface}; it must be one of {string.Join(", ", Enum.GetNames<BondSurface>().Where(n =>
                n != nameof(BondSurface.UntreatedPlastic)))}, for nothing is known of an adhesive on an untreated plastic."),
    };

    /// <summary>Lap-shear strength on the weaker of two surfaces.</summary>
    /// <param name="one">One surface.</param>
    /// <param name="other">The other.</param>
    public Property<Pressure> Weaker(BondSurface one, BondSurface other)
    {
        var (first, second) = (On(one), On(other));
        return first.Value <= second.Value ? first : second;
    }

    /// <inheritdoc/>
    public IReadOnlyList<Finding> Validate()
    {
        var strength = new ValidRange<Pressure>(0.1.Megapascals(), 60.Megapascals());
        const string why = "Lap-shear coupons of two-part epoxies give 1 to 35 MPa, least on plastics.";
        return
        [
            .. Density.Find(Name, "density", new(800.KilogramsPerCubicMetre(), 3000.KilogramsPerCubicMetre()),
                "Structural epoxies are 1100 to 1500 kg/m³."),
            .. ShearModulus.Find(Name, "shear modulus", new(10.Megapascals(), 5000.Megapascals()),
                "Structural epoxies are 300 to 1500 MPa."),
            .. OnTreatedMetal.Find(Name, "strength on treated metal", strength, why),
            .. OnAbradedMetal.Find(Name, "strength on abraded metal", strength, why),
            .. OnAbradedLaminate.Find(Name, "strength on abraded laminate", strength, why),
            .. OnAbradedPlastic.Find(Name, "strength on abraded plastic", strength, why),
        ];
    }

    /// <summary>Its name.</summary>
    public override string ToString() => Name;
}
