using NotebookKit.DesignFiles.Shapes;
using NotebookKit.Materials.Solids;
using NotebookKit.Provenance;
using NotebookKit.Quantities;
using UnitsNet;

namespace NotebookKit.DesignFiles.Keys;

/// <summary>Materials of the design's own, and properties of its own of those of the library.</summary>
internal static class MaterialKeys
{
    private const string NotGiven = "the design's file, source not given";

    private static readonly WordShape<SourceKind> KindOfSource = new("origin", ("measured", SourceKind.Measured),
        ("data sheet", SourceKind.DataSheet), ("standard", SourceKind.Standard), ("published", SourceKind.Published),
        ("typical", SourceKind.Typical), ("unverified", SourceKind.Unverified), ("common practice", SourceKind.CommonPractice));

    public static ObjectShape<MaterialLibrary> All { get; } = new("materials",
        "Materials of the design's own, and properties of its own of those of the library.", f =>
        {
            f.Part("fibres", Kinds.List(Fibre(), 0, 50), "Fibres.");
            f.Part("resins", Kinds.List(Resin(), 0, 50), "Resins.");
            f.Part("solids", Kinds.List(Solid(), 0, 50), "Plastics and metals.");
            f.Part("adhesives", Kinds.List(Adhesive(), 0, 50), "Adhesives.");
            f.Part("veils", Kinds.List(Veil(), 0, 50), "Veils.");
            f.Part("braids", Kinds.List(Braid(), 0, 50), "Braided sleeves.");
            f.Part("cloths", Kinds.List(Cloth(), 0, 50), "Cloths and tapes.");
            return v => v.Spot.Run.Library;
        });

    private static ObjectShape<Fibre> Fibre() => Own<Fibre>("fibre", f =>
    {
        var density = Property<Density>(f, "density");
        var along = Property<Pressure>(f, "longitudinal modulus");
        var across = Property<Pressure>(f, "transverse modulus");
        var shear = Property<Pressure>(f, "shear modulus");
        var poisson = PlainProperty(f, "Poisson's ratio");
        var strength = Property<Pressure>(f, "tensile strength");
        return (name, b, v) => new(name, Of(density(v), b?.Density, name, "density"),
            Of(along(v), b?.LongitudinalModulus, name, "longitudinal modulus"),
            Of(across(v), b?.TransverseModulus, name, "transverse modulus"), Of(shear(v), b?.ShearModulus, name, "shear modulus"),
            Of(poisson(v), b?.PoissonRatio, name, "Poisson's ratio"), Of(strength(v), b?.TensileStrength, name, "tensile strength"));
    });

    private static ObjectShape<Resin> Resin() => Own<Resin>("resin", f =>
    {
        var density = Property<Density>(f, "density");
        var modulus = Property<Pressure>(f, "modulus");
        var poisson = PlainProperty(f, "Poisson's ratio");
        var tension = Property<Pressure>(f, "tensile strength");
        var compression = Property<Pressure>(f, "compressive strength");
        var shear = Property<Pressure>(f, "shear strength");
        var service = Property<Temperature>(f, "service temperature");
        var glass = Property<Temperature>(f, "glass temperature");
        return (name, b, v) => new(name, Of(density(v), b?.Density, name, "density"), Of(modulus(v), b?.Modulus, name, "modulus"),
            Of(poisson(v), b?.PoissonRatio, name, "Poisson's ratio"), Of(tension(v), b?.TensileStrength, name, "tensile strength"),
            Of(compression(v), b?.CompressiveStrength, name, "compressive strength"),
            Of(shear(v), b?.ShearStrength, name, "shear strength"), Of(service(v), b?.ServiceTemperature, name, "service temperature"))
        {
            GlassTemperature = glass(v) ?? b?.GlassTemperature,
        };
    });

    private static ObjectShape<IsotropicMaterial> Solid() => Own<IsotropicMaterial>("plastic or metal", f =>
    {
        var density = Property<Density>(f, "density");
        var modulus = Property<Pressure>(f, "modulus");
        var poisson = PlainProperty(f, "Poisson's ratio");
        var yield = Property<Pressure>(f, "yield strength");
        var strain = Property<Ratio>(f, "usable strain");
        var expansion = Property<CoefficientOfThermalExpansion>(f, "thermal expansion");
        var service = Property<Temperature>(f, "service temperature");
        return (name, b, v) => new(name, Of(density(v), b?.Density, name, "density"), Of(modulus(v), b?.Modulus, name, "modulus"),
            Of(poisson(v), b?.PoissonRatio, name, "Poisson's ratio"), Of(yield(v), b?.YieldStrength, name, "yield strength"),
            Of(strain(v), b?.UsableStrain, name, "usable strain"), Of(expansion(v), b?.ThermalExpansion, name, "thermal expansion"),
            Of(service(v), b?.ServiceTemperature, name, "service temperature"));
    });

    private static ObjectShape<Adhesive> Adhesive() => Own<Adhesive>("adhesive", f =>
    {
        var density = Property<Density>(f, "density");
        var shear = Property<Pressure>(f, "shear modulus");
        var treated = Property<Pressure>(f, "strength on treated metal");
        var abraded = Property<Pressure>(f, "strength on abraded metal");
        var laminate = Property<Pressure>(f, "strength on abraded laminate");
        var plastic = Property<Pressure>(f, "strength on abraded plastic");
        return (name, b, v) => new(name, Of(density(v), b?.Density, name, "density"),
            Of(shear(v), b?.ShearModulus, name, "shear modulus"), Of(treated(v), b?.OnTreatedMetal, name, "strength on treated metal"),
            Of(abraded(v), b?.OnAbradedMetal, name, "strength on abraded metal"),
            Of(laminate(v), b?.OnAbradedLaminate, name, "strength on abraded laminate"),
            Of(plastic(v), b?.OnAbradedPlastic, name, "strength on abraded plastic"));
    });

