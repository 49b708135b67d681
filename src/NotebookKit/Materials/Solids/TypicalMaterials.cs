using NotebookKit.Quantities;
using UnitsNet;

namespace NotebookKit.Materials.Solids;

/// <summary>Typical values of the classes of material in use, each with where it comes from. Constructions of sleeves and cloths are of
/// this project's choosing.</summary>
internal static class TypicalMaterials
{
    private const string SleeveWhy = "sleeve construction of this project's choosing, typical of its class: weigh and measure your own";

    private static readonly Fibre CarbonT300 = new(
        "carbon T300 class",
        Property.DataSheet(1760.KilogramsPerCubicMetre(), 0.01, "fibre maker's data sheet, T300 class"),
        Property.DataSheet(230.Gigapascals(), 0.03, "fibre maker's data sheet, T300 class"),
        Property.Unverified(15.Gigapascals(), 0.1, "PAN carbon fibre, transverse"),
        Property.Unverified(15.Gigapascals(), 0.1, "PAN carbon fibre, shear"),
        Property.Unverified(0.2, 0.1, "PAN carbon fibre"),
        Property.DataSheet(3530.Megapascals(), 0.05, "fibre maker's data sheet, T300 class, impregnated strand"));

    private static readonly Fibre CarbonT700 = CarbonT300 with
    {
        Name = "carbon T700 class",
        Density = Property.DataSheet(1800.KilogramsPerCubicMetre(), 0.01, "trade article repeating the maker's data, T700S class"),
        LongitudinalModulus = Property.DataSheet(230.Gigapascals(), 0.03, "trade article repeating the maker's data, T700S class"),
        TensileStrength = Property.DataSheet(4900.Megapascals(), 0.05,
            "trade article repeating the maker's data, T700S class, impregnated strand"),
    };

    private static readonly Fibre EGlass = new(
        "E-glass",
        Property.DataSheet(2570.KilogramsPerCubicMetre(), 0.01, "fibre makers' pages, 2540 to 2600 kg/m³"),
        Property.DataSheet(73.Gigapascals(), 0.03, "fibre makers' pages, 72 to 76 GPa"),
        Property.DataSheet(73.Gigapascals(), 0.03, "the same in every direction"),
        Property.Typical(29.9.Gigapascals(), 0.03, "from modulus and Poisson's ratio"),
        Property.Unverified(0.22, 0.05, "E-glass"),
        Property.Unverified(2200.Megapascals(), 0.10, "E-glass as woven and wetted, 1500 to 2500 MPa; virgin filaments give 3100 to 3800"));

    private static readonly Resin Epoxy = new(
        "laminating epoxy",
        Property.Unverified(1150.KilogramsPerCubicMetre(), 0.02, "room-cured laminating epoxies, 1100 to 1200 kg/m³"),
        Property.Unverified(3.0.Gigapascals(), 0.08, "room-cured laminating epoxies, 2.6 to 3.5 GPa"),
        Property.Unverified(0.35, 0.05, "room-cured laminating epoxies"),
        Property.Unverified(60.Megapascals(), 0.15, "room-cured laminating epoxies, 50 to 75 MPa"),
        Property.Unverified(95.Megapascals(), 0.15, "room-cured laminating epoxies, 80 to 110 MPa"),
        Property.Unverified(45.Megapascals(), 0.15, "room-cured laminating epoxies, about three quarters of tension"),
        Property.DataSheet(50.Celsius(), 0, "a laminating-resin data sheet, 2017: +50 °C without post-cure, +80 °C with"))
    {
        GlassTemperature = Property.Unverified(60.Celsius(), 0,
            "laminating epoxies cured at room temperature, 50 to 75 °C; measure your own"),
    };

    private static readonly Resin PostCured = Epoxy with
    {
        Name = "laminating epoxy, post-cured",
        TensileStrength = Property.Unverified(70.Megapascals(), 0.10, "post-cured laminating epoxies, 65 to 80 MPa"),
        ServiceTemperature = Property.DataSheet(80.Celsius(), 0, "a laminating-resin data sheet, 2017: +80 °C with post-cure"),
        GlassTemperature = Property.Unverified(80.Celsius(), 0,
            "laminating epoxies post-cured at 60 °C or more, 80 to 95 °C; measure your own"),
    };

