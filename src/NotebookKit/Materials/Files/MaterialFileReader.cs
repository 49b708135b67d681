using NotebookKit.Materials.Solids;
using NotebookKit.Provenance;
using UnitsNet;

namespace NotebookKit.Materials.Files;

/// <summary>Reads the lists of a material file, collecting every mistake with its line.</summary>
internal sealed class MaterialFileReader(string file, List<Finding> findings)
{
    public static readonly string[] Lists = ["fibres", "resins", "solids", "adhesives", "veils", "braids", "cloths"];

    public MaterialLibrary ReadList(string list, int line, LinedJson value, MaterialLibrary library)
    {
        if (!Lists.Contains(list))
        {
            Error(line, $"there is no list \"{list}\"; lists are {string.Join(", ", Lists)}");
            return library;
        }

        if (value is not LinedJson.Items items)
        {
            Error(value.Line, $"\"{list}\" must be a list in square brackets");
            return library;
        }

        foreach (var item in items.Values)
        {
            if (item is not LinedJson.Members members)
            {
                Error(item.Line, $"an entry of \"{list}\" must be an object in braces with a \"name\"");
                continue;
            }

            var entry = new MaterialFileEntry(file, members, findings);
            if (entry.Text("name") is not { Length: > 0 } name)
            {
                Error(members.Line, $"an entry of \"{list}\" has no \"name\"");
                continue;
            }

            var mistakes = findings.Count;
            var material = Make(list, name, entry, library, members.Line);
            entry.FindUnknown();
            if (material is null || findings.Count > mistakes) continue;
            var wrong = material.Validate();
            findings.AddRange(wrong.Select(w => w with { Message = $"{file}, line {members.Line}: {w.Message}" }));
            if (wrong.Count > 0) continue;
            try
            {
                library = library.With(material);
            }
            catch (InvalidDesignException clash)
            {
                Error(members.Line, Finding.Join(clash.Findings.Select(f => f.Message)));
            }
        }

        return library;
    }

    private IMaterial? Make(string list, string name, MaterialFileEntry e, MaterialLibrary library, int line) => list switch
    {
        "fibres" => Fibre(name, e, Base<Fibre>(name, e, library, line)),
        "resins" => Resin(name, e, Base<Resin>(name, e, library, line)),
        "solids" => Solid(name, e, Base<IsotropicMaterial>(name, e, library, line)),
        "adhesives" => Adhesive(name, e, Base<Adhesive>(name, e, library, line)),
        "veils" => Veil(name, e, Base<Veil>(name, e, library, line)),
        "braids" => Braid(name, e, Base<Braid>(name, e, library, line), library),
        _ => Cloth(name, e, Base<Cloth>(name, e, library, line), library),
    };

    /// <summary>The material the entry starts from: the one it is like, or the one of its own name.</summary>
    private T? Base<T>(string name, MaterialFileEntry e, MaterialLibrary library, int line) where T : class, IMaterial
    {
        var like = e.Text("like");
        var found = library.AllOf<T>().FirstOrDefault(m => string.Equals(m.Name, like ?? name, StringComparison.OrdinalIgnoreCase));
        if (like is not null && found is null) Error(line, $"\"{name}\" is to be like \"{like}\", but there is none of that kind and name");
        return found;
    }

    private static Fibre? Fibre(string name, MaterialFileEntry e, Fibre? b)
    {
        var density = e.Property("density", b?.Density);
        var longitudinal = e.Property("longitudinal modulus", b?.LongitudinalModulus, formerly: "axial modulus");
        var transverse = e.Property("transverse modulus", b?.TransverseModulus);
        var shear = e.Property("shear modulus", b?.ShearModulus);
        var poisson = e.Property("Poisson's ratio", b?.PoissonRatio);
        var strength = e.Property("tensile strength", b?.TensileStrength);
        return density is null || longitudinal is null || transverse is null || shear is null || poisson is null || strength is null
            ? null
            : new Fibre(name, density, longitudinal, transverse, shear, poisson, strength);
    }