    private static ObjectShape<Veil> Veil() => Own<Veil>("veil", f =>
    {
        var weight = Property<AreaDensity>(f, "areal weight");
        var density = Property<Density>(f, "fibre density");
        var fraction = Property<Ratio>(f, "fibre fraction");
        return (name, b, v) => new(name, Of(weight(v), b?.ArealWeight, name, "areal weight"),
            Of(density(v), b?.FibreDensity, name, "fibre density"), Of(fraction(v), b?.FibreFraction, name, "fibre fraction"));
    });

    private static ObjectShape<Braid> Braid() => Own<Braid>("sleeve", f =>
    {
        var fibre = f.Part("fibre", new MaterialShape<Fibre>("fibre"), "Fibre it is braided of.");
        var diameter = f.May("nominal diameter", Kinds.Millimetres(3, 1000, "It is printed on the sleeve's label."),
            "Diameter at which it has its nominal angle.");
        var angle = f.May("nominal angle", Kinds.Degrees(10, 80, "Most biaxial sleeves are 45°."), "Angle of its yarns from the axis.");
        var carriers = f.May("carriers", Kinds.Count(4, 2000, "Count the yarns round the sleeve, both ways."), "Number of yarns.");
        var yarn = Property<LinearDensity>(f, "yarn");
        var width = Property<Length>(f, "yarn width");
        return (name, b, v) => new(name, fibre(v) ?? b?.Fibre ?? throw Needs(name, "fibre"),
            diameter(v) ?? b?.NominalDiameter ?? throw Needs(name, "nominal diameter"),
            angle(v) ?? b?.NominalAngle ?? throw Needs(name, "nominal angle"), carriers(v) ?? b?.Carriers ?? throw Needs(name, "carriers"),
            Of(yarn(v), b?.Yarn, name, "yarn"), Of(width(v), b?.YarnWidth, name, "yarn width"));
    });

    private static ObjectShape<Cloth> Cloth() => Own<Cloth>("cloth", f =>
    {
        var fibre = f.Part("fibre", new MaterialShape<Fibre>("fibre"), "Fibre it is woven of.");
        var weight = Property<AreaDensity>(f, "areal weight");
        var warp = f.May("warp share", Kinds.Percent(0, 100, "A balanced cloth has 50 %."), "Share of its fibre that runs along the roll.");
        var width = f.May("roll width", Kinds.Millimetres(5, 5000, "Measure the roll."), "Width of the roll.");
        return (name, b, v) => new(name, fibre(v) ?? b?.Fibre ?? throw Needs(name, "fibre"),
            Of(weight(v), b?.ArealWeight, name, "areal weight"), warp(v) ?? b?.WarpShare ?? throw Needs(name, "warp share"),
            width(v) ?? b?.RollWidth ?? throw Needs(name, "roll width"));
    });

    private static ObjectShape<T> Own<T>(string kind, Func<FieldList, Func<string, T?, Values, T>> define) where T : class, IMaterial =>
        new($"own {kind}", $"A {kind} of the design's own, or properties of its own of one of the library.", f =>
        {
            var name = f.Needs("name", TextShape.Name, $"Name of a {kind} of the library, of which properties are changed, or a new one.");
            var like = f.Part("like", TextShape.Name, "Name of the one that it starts from.");
            var make = define(f);
            return v =>
            {
                var run = v.Spot.Run;
                var start = run.Library.AllOf<T>().FirstOrDefault(m => string.Equals(m.Name, like(v) ?? name(v),
                    StringComparison.OrdinalIgnoreCase));
                if (like(v) is { } missing && start is null) throw new FormatException(DesignFilesFindings.LikeUnknown(name(v), missing));
                var made = make(name(v), start, v);
                run.Library = run.Library.With(made);
                return made;
            };
        });

    private static Func<Values, Property<T>?> Property<T>(FieldList f, string key) where T : struct, IComparable<T> =>
        Property(f, key, Kinds.Any<T>());

    private static Func<Values, Property<double>?> PlainProperty(FieldList f, string key) =>
        Property(f, key, Kinds.Number(0, 1, "It is a plain number."));

    private static Func<Values, Property<T>?> Property<T>(FieldList f, string key, ScalarShape<T> value) where T : struct, IComparable<T> =>
        f.Part(key, new EitherShape<T, Property<T>>(value, v => new(v, 0, new("", NotGiven, null, "", SourceKind.Unverified), NotGiven),
            new ObjectShape<Property<T>>($"property, {value.Noun}", "A property with its scatter and its origin.", p =>
            {
                var number = p.Needs("value", value, "Its value.");
                var spread = p.Has("spread", Kinds.Percent(0, 60, "It is the coefficient of variation."), 0.Percent(),
                    "Standard deviation over the mean.");
                var kind = p.Has("kind", KindOfSource, SourceKind.Unverified, "How far its origin carries it.");
                var source = p.Else("source", TextShape.Prose, NotGiven, "Where it comes from.");
                return v => new(number(v), spread(v).DecimalFractions, new("", source(v), null, "", kind(v)), source(v));
            }), isFullStated: true), $"Its {key}.");

    private static Property<T> Of<T>(Property<T>? own, Property<T>? start, string name, string key) where T : struct, IComparable<T> =>
        own ?? start ?? throw Needs(name, key);

    private static FormatException Needs(string name, string key) => new(DesignFilesFindings.NewMaterialNeeds(name, key));
}