    private static readonly IsotropicMaterial Pet = new(
        "PET",
        Property.DataSheet(1350.KilogramsPerCubicMetre(), 0.02, "plastics tables, 1290 to 1400 kg/m³"),
        Property.DataSheet(2.8.Gigapascals(), 0.10, "plastics tables, 2.8 to 3.45 GPa, low end"),
        Property.Unverified(0.38, 0.05, "unoriented PET"),
        Property.DataSheet(48.Megapascals(), 0.10, "plastics tables, 48 to 72 MPa, low end"),
        Property.Typical(25.Percent(), 0.20, "half the low end of plastics tables, 50 to 150 % at break, unoriented"),
        Property.Unverified(CoefficientOfThermalExpansion.FromPerKelvin(70e-6), 0.10, "unoriented PET"),
        Property.DataSheet(55.Celsius(), 0, "glass transition 73 to 80 °C in plastics tables, with room for softening"));

    private static readonly IsotropicMaterial PetBottle = Pet with
    {
        Name = "PET bottle wall",
        Modulus = Property.Unverified(4.0.Gigapascals(), 0.15, "stretch-blown wall, 4 to 6 GPa, low end"),
        YieldStrength = Property.Unverified(80.Megapascals(), 0.15,
            "stretch-blown wall: hoop strength 150 to 200 MPa, axial about half of it; half of the low end taken"),
        UsableStrain = Property.Unverified(10.Percent(), 0.20, "stretch-blown wall has used up most of its stretch"),
    };

    private static readonly IsotropicMaterial Pvc = new(
        "PVC-U",
        Property.DataSheet(1400.KilogramsPerCubicMetre(), 0.02, "plastics tables, 1300 to 1580 kg/m³"),
        Property.DataSheet(2.7.Gigapascals(), 0.10, "plastics tables, 2.7 to 3.8 GPa, low end"),
        Property.Unverified(0.38, 0.05, "PVC-U"),
        Property.DataSheet(41.Megapascals(), 0.10, "plastics tables, 41 to 52 MPa, low end"),
        Property.Typical(15.Percent(), 0.20, "half the low end of plastics tables, 30 to 80 % at break"),
        Property.Unverified(CoefficientOfThermalExpansion.FromPerKelvin(70e-6), 0.10, "PVC-U"),
        Property.DataSheet(45.Celsius(), 0, "glass transition from 75 °C in plastics tables, with room for softening"));

    private static readonly IsotropicMaterial Polycarbonate = new(
        "polycarbonate",
        Property.DataSheet(1200.KilogramsPerCubicMetre(), 0.01, "plastics tables, 1190 to 1200 kg/m³"),
        Property.DataSheet(2.3.Gigapascals(), 0.05, "plastics tables, 2.3 to 2.4 GPa"),
        Property.Unverified(0.38, 0.05, "polycarbonate"),
        Property.DataSheet(62.Megapascals(), 0.07, "plastics tables, 62 to 66 MPa"),
        Property.Unverified(30.Percent(), 0.20, "yields at 6 to 7 %, breaks at 80 to 120 %"),
        Property.Unverified(CoefficientOfThermalExpansion.FromPerKelvin(68e-6), 0.10, "polycarbonate"),
        Property.DataSheet(100.Celsius(), 0, "glass transition 150 °C in plastics tables; attacked by many resins' amines: test first"));

    private static readonly IsotropicMaterial Aluminium = new(
        "aluminium 6061-T6",
        Property.DataSheet(2700.KilogramsPerCubicMetre(), 0.005, "several data sheets"),
        Property.DataSheet(68.9.Gigapascals(), 0.02, "several data sheets"),
        Property.DataSheet(0.33, 0.02, "several data sheets"),
        Property.Unverified(240.Megapascals(), 0.04, "design minimum; data sheets print a typical 276 MPa"),
        Property.Typical(6.Percent(), 0.15, "half the low end of data sheets, 12 to 17 % at break"),
        Property.DataSheet(CoefficientOfThermalExpansion.FromPerKelvin(23.6e-6), 0.02, "several data sheets"),
        Property.Unverified(120.Celsius(), 0, "loses its temper above"));