    private static Resin? Resin(string name, MaterialFileEntry e, Resin? b)
    {
        var density = e.Property("density", b?.Density);
        var modulus = e.Property("modulus", b?.Modulus);
        var poisson = e.Property("Poisson's ratio", b?.PoissonRatio);
        var tension = e.Property("tensile strength", b?.TensileStrength);
        var compression = e.Property("compressive strength", b?.CompressiveStrength);
        var shear = e.Property("shear strength", b?.ShearStrength);
        var service = e.Property("service temperature", b?.ServiceTemperature);
        var glass = e.OptionalProperty("glass temperature", b?.GlassTemperature);
        return density is null || modulus is null || poisson is null || tension is null || compression is null || shear is null
            || service is null
            ? null
            : new Resin(name, density, modulus, poisson, tension, compression, shear, service) { GlassTemperature = glass };
    }

    private static IsotropicMaterial? Solid(string name, MaterialFileEntry e, IsotropicMaterial? b)
    {
        var density = e.Property("density", b?.Density);
        var modulus = e.Property("modulus", b?.Modulus);
        var poisson = e.Property("Poisson's ratio", b?.PoissonRatio);
        var yield = e.Property("yield strength", b?.YieldStrength);
        var strain = e.Property("usable strain", b?.UsableStrain);
        var expansion = e.Property("thermal expansion", b?.ThermalExpansion);
        var service = e.Property("service temperature", b?.ServiceTemperature);
        return density is null || modulus is null || poisson is null || yield is null || strain is null || expansion is null
            || service is null
            ? null
            : new IsotropicMaterial(name, density, modulus, poisson, yield, strain, expansion, service);
    }

    private static Adhesive? Adhesive(string name, MaterialFileEntry e, Adhesive? b)
    {
        var density = e.Property("density", b?.Density);
        var shear = e.Property("shear modulus", b?.ShearModulus);
        var treated = e.Property("strength on treated metal", b?.OnTreatedMetal);
        var abraded = e.Property("strength on abraded metal", b?.OnAbradedMetal);
        var laminate = e.Property("strength on abraded laminate", b?.OnAbradedLaminate);
        var plastic = e.Property("strength on abraded plastic", b?.OnAbradedPlastic);
        return density is null || shear is null || treated is null || abraded is null || laminate is null || plastic is null
            ? null
            : new Adhesive(name, density, shear, treated, abraded, laminate, plastic);
    }

    private static Veil? Veil(string name, MaterialFileEntry e, Veil? b)
    {
        var weight = e.Property("areal weight", b?.ArealWeight);
        var density = e.Property("fibre density", b?.FibreDensity);
        var fraction = e.Property("fibre fraction", b?.FibreFraction);
        return weight is null || density is null || fraction is null ? null : new Veil(name, weight, density, fraction);
    }

    private static Braid? Braid(string name, MaterialFileEntry e, Braid? b, MaterialLibrary library)
    {
        var fibre = e.FibreOf(b?.Fibre, library);
        var diameter = e.Value("nominal diameter", b?.NominalDiameter);
        var angle = e.Value("nominal angle", b?.NominalAngle);
        var carriers = e.Value<double>("carriers", b?.Carriers);
        var yarn = e.Property("yarn", b?.Yarn);
        var width = e.Property("yarn width", b?.YarnWidth);
        if (fibre is null || diameter is null || angle is null || carriers is null || yarn is null || width is null) return null;
        if (carriers != Math.Floor(carriers.Value) || carriers is < 0 or > 100_000)
        {
            e.Error("carriers", "must be a whole number");
            return null;
        }

        return new Braid(name, fibre, diameter.Value, angle.Value, (int)carriers.Value, yarn, width);
    }

    private static Cloth? Cloth(string name, MaterialFileEntry e, Cloth? b, MaterialLibrary library)
    {
        var fibre = e.FibreOf(b?.Fibre, library);
        var weight = e.Property("areal weight", b?.ArealWeight);
        var warp = e.Value<Ratio>("warp share", b?.WarpShare);
        var width = e.Value<Length>("roll width", b?.RollWidth);
        return fibre is null || weight is null || warp is null || width is null ? null
            : new Cloth(name, fibre, weight, warp.Value, width.Value);
    }

    private void Error(int line, string what) => findings.Add(MaterialsFindings.LineIsWrong(file, line, what));
}