    private static readonly IsotropicMaterial Printed = new(
        "printed PETG, across its layers",
        Property.Typical(1200.KilogramsPerCubicMetre(), 0.05, "printed plastic, filled solid, common practice, no source"),
        Property.Typical(1.5.Gigapascals(), 0.25, "printed plastic, common practice, no source"),
        Property.Unverified(0.38, 0.05, "PETG"),
        Property.Typical(20.Megapascals(), 0.30, "low end across the layers, common practice, no source"),
        Property.Typical(1.Percent(), 0.30, "printed plastic breaks between its layers, common practice, no source"),
        Property.Unverified(CoefficientOfThermalExpansion.FromPerKelvin(70e-6), 0.10, "PETG"),
        Property.Unverified(50.Celsius(), 0, "softens from about 70 °C"));

    /// <summary>Everything, fibres first.</summary>
    public static IEnumerable<IMaterial> All =>
    [
        CarbonT300, CarbonT700, EGlass, Epoxy, PostCured, Pet, PetBottle, Pvc, Polycarbonate, Printed, Aluminium,
        Sleeve("carbon sleeve 50 mm light", CarbonT700, 50, 120, 200, 1.5),
        Sleeve("carbon sleeve 50 mm heavy", CarbonT700, 50, 96, 400, 2.0),
        Sleeve("carbon sleeve 65 mm light", CarbonT700, 65, 144, 200, 1.5),
        Sleeve("carbon sleeve 65 mm heavy", CarbonT700, 65, 120, 400, 2.2),
        Sleeve("carbon sleeve 76 mm", CarbonT300, 76, 144, 400, 2.0),
        Sleeve("glass sleeve 65 mm", EGlass, 65, 144, 300, 1.8),
        Woven("carbon twill 200 g", CarbonT300, 200, 50, 1000),
        Woven("carbon plain 93 g", CarbonT300, 93, 50, 1000),
        Woven("glass twill 163 g", EGlass, 163, 50, 1000),
        Woven("glass plain 80 g", EGlass, 80, 50, 1000),
        Woven("carbon tape 150 g", CarbonT700, 150, 100, 25),
        new Veil(
            "glass veil 30 g",
            Property.Typical(30.Gsm(), 0.10, "surfacing veils are sold at 20 to 50 g/m²"),
            Property.DataSheet(2570.KilogramsPerCubicMetre(), 0.01, "fibre makers' pages"),
            Property.Unverified(10.Percent(), 0.20, "a veil takes up about nine times its own volume of resin")),
        new Veil(
            "polyester veil 25 g",
            Property.Typical(25.Gsm(), 0.10, "surfacing veils are sold at 20 to 50 g/m²"),
            Property.Unverified(1380.KilogramsPerCubicMetre(), 0.01, "polyester fibre"),
            Property.Unverified(12.Percent(), 0.20, "a veil takes up about seven times its own volume of resin")),
        Glue("structural epoxy", 1250, 800, 20, 15, 14, 3, "two-part structural epoxy"),
        Glue("laminating epoxy, thickened", 1200, 1000, 12, 8, 8, 2, "laminating epoxy thickened with silica or fibre"),
    ];

    private static Braid Sleeve(string name, Fibre fibre, double millimetres, int carriers, double tex, double widthMillimetres) => new(
        name, fibre, millimetres.Millimetres(), 45.Degrees(), carriers,
        Property.Typical(tex.Tex(), 0.02, SleeveWhy), Property.Typical(widthMillimetres.Millimetres(), 0.05, SleeveWhy));

    private static Cloth Woven(string name, Fibre fibre, double gsm, double warpPercent, double widthMillimetres) => new(
        name, fibre, Property.Typical(gsm.Gsm(), 0.03, "trade weight"), warpPercent.Percent(), widthMillimetres.Millimetres());

    private static Adhesive Glue(string name, double density, double shearMegapascals, double treated, double abraded, double laminate,
        double plastic, string what)
    {
        return new Adhesive(
            name,
            Property.Unverified(density.KilogramsPerCubicMetre(), 0.05, what),
            Property.Unverified(shearMegapascals.Megapascals(), 0.20, what),
            On(treated, "treated aluminium, lap-shear coupons 15 to 35 MPa"),
            On(abraded, "aluminium abraded by hand, lap-shear coupons 6 to 25 MPa"),
            On(laminate, "abraded laminate, lap-shear coupons 6 to 25 MPa"),
            On(plastic, "PET, PVC, polycarbonate, abraded: 1 to 8 MPa, the plastic's surface governs"));

        Property<Pressure> On(double megapascals, string surface)
            => Property.Unverified(megapascals.Megapascals(), 0.30, $"{what} on {surface}");
    }
}
